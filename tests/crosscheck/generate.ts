// All kinds of documents, each drawn so many times from a seed of its own.
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { SET_UP_CASES } from "../outside/set-ups/index.ts";
import { Draw } from "./draw.ts";
import * as crates from "./kinds/crates.ts";
import * as edges from "./kinds/edges.ts";
import * as frames from "./kinds/frames.ts";
import * as hanging from "./kinds/hanging.ts";
import * as hoists from "./kinds/hoists.ts";
import * as knots from "./kinds/knots.ts";
import * as noAnswer from "./kinds/no-answer.ts";
import * as pulleys from "./kinds/pulleys.ts";
import * as pushes from "./kinds/pushes.ts";
import * as slopes from "./kinds/slopes.ts";

/** A document and the kind it was drawn from. */
export interface Drawn {
  readonly kind: string;
  readonly document: ProblemDocument;
}

type Template = (draw: Draw) => ProblemDocument;

/** How many of each kind. */
const COUNTS: readonly (readonly [number, Template])[] = [
  [26, hanging.twoRopes],
  [6, hanging.oneRope],
  [14, hanging.inFrame],
  [14, hanging.placed],
  [24, hanging.lengths],
  [12, hanging.pulledAside],
  [32, knots.cascade],
  [16, knots.garland],
  [10, knots.tower],
  [10, knots.placedKnot],
  [28, hoists.hoist],
  [28, hoists.table],
  [16, hoists.tableBetween],
  [32, hoists.slopeAndBucket],
  [28, hoists.twoSlopes],
  [28, slopes.slope],
  [32, slopes.pushed],
  [14, slopes.pulledOff],
  [18, slopes.held],
  [14, slopes.hauled],
  [16, slopes.wall],
  [8, slopes.trough],
  [36, crates.stacked],
  [16, crates.stackedOnSlope],
  [16, crates.pulledFromUnder],
  [26, crates.sideBySide],
  [28, crates.row],
  [16, crates.coasting],
  [16, crates.wedge],
  [16, crates.onTheGround],
  [24, pulleys.strands],
  [12, pulleys.loadBelow],
  [14, pulleys.tableAndPulley],
  [20, pulleys.pulleyOnPulley],
  [12, pulleys.hauledPulley],
  [16, frames.liftFloor],
  [18, frames.cartFloor],
  [12, frames.movingTable],
  [8, frames.pressedAgainstCart],
  [12, pushes.holds],
  [14, pushes.keepsSliding],
  [10, pushes.holdsAside],
  [10, pushes.holdsHoist],
  [8, pushes.keepsOnWedge],
  [6, edges.free],
  [6, edges.ropeWithoutPull],
  [6, edges.justSticks],
  [6, edges.justHolds],
  [8, edges.eitherSlides],
  [6, edges.justTouches],
  [6, edges.balanced],
  [6, edges.weightless],
  [14, noAnswer.threeRopes],
  [4, noAnswer.upright],
  [12, noAnswer.twoHolds],
  [6, noAnswer.twoOnTheFloor],
  [10, noAnswer.cannotHold],
  [8, noAnswer.cannotSpeedUp],
];

/** One in so many is written in pounds and feet. */
const POUNDS = 9;

/** The same numbers in pounds and feet: masses are slugs and weights pounds, under another gravity. */
function inPounds(document: ProblemDocument, draw: Draw): ProblemDocument {
  return { ...document, units: "lbf-ft", gravity: draw.pick([32, 32.2, 32.174]) };
}

/** The documents of published cases that are given in full: their printed values check the oracle too. */
const published = (): Drawn[] =>
  SET_UP_CASES.flatMap(({ id, documents }) =>
    documents.flatMap((document) => (typeof document === "function" ? [] : [{ kind: `published ${id}`, document }])),
  );

/** The seed of the fixture. */
const SEED = 1;
/** So that the numbers of two seeds are not each other's neighbours. */
const APART = 15485863;

/** Every document, in order; always the same ones for a seed. */
export function generate(seed = SEED): Drawn[] {
  return [...published(), ...drawn(seed)];
}

/** A number of a kind's own, so that a new kind does not change what is drawn for the others. */
const ownNumber = (name: string): number =>
  Array.from(name, (c) => c.charCodeAt(0)).reduce((total, code) => (31 * total + code) % 100003, 0);

function drawn(seed: number): Drawn[] {
  return COUNTS.flatMap(([count, template]) =>
    Array.from({ length: count }, (_, i): Drawn => {
      const draw = new Draw(APART * seed + 1000 * ownNumber(template.name) + i);
      const document = template(draw);
      const pounds = i % POUNDS === POUNDS - 1 && template !== hanging.lengths;
      return { kind: template.name, document: pounds ? inPounds(document, draw) : document };
    }),
  );
}
