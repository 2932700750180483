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
  /** How small and how large a push or a load (W with the body's number) may be while what sticks goes on sticking. */
  readonly limits?: Readonly<Record<string, OracleValue>>;
  /** Other states that hold as well, with other answers: the model leaves open which of them it is. */
  readonly rivals?: readonly Readonly<Record<string, string>>[];
}

/** A document with its kind and the oracle's answer. */
export interface FixtureCase extends Drawn {
  readonly answer: OracleAnswer;
}

/** The whole fixture. */
export interface Fixture {
  readonly oracle: string;
  readonly date: string;
  readonly cases: readonly FixtureCase[];
}

export const FIXTURE = new URL("fixture.json", import.meta.url);

/** Reads the fixture. */
export const readFixture = (): Fixture => JSON.parse(readFileSync(FIXTURE, "utf8")) as Fixture;

/** The fixture's text, a case a line. */
export function fixtureText({ oracle, date, cases }: Fixture): string {
  const head = JSON.stringify({ oracle, date }).slice(0, -1);
  return `${head},"cases":[\n${cases.map((c) => JSON.stringify(c)).join(",\n")}\n]}\n`;
}
