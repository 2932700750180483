// The lesson's paragraphs as the solver and the build's typesetting write them for an address: what a page has to show.
import { readFileSync } from "node:fs";
import katex from "katex";
import { decodeState } from "../../shared/link/index.ts";
import { readProblem } from "../../shared/problem/schema.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import type { Derivation } from "../../solver/index.ts";
import { FormCache, paragraphMarkup } from "../../src/typeset/index.ts";

const file = new URL("../../lessons/two-ropes/problem.json", import.meta.url);
const cache = new FormCache(katex);

/** What the solver derives for a query of the lesson's address. */
export function derivedFor(query: string): Derivation {
  const reading = readProblem(readFileSync(file, "utf8"));
  if (!reading.ok) throw new Error("the lesson's problem has faults");
  const start = { problem: reading.problem, settings: { figures: 3, firstAxis: "vertical" }, upTo: null } as const;
  const { state } = decodeState(query, start);
  return derive(state.problem, { ...defaultSettings, ...state.settings });
}

/** One paragraph: its id and its markup. */
export interface Written {
  readonly id: string;
  readonly markup: string;
}

/** Every paragraph for a query, words, numbers, maths for the eye and maths for reading aloud. */
export const writtenFor = (query: string): Written[] => writtenOf(derivedFor(query));

/** Every paragraph of a derivation. */
export function writtenOf({ paragraphs }: Pick<Derivation, "paragraphs">): Written[] {
  const numbers = new Map(paragraphs.flatMap((p) => p.lines.map((l): [string, number] => [l.id, l.number])));
  const writing = { cache, numberOf: (line: string) => numbers.get(line) };
  return paragraphs.map((p) => ({ id: p.id, markup: paragraphMarkup(p, writing) }));
}
