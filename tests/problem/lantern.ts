/** The document that the format's description gives as its example, and ways to spoil it. */
import { readProblem, readProblemDocument } from "../../shared/problem/schema.ts";
import type { Fault, Problem } from "../../shared/problem/index.ts";

/** The example document. */
export const LANTERN = `{
  "format": 1,
  "gravity": 9.8,
  "bodies": [{ "id": "lantern", "name": "brass lantern", "mass": 4.2, "acceleration": { "x": 0, "y": 0 } }],
  "ropes": [
    { "id": "T1", "on": "lantern", "direction": { "angle": 115 } },
    { "id": "T2", "on": "lantern", "direction": { "angle": 40 } }
  ]
}`;

/** The example with a piece of its text replaced. */
export function lantern(piece = "", replacement = ""): string {
  if (!LANTERN.includes(piece)) throw new Error(`the example does not hold ${piece}`);
  return LANTERN.replace(piece, replacement);
}

/** The problem in a text that must be accepted. */
export function accepted(text: string): Problem {
  const reading = readProblem(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

/** The faults of a text that must be refused. */
export function faultsOf(text: string): readonly Fault[] {
  const reading = readProblem(text);
  if (reading.ok) throw new Error(`accepted: ${text}`);
  return reading.faults;
}

/** The faults of data that must be refused. */
export function faultsOfData(data: unknown): readonly Fault[] {
  const reading = readProblemDocument(data);
  if (reading.ok) throw new Error("accepted");
  return reading.faults;
}

/** The faults of data that must be refused, without the rule of how numbers are written, which stands behind each range. */
export function toldOf(data: unknown): readonly Fault[] {
  return faultsOfData(data).map((fault) => ({
    ...fault,
    accepted: fault.accepted.replace(/, as a JSON number of .*$/, ""),
  }));
}
