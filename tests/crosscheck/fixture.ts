// The fixture: documents, and what an oracle that knows nothing of our solver says of them.
import { readFileSync } from "node:fs";
import type { Drawn } from "./generate.ts";

/** An unknown: its value, or, where it is not determined, how small and how large it may be (null: no bound). */
export type OracleValue =
  | { readonly decimal: string; readonly exact?: string }
  | { readonly least: string | null; readonly most: string | null };

/** What the oracle says of a document. */
export interface OracleAnswer {
  readonly case: "determined" | "under-determined" | "impossible";
  /** Ropes and surfaces by id. */
  readonly states: Readonly<Record<string, string>>;
  /** Tensions, normal forces, frictions and pushes by id; accelerations along a line as "a" with the body's number. */
  readonly answers: Readonly<Record<string, OracleValue>>;
  /** One load that cannot stay as it was drawn, and swings until one rope carries it. */
  readonly swings?: true;
  /** Other states that hold as well, with other answers. */
  readonly rivals?: readonly unknown[];
}

/** A document with its kind and the oracle's answer. */
export interface FixtureCase extends Drawn {
  readonly answer: OracleAnswer;
}

/** The whole fixture. */
export interface Fixture {
  readonly oracle: string;
  readonly date: string;
  /** Documents that the model leaves open, so that nothing is to be compared. */
  readonly dropped: number;
  readonly cases: readonly FixtureCase[];
}

export const FIXTURE = new URL("fixture.json", import.meta.url);

/** Reads the fixture. */
export const readFixture = (): Fixture => JSON.parse(readFileSync(FIXTURE, "utf8")) as Fixture;

/** The fixture's text, a case a line. */
export function fixtureText({ oracle, date, dropped, cases }: Fixture): string {
  const head = JSON.stringify({ oracle, date, dropped }).slice(0, -1);
  return `${head},"cases":[\n${cases.map((c) => JSON.stringify(c)).join(",\n")}\n]}\n`;
}
