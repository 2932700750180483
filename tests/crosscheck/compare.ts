// Where our derivation's data and the oracle's answer differ. Accelerations may be called "a" where only one is unknown.
import type { FixtureCase, OracleValue } from "./fixture.ts";
import { negated, rootsOfTerms, rootsOfText } from "./exact-text.ts";

/** What is read of a derivation's exported data. */
export interface SetUpData {
  readonly case: string;
  readonly slack?: readonly string[];
  readonly answers: readonly {
    readonly id: string;
    readonly decimal: number | null;
    readonly exact: { readonly terms: readonly (readonly [string, number])[] } | null;
  }[];
  readonly states?: readonly { readonly id: string; readonly state: string }[];
}

type Answer = SetUpData["answers"][number];

/** Beside the largest force or acceleration of the problem. */
const RELATIVE = 1e-11;

/** A surface without friction is said to be smooth as long as it is touched. */
const sameState = (ours: string, theirs: string): boolean =>
  ours === theirs || (ours === "smooth" && theirs === "touching");

/** "taut" and "slack" are the cases of one load on one or two ropes. */
const caseOf = (data: SetUpData): string => (data.case === "taut" || data.case === "slack" ? "determined" : data.case);

function answerFor(data: SetUpData, id: string): Answer | undefined {
  const own = data.answers.find((a) => a.id === id);
  const bare = /^a\d+([xy]?)$/.exec(id);
  return own ?? (bare === null ? undefined : data.answers.find((a) => a.id === `a${bare[1] ?? ""}`));
}

/** Friction is given with a direction of its own: only its size is compared. */
const isFriction = (id: string, oracle: FixtureCase["answer"]): boolean =>
  !(id in oracle.states) && /^f\d*$|f$/.test(id);

function valueDiffers(id: string, ours: Answer, theirs: OracleValue, scale: number, sizeOnly: boolean): string | null {
  if (!("decimal" in theirs))
    return ours.decimal === null
      ? null
      : `${id} is ${ours.decimal}, but anything from ${theirs.least ?? "−∞"} to ${theirs.most ?? "∞"}`;
  if (ours.decimal === null) return `${id} has no decimal, expected ${theirs.decimal}`;
  const wanted = Number(theirs.decimal);
  const off = sizeOnly ? Math.abs(ours.decimal) - Math.abs(wanted) : ours.decimal - wanted;
  if (!(Math.abs(off) <= RELATIVE * scale)) return `${id} is ${ours.decimal}, expected ${theirs.decimal}`;
  if (theirs.exact === undefined || ours.exact === null) return null;
  const mine = JSON.stringify(rootsOfTerms(ours.exact.terms));
  const text = rootsOfText(theirs.exact);
  if (mine === JSON.stringify(text) || (sizeOnly && mine === JSON.stringify(negated(text)))) return null;
  return `${id} is exactly ${mine}, expected ${theirs.exact}`;
}

/** Every difference in words; none if they agree. */
export function differences({ answer }: FixtureCase, data: SetUpData): string[] {
  if (caseOf(data) !== answer.case) return [`the case is ${data.case}, expected ${answer.case}`];
  if (answer.case === "impossible")
    return data.answers.filter((a) => a.decimal !== null).map((a) => `${a.id} has a value in an impossible problem`);
  const found: string[] = [];
  for (const [id, state] of Object.entries(answer.states)) {
    const ours = data.states?.find((s) => s.id === id)?.state ?? (data.slack?.includes(id) === true ? "slack" : "taut");
    if (!sameState(ours, state)) found.push(`${id} is ${ours}, expected ${state}`);
  }
  const decimals = Object.values(answer.answers).flatMap((v) => ("decimal" in v ? [Math.abs(Number(v.decimal))] : []));
  const scale = Math.max(1e-9, ...decimals);
  for (const [id, value] of Object.entries(answer.answers)) {
    const ours = answerFor(data, id);
    if (ours === undefined) {
      // A body that turns out to stay at rest need not be said to have an acceleration of 0.
      if (!id.startsWith("a") || !("decimal" in value) || Math.abs(Number(value.decimal)) > RELATIVE * scale)
        found.push(`there is no answer ${id}, expected ${JSON.stringify(value)}`);
      continue;
    }
    const differs = valueDiffers(id, ours, value, scale, isFriction(id, answer));
    if (differs !== null) found.push(differs);
  }
  return found;
}
