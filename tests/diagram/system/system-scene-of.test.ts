/**
 * From a derivation to its scene: what the pictures say of forces has to be what another program found for the same document.
 */
import { describe, expect, it } from "vitest";
import { bodySides, systemSceneOf, systemSituation, type SystemScene } from "../../../src/diagram/index.ts";
import { defaultSettings, deriveSystem } from "../../../solver/index.ts";
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { collisions } from "../collisions.ts";
import { problemOf } from "./from-document.ts";
import { allPictures, crosscheckScenes } from "./pictures.ts";

const chosen = crosscheckScenes.filter((_, index) => index % 6 === 0);
const derived = chosen.map((one) => ({ ...one, derived: systemSceneOf(deriveSystem(problemOf(one.document))) }));

const document: ProblemDocument = {
  format: 1,
  gravity: 9.8,
  bodies: [
    { id: "crate", name: "tea crate", mass: "4.25" },
    { id: "bucket", name: "bucket", weight: 20, motion: { along: { angle: -90 } } },
  ],
  ropes: [
    {
      id: "T",
      pulls: [
        { on: "crate", direction: { angle: 25 } },
        { on: "bucket", direction: { angle: 90 } },
      ],
    },
  ],
  surfaces: [{ id: "N", on: "crate", slope: { angle: 25 }, friction: { static: 0.2, kinetic: 0.1 } }],
  pushes: [{ id: "P", on: "crate", direction: { angle: 0 }, size: "1.5" }],
};
const scene = (mark: "." | "," = "."): SystemScene =>
  systemSceneOf(deriveSystem(problemOf(document), { ...defaultSettings, mark }));
const written = (label: readonly { text: string }[]): string => label.map(({ text }) => text).join("");

describe("the scene of a derivation", () => {
  it("has the same sizes of forces as the oracle, wherever that has one", () => {
    let compared = 0;
    for (const { name, scene: expected, derived: found, answer } of derived) {
      if (answer.case !== "determined" || answer.rivals !== undefined) continue;
      for (const [index, body] of expected.bodies.entries()) {
        for (const force of body.forces) {
          if (force.kind === "weight" || force.size === null || force.size === 0) continue;
          const same = found.bodies[index]?.forces.filter(({ ref }) => ref === force.ref) ?? [];
          const turned = same.map(({ degrees, size }) => ({
            x: (size ?? NaN) * Math.cos((degrees * Math.PI) / 180),
            y: (size ?? NaN) * Math.sin((degrees * Math.PI) / 180),
          }));
          const wanted = {
            x: force.size * Math.cos((force.degrees * Math.PI) / 180),
            y: force.size * Math.sin((force.degrees * Math.PI) / 180),
          };
          const nearest = Math.min(...turned.map(({ x, y }) => Math.hypot(x - wanted.x, y - wanted.y)));
          expect(nearest, `${name}: ${body.id} ${force.ref}`).toBeLessThan(1e-6 * Math.abs(force.size));
          compared += 1;
        }
      }
    }
    expect(compared).toBeGreaterThan(200);
  });

  it("has forces on each body that leave its mass times its acceleration", () => {
    let closed = 0;
    for (const { name, derived: found } of derived) {
      for (const body of found.bodies.filter(
        ({ net, forces }) => net !== null && forces.every((f) => f.size !== null),
      )) {
        const sides = bodySides(found, body);
        const end = sides.at(-1)?.to ?? { x: 0, y: 0 };
        const size = sides.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
        const off = Math.hypot(end.x - (body.net?.x ?? 0), end.y - (body.net?.y ?? 0));
        expect(off, `${name}: ${body.id}`).toBeLessThanOrEqual(1e-9 * size);
        closed += 1;
      }
    }
    expect(closed).toBeGreaterThan(150);
  });

  it("makes pictures whose labels keep apart", () => {
    const found = derived.flatMap(({ name, derived: one }) =>
      allPictures(name, one).flatMap(({ name: of, picture }) => collisions(picture).map((fault) => `${of}: ${fault}`)),
    );
    expect(found).toEqual([]);
  });

  it("writes given numbers as they were given, and letters as the lines have them", () => {
    const [crate, bucket] = scene().bodies;
    expect(crate?.loadText).toBe("4.25\u00a0kg");
    expect(bucket?.loadText).toBe("20\u00a0N");
    expect(crate?.forces.map(({ label }) => written(label))).toEqual(["m1g", "T", "N", "f", "P"]);
    expect(bucket?.forces.map(({ label }) => written(label))).toEqual(["W2", "T"]);
    expect(scene().pushes[0]?.text).toBe("1.5\u00a0N");
    expect(scene(",").pushes[0]?.text).toBe("1,5\u00a0N");
    expect(scene().surfaces[0]?.degreesText).toBe("25°");
  });

  it("tells what is given from what is to be found", () => {
    const [crate, bucket] = scene().bodies;
    expect(crate?.forces.filter(({ given }) => given).map(({ ref }) => ref)).toEqual(["weight1", "P"]);
    expect(bucket?.accelerationGiven).toBe(false);
    expect(bucket?.along).toBe(-90);
    expect(crate?.axes).toEqual({ x: 25, y: 115 });
  });

  it("speaks of the angle between the weight and the axis across the slope, and of none where there is none", () => {
    const [crate] = scene().bodies;
    const weight = crate?.forces.find(({ kind }) => kind === "weight");
    expect(weight?.angle).toMatchObject({ from: -65, ref: "theta" });
    expect(written(weight?.angle?.label ?? [])).toBe("θ = 25°");
    expect(crate?.forces.find(({ kind }) => kind === "normal")?.angle ?? null).toBeNull();
  });

  it("shows the situation under the same names", () => {
    const refs = new Set(systemSituation(scene()).labels.map(({ ref }) => ref));
    for (const ref of ["T", "P", "theta", "crate", "bucket"]) expect(refs.has(ref), ref).toBe(true);
  });
});
