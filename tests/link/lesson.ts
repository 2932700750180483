import { decodeState } from "../../shared/link/index.ts";
import type { PageState } from "../../shared/link/index.ts";
import { problemFromDocument } from "../../shared/problem/index.ts";
import type { ProblemDocument } from "../../shared/problem/index.ts";

/** A lesson's start: a lantern of 4.2 kg on two ropes. */
export const DOCUMENT: ProblemDocument = {
  format: 1,
  gravity: 9.8,
  bodies: [{ id: "lantern", name: "brass lantern", mass: 4.2 }],
  ropes: [
    { id: "T1", on: "lantern", direction: { angle: 115 } },
    { id: "T2", on: "lantern", direction: { angle: 40 } },
  ],
};

/** The start state of a lesson with this document. */
export function startOf(document: ProblemDocument): PageState {
  return { problem: problemFromDocument(document), settings: { figures: 3, firstAxis: "vertical" }, upTo: null };
}

/** The lesson's start state. */
export const start: PageState = startOf(DOCUMENT);

/** The state of a query that must have no fault. */
export function stateOf(query: string, from: PageState = start): PageState {
  const { state, faults } = decodeState(query, from);
  if (faults.length > 0) throw new Error(JSON.stringify(faults));
  return state;
}
