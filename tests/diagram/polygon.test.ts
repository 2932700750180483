import { describe, expect, it } from "vitest";
import { forcePolygon, polygonSides } from "../../src/diagram/index.ts";
import { settings } from "./settings.ts";
import { twoRopes } from "./two-ropes.ts";

describe("the polygon of forces", () => {
  it("leaves exactly mass times acceleration, at every setting where the forces are determined", () => {
    let seen = 0;
    for (const setting of settings) {
      const scene = twoRopes(setting);
      if (!scene.solved) continue;
      const sides = polygonSides(scene);
      const end = sides.at(-1)?.to ?? { x: 0, y: 0 };
      const size = sides.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
      expect(Math.abs(end.x - scene.netForce.x), JSON.stringify(setting)).toBeLessThanOrEqual(1e-9 * size);
      expect(Math.abs(end.y - scene.netForce.y), JSON.stringify(setting)).toBeLessThanOrEqual(1e-9 * size);
      seen += 1;
    }
    expect(seen).toBeGreaterThan(400);
  });

  it("joins head to tail, the weight first", () => {
    const sides = polygonSides(twoRopes({ ropes: [115, 40] }));
    expect(sides.map((side) => side.key)).toEqual(["weight", "T1", "T2"]);
    for (const [index, side] of sides.entries()) expect(side.from).toEqual(sides[index - 1]?.to ?? { x: 0, y: 0 });
  });

  it("draws the acceleration's arrow where there is one, and none at rest", () => {
    const keys = (ax: number): string[] => forcePolygon(twoRopes({ ropes: [115, 40], ax })).shapes.map((s) => s.key);
    expect(keys(12)).toContain("ma");
    expect(keys(0)).not.toContain("ma");
  });

  it("draws no tension where none is determined, and says so", () => {
    const picture = forcePolygon(twoRopes({ ropes: [180, 0] }));
    expect(picture.shapes).toEqual([]);
    expect(picture.labels.map((label) => label.pieces.map((piece) => piece.text))).toEqual([["sizes not determined"]]);
  });
});
