// Sentences from templates: say`Rope ${"1"} pulls ${math}` is a list of runs.
import type { Run, Sentence } from "./types.ts";

/** What may stand in a template: words, a run, or a whole list of runs. */
export type SentencePart = string | number | Run | Sentence;

const isRuns = (part: SentencePart): part is Sentence => Array.isArray(part);

/** Joins a template into runs; neighbouring words become one run. */
export function say(words: TemplateStringsArray, ...parts: readonly SentencePart[]): Sentence {
  const runs: Run[] = [];
  const text = (t: string): void => {
    const last = runs[runs.length - 1];
    if (t === "") return;
    if (last?.kind === "text") runs[runs.length - 1] = { kind: "text", text: last.text + t };
    else runs.push({ kind: "text", text: t });
  };
  const take = (part: SentencePart): void => {
    if (isRuns(part)) part.forEach(take);
    else if (typeof part === "object") {
      if (part.kind === "text") text(part.text);
      else runs.push(part);
    } else text(String(part));
  };
  words.forEach((w, i) => {
    text(w);
    const part = parts[i];
    if (part !== undefined) take(part);
  });
  return runs;
}

/** A list in words: a; a and b; a, b and c. */
export function listed(items: readonly SentencePart[], last = "and"): Sentence {
  return items.flatMap((item, i) => say`${i === 0 ? "" : i === items.length - 1 ? ` ${last} ` : ", "}${item}`);
}

/** The words of a sentence, lines as their numbers in brackets. */
export function plainSentence(sentence: Sentence, numberOf: (line: string) => number | undefined): string {
  return sentence.map((r) => (r.kind === "line" ? `(${String(numberOf(r.id) ?? "–")})` : r.text)).join("");
}
