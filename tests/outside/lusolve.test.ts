// Random problems against a general-purpose linear solver: mathjs lusolve.
import { lusolve } from "mathjs";
import { describe, expect, it } from "vitest";
import { solve } from "../../solver/index.ts";
import { directions, seeded } from "../arbitraries/set-ups.ts";
import { problemOf } from "../solver/set-ups.ts";

const PROBLEMS = 10_000;
const RELATIVE = 1e-12;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The two pulls by lusolve, pushing allowed; null where the directions lie along one line. */
function judge(
  ropes: readonly [number, number],
  mass: number,
  g: number,
  ax: number,
  ay: number,
): [number, number] | null {
  const [a, b] = ropes.map(radians) as [number, number];
  const between = Math.round((ropes[0] - ropes[1]) * 10) / 10;
  if (between % 180 === 0) return null;
  const solved = lusolve(
    [
      [Math.cos(a), Math.cos(b)],
      [Math.sin(a), Math.sin(b)],
    ],
    [[mass * ax], [mass * (g + ay)]],
  ) as number[][];
  return [solved[0]?.[0] ?? NaN, solved[1]?.[0] ?? NaN];
}

type Found = ReturnType<typeof solve>;

/** Where lusolve wants a push: the rope that would push is slack and the other makes the whole m√(ax² + (g + ay)²), or it is impossible. */
function othersAgree({ kind, slack, answers }: Found, pulls: readonly [number, number], whole: number): boolean {
  if (kind === "impossible") return slack.length === 0 && answers.every((a) => a.decimal === null);
  const pushing = pulls[0] < pulls[1] ? 0 : 1;
  const left = answers[1 - pushing]?.decimal ?? NaN;
  return (
    kind === "slack" &&
    slack.join(" ") === answers[pushing]?.id &&
    answers[pushing].decimal === 0 &&
    Math.abs(left - whole) <= RELATIVE * whole
  );
}

describe(`${PROBLEMS} random problems against mathjs lusolve`, () => {
  it("agree to 1e-12 of the larger of the pull and m(g + |a|); where lusolve wants a push, the case is another", () => {
    const random = seeded(9806650);
    const wrong: string[] = [];
    const seen = { taut: 0, other: 0, line: 0 };
    for (let i = 0; i < PROBLEMS; i++) {
      const ropes = directions(random);
      const mass = Math.round((0.1 + random() * 20) * 1000) / 1000;
      const g = random() < 0.5 ? 9.8 : 9.81;
      const [ax, ay] =
        random() < 0.5
          ? [0, 0]
          : [Math.round((random() * 24 - 12) * 10) / 10, Math.round((random() * 18 - 6) * 10) / 10];
      const pulls = judge(ropes, mass, g, ax, ay);
      const found = solve(problemOf({ ropes, mass, gravity: g, ax, ay }));
      if (pulls === null) {
        seen.line++;
        continue;
      }
      const at = JSON.stringify({ ropes, mass, g, ax, ay });
      const bound = (pull: number): number => RELATIVE * Math.max(Math.abs(pull), mass * (g + Math.hypot(ax, ay)));
      const pushes = pulls.some((p) => p < -bound(p));
      if (pushes) {
        seen.other++;
        if (!othersAgree(found, pulls, mass * Math.hypot(ax, g + ay)))
          wrong.push(`${found.kind} although lusolve gives ${pulls.join(", ")} at ${at}`);
        continue;
      }
      seen.taut++;
      if (found.kind !== "taut" && pulls.some((p) => p !== 0)) wrong.push(`${found.kind} and not taut at ${at}`);
      pulls.forEach((pull, k) => {
        const ours = found.answers[k]?.decimal ?? NaN;
        // The double m(g + ay) is not exact in lusolve's right side either; both stay within the bound.
        if (!(Math.abs(ours - pull) <= bound(pull))) wrong.push(`${ours} and ${pull} at ${at}`);
      });
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(seen.taut).toBeGreaterThan(2000);
    expect(seen.other).toBeGreaterThan(1000);
    expect(seen.line).toBeGreaterThan(50);
  });
});
