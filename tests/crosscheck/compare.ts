// Where our derivation and the oracle's answer differ. Accelerations may be called "a" where only one body has one.
import type { Derivation } from "../../solver/index.ts";
import { rootsOfTerms, rootsOfText, negated } from "./exact-text.ts";
import type { FixtureCase, OracleAnswer, OracleValue } from "./fixture.ts";

/** What is read of a derivation's exported data. */
export interface SetUpData {
  readonly case: string;
  readonly slack?: readonly string[];
  readonly answers: readonly {
    readonly id: string;
    readonly decimal: number | null;
    readonly exact: { readonly terms: readonly (readonly [string, number])[] } | null;
  }[];
  readonly states?: readonly { readonly id: string; readonly state: string; readonly friction?: string }[];
}

/** What the exported data does not hold. */
export interface Beyond {
  /** Between which values an open unknown lies. */
  readonly ranges: readonly { readonly id: string; readonly least: number; readonly most: number }[];
  /** What pushes and weights may be while things still stick. */
  readonly limits: readonly { readonly letter: string; readonly end: "largest" | "smallest"; readonly size: number }[];
  /** Whether it is said that another case holds as well. */
  readonly rival: boolean;
}

type Answer = SetUpData["answers"][number];

/** Ranges, limits and rivals of a derivation; none of a load on one or two ropes. */
export function beyondExport(derivation: Derivation): Beyond {
  if (derivation.model !== "system") return { ranges: [], limits: [], rival: false };
  const { ranges, limits, rival } = derivation.system;
  return {
    ranges,
    rival: rival !== null,
    limits: limits.flatMap(({ limit, values }) =>
      limit === null
        ? []
        : [{ letter: limit.letter, end: limit.end, size: values.symbols.get(limit.letter)?.decimal ?? NaN }],
    ),
  };
}

/** Beside the largest force or acceleration of the problem. */
const RELATIVE = 1e-11;

/** A surface without friction is said to be smooth as long as it is touched. */
const sameState = (ours: string, theirs: string): boolean =>
  ours === theirs || (ours === "smooth" && theirs === "touching");

/** "taut" and "slack" are the cases of one load on one or two ropes. */
const caseOf = (data: SetUpData): string => (data.case === "taut" || data.case === "slack" ? "determined" : data.case);

function stateOf(data: SetUpData, id: string): string {
  return data.states?.find((s) => s.id === id)?.state ?? (data.slack?.includes(id) === true ? "slack" : "taut");
}

const isCase = (data: SetUpData, states: Readonly<Record<string, string>>): boolean =>
  Object.entries(states).every(([id, state]) => sameState(stateOf(data, id), state));

function answerFor(data: SetUpData, id: string): Answer | undefined {
  const own = data.answers.find((a) => a.id === id);
  const bare = /^a\d+([xy]?)$/.exec(id);
  return own ?? (bare === null ? undefined : data.answers.find((a) => a.id === `a${bare[1] ?? ""}`));
}

/** The surface whose friction has this id. */
function surfaceOf(id: string, { states }: OracleAnswer): string | undefined {
  const surface = id.startsWith("f") ? `N${id.slice(1)}` : id.slice(0, -1);
  return id in states || !(surface in states) ? undefined : surface;
}

function valueDiffers(id: string, ours: Answer, theirs: OracleValue, scale: number, sizeOnly: boolean): string | null {
  if (!("decimal" in theirs))
    return ours.decimal === null
      ? null
      : `${id} is ${ours.decimal}, but anything from ${theirs.least ?? "−∞"} to ${theirs.most ?? "∞"}`;
  if (ours.decimal === null) return `${id} has no decimal, expected ${theirs.decimal}`;
  const wanted = Number(theirs.decimal);
  const off = sizeOnly ? ours.decimal - Math.abs(wanted) : ours.decimal - wanted;
  if (!(Math.abs(off) <= RELATIVE * scale)) return `${id} is ${ours.decimal}, expected ${theirs.decimal}`;
  if (theirs.exact === undefined) return null;
  if (ours.exact === null) return `${id} has no exact value, expected ${theirs.exact}`;
  const mine = JSON.stringify(rootsOfTerms(ours.exact.terms));
  const text = rootsOfText(theirs.exact);
  const wantedText = JSON.stringify(sizeOnly && wanted < 0 ? negated(text) : text);
  return mine === wantedText ? null : `${id} is exactly ${mine}, expected ${theirs.exact}`;
}

/** Friction is given by its size, and by the way it acts along the surface. */
function frictionDiffers(data: SetUpData, id: string, surface: string, value: OracleValue): string | null {
  if (!("decimal" in value) || Number(value.decimal) === 0) return null;
  const acts = Number(value.decimal) > 0 ? "forwards" : "backwards";
  const ours = data.states?.find((s) => s.id === surface)?.friction;
  return ours === acts ? null : `${id} acts ${String(ours)}, expected ${acts}`;
}

function beyondDiffers(
  { answers, limits = {} }: OracleAnswer,
  { ranges, limits: ends }: Beyond,
  scale: number,
): string[] {
  const near = (a: number, b: number): boolean => a === b || Math.abs(a - b) <= 100 * RELATIVE * scale;
  const wrongRanges = ranges.filter(({ id, least, most }) => {
    const value = answers[id];
    if (value === undefined || "decimal" in value) return false;
    const [low, high] = [Number(value.least ?? -Infinity), Number(value.most ?? Infinity)];
    // Friction that may act either way counts along the way it is drawn.
    return !(near(least, low) && near(most, high)) && !(near(least, -high) && near(most, -low));
  });
  const limitOf = (letter: string): OracleValue | undefined =>
    letter === "W" ? Object.entries(limits).find(([id]) => /^W\d+$/.test(id))?.[1] : limits[letter];
  const wrongEnds = ends.filter(({ letter, end, size }) => {
    const value = limitOf(letter);
    if (value === undefined || "decimal" in value) return !(value !== undefined && near(size, Number(value.decimal)));
    return !near(size, Number((end === "largest" ? value.most : value.least) ?? NaN));
  });
  return [
    ...wrongRanges.map((r) => `${r.id} may be from ${r.least} to ${r.most}, expected ${JSON.stringify(answers[r.id])}`),
    ...wrongEnds.map((e) => `${e.letter} is ${e.end} at ${e.size}, expected ${JSON.stringify(limitOf(e.letter))}`),
  ];
}

/** Every difference in words; none if they agree. */
export function differences({ answer }: FixtureCase, data: SetUpData, beyond: Beyond): string[] {
  if (caseOf(data) !== answer.case) return [`the case is ${data.case}, expected ${answer.case}`];
  if (answer.case === "impossible")
    return data.answers.filter((a) => a.decimal !== null).map((a) => `${a.id} has a value in an impossible problem`);
  if (beyond.rival !== (answer.rivals !== undefined))
    return [`another case ${beyond.rival ? "is" : "is not"} said to hold, against ${JSON.stringify(answer.rivals)}`];
  // Where several cases hold, any of them may be in force; the oracle gives the answers of one.
  if (answer.rivals?.some((states) => isCase(data, states)) === true) return [];
  const found: string[] = [];
  for (const [id, state] of Object.entries(answer.states))
    if (!sameState(stateOf(data, id), state)) found.push(`${id} is ${stateOf(data, id)}, expected ${state}`);
  const sizes = Object.values(answer.answers).flatMap((v) =>
    ("decimal" in v ? [v.decimal] : [v.least ?? 0, v.most ?? 0]).map((x) => Math.abs(Number(x))),
  );
  const scale = Math.max(1e-9, ...sizes);
  for (const [id, value] of Object.entries(answer.answers)) {
    const ours = answerFor(data, id);
    const surface = surfaceOf(id, answer);
    const differs =
      ours === undefined
        ? `there is no answer ${id}, expected ${JSON.stringify(value)}`
        : (valueDiffers(id, ours, value, scale, surface !== undefined) ??
          (surface === undefined ? null : frictionDiffers(data, id, surface, value)));
    if (differs !== null) found.push(differs);
  }
  return [...found, ...beyondDiffers(answer, beyond, scale)];
}
