// Which axes a body gets: along and across the slope or line it moves on, else level and upright.
import type { SetUp, SetUpBody } from "../../1-bodies/types.ts";
import type { SetUpHypothesis } from "../../2-forces/types.ts";
import { axisDirection, cosineBetween, quarterTurn } from "../../algebra/turned.ts";
import type { Turned } from "../../algebra/turned.ts";
import type { BodyAxes } from "../set-up-types.ts";

/** Whether the reader wants axes along slopes, or level and upright ones everywhere. */
export type AxesChoice = "along" | "level";

/** The axes of every body. */
export function axesOf(setUp: SetUp, hypothesis: SetUpHypothesis, choice: AxesChoice): readonly BodyAxes[] {
  return setUp.bodies.map((body) => (choice === "level" ? levelAxes(body) : tilted(setUp, hypothesis, body)));
}

const levelAxes = (body: SetUpBody): BodyAxes => ({
  body: body.id,
  kind: "level",
  x: axisDirection(0),
  y: axisDirection(1),
});

function tilted(setUp: SetUp, hypothesis: SetUpHypothesis, body: SetUpBody): BodyAxes {
  const under = setUp.contacts.find(
    (c) => c.on === body.id && isOblique(c.tangent) && hypothesis.contacts[c.id]?.touch === "touching",
  );
  const line = body.freedom.kind === "line" && isOblique(body.freedom.along) ? body.freedom.along : null;
  // A body that has left the slope on which nothing but the slope held it moves freely: level axes, as its acceleration has.
  if (under === undefined && body.freedom.kind === "line" && !body.freedom.stated) return levelAxes(body);
  if (under !== undefined) {
    const runs = line !== null && cosineBetween(line, under.normal, setUp.angles).sign === 0;
    return { body: body.id, kind: "slope", x: runs ? line : under.tangent, y: under.normal };
  }
  if (line === null) return alongLevelLine(body);
  // Of the two directions across the line the one that points up.
  const left = quarterTurn(line, 1);
  const up = cosineBetween(left, axisDirection(1), setUp.angles).sign > 0 ? left : quarterTurn(line, 3);
  return { body: body.id, kind: "line", x: line, y: up };
}

/** Level and upright axes, the one along a line of motion pointing the way in which the motion is counted. */
function alongLevelLine(body: SetUpBody): BodyAxes {
  const axes = levelAxes(body);
  if (body.freedom.kind !== "line" || !body.freedom.stated) return axes;
  const { along } = body.freedom;
  const way = (along.heading.degrees + 90 * along.quarters + 720) % 360;
  if (way === 270) return { ...axes, kind: "counted", y: quarterTurn(axes.y, 2) };
  return way === 180 ? { ...axes, kind: "counted", x: quarterTurn(axes.x, 2) } : axes;
}

/** Whether a direction is neither level nor upright. */
const isOblique = ({ heading }: Turned): boolean => heading.side !== 0 && heading.rise !== 0;
