// A row of the table of cases.
import type { SetUp } from "./set-ups.ts";

/** The weight of the usual lantern, 4.2 kg at 9.8 m/s², in newtons. */
export const W = 4.2 * 9.8;

/** A situation, what it is called, which ropes are slack, and the answers by id; null where an answer stays open. */
export interface Row {
  readonly title: string;
  readonly setUp: SetUp;
  readonly kind: string;
  readonly slack?: readonly string[];
  readonly answers: Readonly<Record<string, number | null>>;
}
