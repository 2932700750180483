import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chainParameter, hangingCurve, situation, slackCurve } from "../../src/diagram/index.ts";
import { settings } from "./settings.ts";
import { twoRopes } from "./two-ropes.ts";

type Point = { readonly x: number; readonly y: number };

const along = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - (points[i]?.x ?? NaN), p.y - (points[i]?.y ?? NaN)), 0);

const coordinate = fc.double({ min: -10, max: 10, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });

describe("a slack rope's curve", () => {
  it("has the rope's length and ends at both its ends", () => {
    fc.assert(
      fc.property(point, point, fc.double({ min: 1.0001, max: 20, noNaN: true }), (from, to, factor) => {
        const length = Math.max(0.1, Math.hypot(to.x - from.x, to.y - from.y)) * factor;
        const points = hangingCurve(from, to, length, 400);
        expect(Math.abs(along(points) - length)).toBeLessThan(0.003 * length);
        for (const [end, at] of [
          [points[0], from],
          [points.at(-1), to],
        ] as const) {
          expect(end?.x).toBeCloseTo(at.x, 6);
          expect(end?.y).toBeCloseTo(at.y, 6);
        }
      }),
    );
  });

  it("hangs: it is nowhere above the straight line between its ends", () => {
    fc.assert(
      fc.property(point, point, fc.double({ min: 1.001, max: 5, noNaN: true }), (from, to, factor) => {
        const width = to.x - from.x;
        fc.pre(Math.abs(width) > 0.01);
        const length = Math.hypot(width, to.y - from.y) * factor;
        for (const p of hangingCurve(from, to, length, 50)) {
          const line = from.y + ((to.y - from.y) * (p.x - from.x)) / width;
          expect(p.y).toBeLessThanOrEqual(line + 1e-6);
        }
      }),
    );
  });

  it("hangs straight down and comes up again between two ends one above the other", () => {
    const points = hangingCurve({ x: 2, y: 1 }, { x: 2, y: 0.5 }, 2, 300);
    expect(along(points)).toBeCloseTo(2, 1);
    expect(Math.min(...points.map((p) => p.y))).toBeCloseTo(-0.25, 2);
  });

  it("solves sinh(z)/z = ratio", () => {
    fc.assert(
      fc.property(fc.double({ min: 1.0001, max: 1e9, noNaN: true }), (ratio) => {
        const z = chainParameter(ratio);
        expect(Math.abs(Math.sinh(z) / z / ratio - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it("is drawn for every slack rope, its own length, from its end to the load", () => {
    let seen = 0;
    for (const setting of settings) {
      const scene = twoRopes(setting);
      for (const rope of scene.ropes.filter((one) => one.state === "slack")) {
        const points = slackCurve(scene, rope);
        expect(Math.abs(along(points) - rope.length), JSON.stringify(setting)).toBeLessThan(0.02 * rope.length);
        expect(points.at(-1)?.x).toBeCloseTo(scene.position.x, 6);
        expect(points.at(-1)?.y).toBeCloseTo(scene.position.y, 6);
        const looks = situation(scene).shapes.filter((shape) => shape.key === `rope-${rope.id}`);
        expect(looks.map((shape) => shape.look)).toEqual(["rope slack"]);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(200);
  });
});
