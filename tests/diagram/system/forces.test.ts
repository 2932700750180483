import { describe, expect, it } from "vitest";
import {
  bodyForceDiagram,
  bodyPolygon,
  bodySides,
  type Picture,
  type SystemBody,
  type SystemForce,
  type SystemScene,
} from "../../../src/diagram/index.ts";
import { sceneFromDocument } from "./from-document.ts";
import { crosscheckScenes } from "./pictures.ts";

const solved = crosscheckScenes.filter(({ scene }) => scene.solved);
const sized = (body: SystemBody): readonly SystemForce[] =>
  body.forces.filter(({ size }) => size !== null && size !== 0);

/** The first and the last point of a shaft with its head, as they are drawn. */
function arrow(picture: Picture, key: string): { from: [number, number]; to: [number, number] } | null {
  const numbers = (found: string): [number, number][] => {
    const d = picture.shapes.find((shape) => shape.key === found)?.d ?? "";
    return Array.from(d.matchAll(/(-?[\d.]+),(-?[\d.]+)/g), ([, x, y]): [number, number] => [Number(x), Number(y)]);
  };
  const [from] = numbers(`${key}-shaft`);
  const tip = numbers(key)[1];
  return from === undefined || tip === undefined ? null : { from, to: tip };
}

const lengthOf = (a: { from: [number, number]; to: [number, number] }): number =>
  Math.hypot(a.to[0] - a.from[0], a.to[1] - a.from[1]);
const texts = (picture: Picture): string[] =>
  picture.labels.map(({ pieces }) => pieces.map(({ text }) => text).join(" "));

/** The same scene with one body changed. */
const withForces = (scene: SystemScene, index: number, forces: readonly SystemForce[]): SystemScene => ({
  ...scene,
  bodies: scene.bodies.map((body, i) => (i === index ? { ...body, forces } : body)),
});

const hoist = sceneFromDocument(
  {
    format: 1,
    gravity: 10,
    bodies: [
      { id: "crate", mass: 3, motion: { along: { angle: -90 } } },
      { id: "bucket", mass: 2, motion: { along: { angle: 90 } } },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "crate", direction: { angle: 90 } },
          { on: "bucket", direction: { angle: 90 } },
        ],
      },
    ],
  },
  { case: "determined", states: {}, answers: { T: { decimal: "24" }, a1: { decimal: "2" }, a2: { decimal: "2" } } },
);

describe("the force diagram of a body at the answer", () => {
  it("draws one tension equally long on both bodies, and forces in proportion to their sizes", () => {
    const [crate, bucket] = ["crate", "bucket"].map((id) => bodyForceDiagram(hoist, id, "to-scale"));
    if (crate === undefined || bucket === undefined) throw new Error("There are two bodies.");
    const lengths = [arrow(crate, "T"), arrow(bucket, "T"), arrow(crate, "weight"), arrow(bucket, "weight")].map(
      (one) => (one === null ? NaN : lengthOf(one)),
    );
    const [first = 0, second = 0, heavy = 0, light = 0] = lengths;
    expect(second).toBeCloseTo(first, 1);
    expect(heavy / first).toBeCloseTo(30 / 24, 2);
    expect(light / first).toBeCloseTo(20 / 24, 2);
  });

  it("keeps one scale for all bodies whose arrows it lets be seen, and says so of the others", () => {
    let others = 0;
    for (const { name, scene } of solved) {
      const bars = new Map<string, string[]>();
      for (const body of scene.bodies.filter((one) => sized(one).length > 0)) {
        const picture = bodyForceDiagram(scene, body.id, "to-scale");
        const said = texts(picture);
        const apart = said.some((text) => text.includes("times as long as"));
        if (apart) others += 1;
        else bars.set(said.find((text) => text.startsWith("this long is")) ?? "none", [body.id]);
      }
      expect(bars.size, `${name}: ${[...bars.keys()].join(", ")}`).toBeLessThanOrEqual(1);
    }
    expect(others).toBeGreaterThan(10);
  });

  it("draws every force that has a size in its direction, from the dot or beside it", () => {
    let arrows = 0;
    for (const { name, scene } of solved) {
      for (const body of scene.bodies) {
        const picture = bodyForceDiagram(scene, body.id, "to-scale");
        const seen = new Map<string, number>();
        for (const force of sized(body)) {
          const nth = (seen.get(force.ref) ?? 0) + 1;
          seen.set(force.ref, nth);
          const drawn = arrow(picture, nth === 1 ? force.ref : `${force.ref}-${nth}`);
          // One that is too short for a head is a tick.
          if (drawn === null || lengthOf(drawn) < 12) continue;
          arrows += 1;
          const way = (Math.atan2(drawn.from[1] - drawn.to[1], drawn.to[0] - drawn.from[0]) * 180) / Math.PI;
          const off = Math.abs(((((way - force.degrees) % 360) + 540) % 360) - 180);
          const told = `${name} ${body.id} ${force.ref}: ${way} for ${force.degrees}`;
          expect(Math.min(off, (force.size ?? 0) < 0 ? Math.abs(off - 180) : off), told).toBeLessThan(0.2);
        }
      }
    }
    expect(arrows).toBeGreaterThan(2000);
  });

  it("turns the arrow of a push that comes out below zero", () => {
    const push: SystemForce = { ref: "P", kind: "push", label: [], degrees: 0, size: -30, text: "−30 N", given: false };
    const drawn = arrow(bodyForceDiagram(withForces(hoist, 0, [push]), "crate", "to-scale"), "P");
    expect((drawn?.to[0] ?? 0) - (drawn?.from[0] ?? 0)).toBeLessThan(-20);
  });

  it("leaves out what is zero and names it", () => {
    const forces = (hoist.bodies[0]?.forces ?? []).map((force) => (force.ref === "T" ? { ...force, size: 0 } : force));
    const picture = bodyForceDiagram(withForces(hoist, 0, forces), "crate", "to-scale");
    expect(picture.shapes.some(({ key }) => key.startsWith("T"))).toBe(false);
    expect(texts(picture)).toContain("T = 0");
  });

  it("says that sizes are not determined where one is not", () => {
    const forces = (hoist.bodies[0]?.forces ?? []).map((force) =>
      force.ref === "T" ? { ...force, size: null } : force,
    );
    const scene = withForces(hoist, 0, forces);
    expect(texts(bodyForceDiagram(scene, "crate", "to-scale"))).toContain("sizes not determined");
    expect(texts(bodyPolygon(scene, "crate"))).toEqual(["sizes not determined"]);
  });
});

describe("the force diagram of a body before the answer", () => {
  it("ends in the open where a size is unknown, and fully where it is given", () => {
    const picture = bodyForceDiagram(hoist, "crate", "unknown");
    const look = (key: string): string => picture.shapes.find((shape) => shape.key === key)?.look ?? "";
    expect(look("T")).toContain("open-head");
    expect(look("weight")).toMatch(/^head/);
  });

  it("shows no size that is to be found, and no acceleration but its positive sense", () => {
    const picture = bodyForceDiagram(hoist, "bucket", "unknown");
    expect(texts(picture).join(" ")).not.toMatch(/24|=/);
    const [up] = Array.from(picture.shapes.find(({ key }) => key === "a")?.d.matchAll(/,(-?[\d.]+)/g) ?? [], ([, y]) => Number(y)); // prettier-ignore
    expect(up).toBeDefined();
  });

  it("draws forces along one line beside each other", () => {
    const two = { ref: "S", kind: "tension", label: [], degrees: 90, size: 1, text: null, given: false } as const;
    const scene = withForces(hoist, 0, [two, { ...two, degrees: 91 }, { ...two, ref: "N", kind: "normal" }]);
    const picture = bodyForceDiagram(scene, "crate", "unknown");
    const starts = ["S", "S-2", "N"].map((key) => arrow(picture, key)?.from[0] ?? 0).sort((a, b) => a - b);
    expect((starts[1] ?? 0) - (starts[0] ?? 0)).toBeGreaterThan(6);
    expect((starts[2] ?? 0) - (starts[1] ?? 0)).toBeGreaterThan(6);
  });

  it("draws its axes where the law has them", () => {
    const tilted = { ...hoist, bodies: hoist.bodies.map((body) => ({ ...body, axes: { x: 160, y: 70 } })) };
    const picture = bodyForceDiagram(tilted, "crate", "unknown");
    const end = picture.labels.find(({ key }) => key === "axis-y-label")?.box;
    expect(end?.x).toBeGreaterThan(180);
    expect(end?.y).toBeLessThan(60);
  });
});

describe("the polygon of a body", () => {
  it("begins with the weight, goes on where the one before ends, and turns anticlockwise", () => {
    let seen = 0;
    for (const { name, scene } of solved) {
      for (const body of scene.bodies) {
        const sides = bodySides(scene, body);
        if (sides.some(({ key }) => key === "weight")) expect(sides[0]?.key, name).toBe("weight");
        const ways = sides.map(({ from, to }) => (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI);
        const turns = ways.map((way) => Number(((way + 90 + 720.001) % 360).toFixed(4)));
        expect(turns, `${name} ${body.id}`).toEqual([...turns].sort((one, other) => one - other));
        for (const [index, side] of sides.entries()) expect(side.from).toEqual(sides[index - 1]?.to ?? { x: 0, y: 0 });
        seen += sides.length;
      }
    }
    expect(seen).toBeGreaterThan(2000);
  });

  it("draws the acceleration's arrow where there is one", () => {
    expect(bodyPolygon(hoist, "crate").shapes.map(({ key }) => key)).toContain("ma");
    const still = { ...hoist, bodies: hoist.bodies.map((body) => ({ ...body, net: { x: 0, y: 0, label: [] } })) };
    expect(bodyPolygon(still, "crate").shapes.map(({ key }) => key)).not.toContain("ma");
  });
});
