/**
 * Where things stand in the picture of a situation, measured in the picture itself: nothing here asks the layout how it went.
 */
import { describe, expect, it } from "vitest";
import { placedSituation, systemSituation, type Placed, type Point } from "../../../src/diagram/index.ts";
import { sceneFromDocument } from "./from-document.ts";
import { depthOf, distanceToLine, leavesPicture, passesThrough, wayOf } from "./measure.ts";
import { kindNames, namedScenes } from "./scenes.ts";

const placed = namedScenes.map(({ name, scene }) => ({ name, scene, all: placedSituation(scene) }));
/** What is found in the scenes, a line each. */
const found = (of: (one: (typeof placed)[number]) => readonly string[]): string[] =>
  placed.flatMap((one) => of(one).map((fault) => `${one.name}: ${fault}`));

const bodyOf = (all: Placed, id: string): readonly Point[] => all.bodies.find((body) => body.id === id)?.corners ?? [];

describe("the grid", () => {
  it("has scenes of every kind", () => {
    expect(kindNames.length).toBeGreaterThanOrEqual(16);
    for (const kind of kindNames)
      expect(
        placed.some(({ name }) => name.startsWith(kind)),
        kind,
      ).toBe(true);
    expect(placed.length).toBeGreaterThan(500);
  });
});

describe("a rope", () => {
  it("leads from every place where it pulls in the direction it was given, to a tenth of a degree", () => {
    let pulls = 0;
    const wrong = found(({ scene, all }) =>
      scene.ropes.flatMap((rope) =>
        rope.pulls.flatMap((pull, index) => {
          const strands = all.strands.filter((strand) => strand.rope === rope.id && strand.pulls.includes(index));
          const [strand] = strands;
          if (strands.length !== 1 || strand === undefined)
            return [`${rope.id} ${index} is drawn ${strands.length} times`];
          pulls += 1;
          const back = strand.pulls[0] !== index;
          const way = back ? wayOf(strand.end, strand.start) : wayOf(strand.start, strand.end);
          const off = Math.abs(((((way - pull.degrees) % 360) + 540) % 360) - 180);
          return off <= 0.1 ? [] : [`${rope.id} ${index} is ${off.toFixed(2)}° off`];
        }),
      ),
    );
    expect(wrong).toEqual([]);
    expect(pulls).toBeGreaterThan(1500);
  });

  it("is long enough to be seen", () => {
    const short = found(({ all }) =>
      all.strands.flatMap(({ key, start, end }) => {
        const length = Math.hypot(end.x - start.x, end.y - start.y);
        return length < 6 ? [`${key} is ${length.toFixed(1)} long`] : [];
      }),
    );
    expect(short).toEqual([]);
  });

  it("passes through no body but those it leads to", () => {
    const through = found(({ all }) =>
      all.strands.flatMap(({ key, start, end, joins }) =>
        all.bodies.flatMap(({ id, corners }) =>
          !joins.includes(id) && passesThrough(start, end, corners) ? [`${key} through ${id}`] : [],
        ),
      ),
    );
    expect(through).toEqual([]);
  });

  it("begins and ends at the edge of the bodies it leads to", () => {
    const gaps = found(({ all }) =>
      all.strands.flatMap(({ key, start, end, joins }) => {
        const [first, last] = joins.map((id) => bodyOf(all, id));
        return [
          ...(first === undefined || first.length === 0 ? [] : [depthOf([start], first)]),
          ...(last === undefined || last.length === 0 ? [] : [depthOf([end], last)]),
        ].flatMap((depth) => (depth < -9 ? [`${key} ends ${(-depth).toFixed(1)} short of its body`] : []));
      }),
    );
    expect(gaps).toEqual([]);
  });

  it("touches the rim of every fixed pulley it runs over", () => {
    let seen = 0;
    const off = found(({ all }) =>
      all.pulleys.flatMap(({ key, axle, radius }) =>
        all.strands
          .filter(({ joins }) => joins.includes(key))
          .flatMap((strand) => {
            seen += 1;
            const apart = distanceToLine(axle, strand.start, strand.end) - radius;
            return Math.abs(apart) < 0.05 ? [] : [`${strand.key} is ${apart.toFixed(2)} off the rim`];
          }),
      ),
    );
    expect(off).toEqual([]);
    expect(seen).toBeGreaterThan(150);
  });
});

describe("a body", () => {
  it("lies on no other", () => {
    const over = found(({ all }) =>
      all.bodies.flatMap((one, index) =>
        all.bodies.slice(index + 1).flatMap((other) => {
          const depth = depthOf(one.corners, other.corners);
          return depth > 0.05 ? [`${one.id} and ${other.id} overlap by ${depth.toFixed(1)}`] : [];
        }),
      ),
    );
    expect(over).toEqual([]);
  });

  it("stays in the picture, as everything does", () => {
    const outside = found(({ all }) => [
      ...all.bodies.flatMap(({ id, corners }) => (leavesPicture(corners, all) ? [id] : [])),
      ...all.strands.flatMap(({ key, start, end }) => (leavesPicture([start, end], all) ? [key] : [])),
      ...all.surfaces.flatMap(({ surfaces, start, end }) =>
        leavesPicture([start, end], all) ? [`surface ${surfaces.join(" ")}`] : [],
      ),
    ]);
    expect(outside).toEqual([]);
  });

  it("stands on every surface it touches, within its ends", () => {
    let seen = 0;
    const floating = found(({ scene, all }) =>
      scene.surfaces.flatMap((surface) => {
        const corners = bodyOf(all, surface.on);
        seen += 1;
        if (surface.of !== null) {
          const depth = depthOf(corners, bodyOf(all, surface.of));
          return Math.abs(depth) < 0.05 ? [] : [`${surface.on} is ${depth.toFixed(2)} deep in ${surface.of}`];
        }
        const drawn = all.surfaces.find(({ surfaces }) => surfaces.includes(surface.id));
        if (drawn === undefined) return [`${surface.id} is not drawn`];
        const slope = Math.abs(((((wayOf(drawn.start, drawn.end) - surface.degrees) % 180) + 270) % 180) - 90);
        const apart = Math.min(...corners.map((corner) => distanceToLine(corner, drawn.start, drawn.end)));
        return [
          ...(slope <= 0.1 ? [] : [`${surface.id} is ${slope.toFixed(2)}° off`]),
          ...(apart < 0.05 ? [] : [`${surface.on} is ${apart.toFixed(2)} above ${surface.id}`]),
        ];
      }),
    );
    expect(floating).toEqual([]);
    expect(seen).toBeGreaterThan(200);
  });
});

describe("a situation", () => {
  it("is drawn as it is given, in every scene of the grid", () => {
    expect(found(({ all }) => (all.faithful ? [] : ["is not"]))).toEqual([]);
  });

  it("says so where it cannot be: two ropes that would have to be of no length", () => {
    const impossible = sceneFromDocument({
      format: 1,
      gravity: 9.8,
      bodies: [
        { id: "k1", kind: "knot" },
        { id: "k2", kind: "knot" },
        { id: "k3", kind: "knot" },
      ],
      ropes: [
        { id: "T1", on: "k1", direction: { angle: 0 }, to: "k2" },
        { id: "T2", on: "k2", direction: { angle: 0 }, to: "k3" },
        { id: "T3", on: "k3", direction: { angle: 0 }, to: "k1" },
      ],
    });
    expect(placedSituation(impossible).faithful).toBe(false);
    const said = systemSituation(impossible).labels.flatMap(({ pieces }) => pieces.map(({ text }) => text));
    expect(said).toContain("not all of this can be drawn as it is given");
  });
});

describe("the measures", () => {
  const square = [0, 10].flatMap((y) => (y === 0 ? [0, 10] : [10, 0]).map((x) => ({ x, y })));
  const moved = (x: number): Point[] => square.map((corner) => ({ x: corner.x + x, y: corner.y }));

  it("see overlaps, distances and crossings", () => {
    expect(depthOf(square, moved(8))).toBeCloseTo(2, 9);
    expect(depthOf(square, moved(13))).toBeCloseTo(-3, 9);
    expect(passesThrough({ x: -5, y: 5 }, { x: 20, y: 6 }, square)).toBe(true);
    expect(passesThrough({ x: -5, y: 11 }, { x: 20, y: 12 }, square)).toBe(false);
    expect(distanceToLine({ x: 3, y: 4 }, { x: 0, y: 0 }, { x: 1, y: 0 })).toBe(4);
    expect(wayOf({ x: 0, y: 0 }, { x: 1, y: -1 })).toBeCloseTo(45, 9);
    expect(leavesPicture(moved(95), { width: 100, height: 50 })).toBe(true);
  });
});
