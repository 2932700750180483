// Text that holds a document a line. Node's own line reader is no help here: it also breaks a line at U+2028 and at a lone
// carriage return, which JSON may hold or skip, and keeps a line however long it is.

/** A line far longer than any document is read past and not kept, so that memory stays bounded. */
const LONGEST_LINE = 1_000_000;

/** A line that is not blank. */
export interface Line {
  /** From 1; blank lines count. */
  readonly number: number;
  /** Null where the line is too long to be kept. */
  readonly text: string | null;
  /** Characters. */
  readonly length: number;
}

/** The lines of a stream of text, as many at a time as arrive together. */
export async function* linesOf(stream: AsyncIterable<string>): AsyncGenerator<readonly Line[]> {
  let number = 0;
  let kept = "";
  let length = 0;
  const end = (): Line[] => {
    number++;
    const text = kept.replace(/\r$/, "");
    const line = { number, text: length > LONGEST_LINE ? null : text, length };
    const blank = line.text?.trim() === "";
    kept = "";
    length = 0;
    return blank ? [] : [line];
  };
  let first = true;
  for await (const arrived of stream) {
    // Some editors put a byte-order mark first; it is no part of a document.
    const text = first ? arrived.replace(/^\uFEFF/, "") : arrived;
    first = false;
    const lines: Line[] = [];
    const pieces = text.split("\n");
    for (const [index, piece] of pieces.entries()) {
      length += piece.length;
      if (length <= LONGEST_LINE) kept += piece;
      if (index < pieces.length - 1) lines.push(...end());
    }
    if (lines.length > 0) yield lines;
  }
  const last = end();
  if (last.length > 0) yield last;
}
