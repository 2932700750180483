import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  beginDrag,
  changeOf,
  dragRange,
  givenDegrees,
  loadDirections,
  loadPlace,
  moveDrag,
  ropeDirection,
  settle,
  situation,
  situationView,
  viewDuring,
  type Point,
  type SituationDrag,
} from "../../src/diagram/index.ts";
import { twoRopes } from "./two-ropes.ts";

const whole = fc.integer({ min: dragRange.least, max: dragRange.most });
const tenth = fc.integer({ min: dragRange.least * 10, max: dragRange.most * 10 }).map((n) => n / 10);
const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });

const towards = (from: Point, degrees: number, distance: number): Point => ({
  x: from.x + distance * Math.cos((degrees * Math.PI) / 180),
  y: from.y - distance * Math.sin((degrees * Math.PI) / 180),
});

function taken(ropes: readonly [number, number], rope: string | null, grip: Point): { drag: SituationDrag; at: Point } {
  const scene = twoRopes({ ropes });
  const handle = situation(scene).handles.find((one) => one.rope === rope);
  if (handle === undefined) throw new Error("There is no such handle.");
  const at = { x: handle.centre.x + grip.x, y: handle.centre.y + grip.y };
  return { drag: beginDrag(scene, situationView(scene), handle, at), at };
}

describe("dragging a rope's end", () => {
  it("gives back the direction to which the end was dragged, in whole degrees and in tenths", () => {
    fc.assert(
      fc.property(
        point,
        fc.double({ min: 20, max: 400, noNaN: true }),
        whole,
        tenth,
        (load, distance, coarse, fine) => {
          expect(ropeDirection(load, towards(load, coarse, distance), 90, false)).toBe(coarse);
          expect(ropeDirection(load, towards(load, fine, distance), 90, true)).toBe(fine);
        },
      ),
    );
  });

  it("passes over the top without a jump", () => {
    const load = { x: 0, y: 0 };
    let before = ropeDirection(load, { x: 60, y: -130 }, 65, true);
    for (let x = 60; x >= -60; x -= 0.5) {
      const now = ropeDirection(load, { x, y: -130 }, before, true);
      expect(now - before).toBeGreaterThanOrEqual(0);
      expect(now - before).toBeLessThan(0.5);
      before = now;
    }
    expect(before).toBeGreaterThan(110);
  });

  it("stays in its range and on its side, wherever the pointer goes", () => {
    fc.assert(
      fc.property(point, point, tenth, fc.boolean(), (load, end, before, fine) => {
        const now = ropeDirection(load, end, before, fine);
        expect(now).toBeGreaterThanOrEqual(dragRange.least);
        expect(now).toBeLessThanOrEqual(dragRange.most);
        if (end.y >= load.y) expect(now).toBe(before <= 90 ? dragRange.least : dragRange.most);
      }),
    );
  });

  it("moves nothing at the moment it is taken hold of, wherever in the handle that is", () => {
    const grips = fc.record({
      x: fc.double({ min: -14, max: 14, noNaN: true }),
      y: fc.double({ min: -14, max: 14, noNaN: true }),
    });
    fc.assert(
      fc.property(whole, whole, fc.constantFrom("T1", "T2", null), grips, (a, b, rope, grip) => {
        const { drag, at } = taken([a, b], rope, grip);
        expect(moveDrag(drag, at, false).now).toEqual(drag.start);
      }),
    );
  });

  it("turns one rope only, and names it", () => {
    const { drag, at } = taken([115, 40], "T1", { x: 3, y: -2 });
    const moved = moveDrag(drag, { x: at.x + 20, y: at.y }, false);
    expect(moved.now[1]).toEqual(drag.start[1]);
    expect(changeOf(moved, moved.now)).toEqual({ rope: "T1", degrees: moved.now[0]?.degrees });
    expect(moved.now[0]?.degrees).toBeLessThan(115);
  });
});

describe("dragging the load", () => {
  const ends: [Point, Point] = [
    { x: 100, y: 60 },
    { x: 300, y: 60 },
  ];
  const below = fc.record({
    x: fc.double({ min: 60, max: 340, noNaN: true }),
    y: fc.double({ min: 100, max: 280, noNaN: true }),
  });

  it("finds the place again from the directions", () => {
    fc.assert(
      fc.property(below, (load) => {
        const exact = ends.map((end) => (Math.atan2(load.y - end.y, end.x - load.x) * 180) / Math.PI);
        const back = loadPlace(ends, [exact[0] ?? 0, exact[1] ?? 0]);
        expect(back?.x).toBeCloseTo(load.x, 6);
        expect(back?.y).toBeCloseTo(load.y, 6);
        expect(loadDirections(ends, load, [90, 90], true)).toEqual(exact.map((degrees) => settle(degrees, true)));
      }),
    );
  });

  it("keeps the drawn ends of the ropes where they were, and the load near the pointer", () => {
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -60, max: 20 }), (dx, dy) => {
        const { drag, at } = taken([115, 40], null, { x: 2, y: 1 });
        const moved = moveDrag(drag, { x: at.x + dx, y: at.y + dy }, false);
        const [first, second] = moved.now;
        const scene = twoRopes({ ropes: [first?.degrees ?? 0, second?.degrees ?? 0] });
        const view = viewDuring(moved, scene);
        if (view === null) throw new Error("The view is lost.");
        scene.ropes.forEach((rope, index) => {
          expect(view.x + view.scale * rope.anchor.x).toBeCloseTo(drag.ends[index]?.x ?? NaN, 6);
          expect(view.y - view.scale * rope.anchor.y).toBeCloseTo(drag.ends[index]?.y ?? NaN, 6);
        });
        // Half a degree of each rope, at their lengths here.
        expect(Math.hypot(view.x - moved.wished.x, view.y - moved.wished.y)).toBeLessThan(7);
      }),
    );
  });

  it("is not offered where a rope is tied to a post, nor is that rope's end", () => {
    const { handles } = situation(twoRopes({ ropes: [115, -20] }));
    expect(handles.map((handle) => handle.rope)).toEqual(["T1"]);
    expect(situation(twoRopes({ ropes: [180, 0] })).handles).toEqual([]);
  });

  it("starts from the assumed place where a rope is slack", () => {
    const scene = twoRopes({ ropes: [160, 140] });
    expect(scene.ropes.map((rope) => rope.state)).toEqual(["slack", "free"]);
    const { drag, at } = taken([160, 140], null, { x: 0, y: 0 });
    expect(drag.start.map((turn) => turn.degrees)).toEqual(scene.ropes.map(givenDegrees));
    expect(moveDrag(drag, at, false).now).toEqual(drag.start);
  });
});
