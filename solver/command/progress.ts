// How far a batch is, for a person who waits.

/** Milliseconds between two lines, and on a terminal, where one line is written over. */
const BETWEEN = { lines: 2000, overwritten: 100 };

/** Something that says how far a batch is. */
export interface Progress {
  add(result: { readonly documents: number; readonly faulty: number }): void;
  end(): void;
}

/** Says on a stream, now and then and at the end, how many documents are done, of how many if that is known. */
export function progressOn(stream: NodeJS.WriteStream, of: number | null): Progress {
  let done = 0;
  let faulty = 0;
  let said = performance.now();
  const say = (last: boolean): void => {
    const text = `${done}${of === null ? "" : ` of ${of}`} documents, ${faulty} with faults`;
    stream.write(stream.isTTY ? `\r${text}${last ? "\n" : ""}` : `${text}\n`);
  };
  return {
    add(result) {
      done += result.documents;
      faulty += result.faulty;
      if (performance.now() - said < (stream.isTTY ? BETWEEN.overwritten : BETWEEN.lines)) return;
      said = performance.now();
      say(false);
    },
    end: () => say(true),
  };
}
