import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { problemFromDocument, writeProblem } from "../../shared/problem/index.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { readProblem, readProblemDocument } from "../../shared/problem/schema.ts";
import { accepted } from "./lantern.ts";

const folder = new URL("../../shared/problem/examples/", import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), "utf8");

type Entry = { readonly id: string; readonly title: string; readonly concept: string };
const index = JSON.parse(read("index.json")) as readonly Entry[];
const ids = index.map(({ id }) => id);
const problems = new Map(ids.map((id) => [id, accepted(read(`${id}.json`))]));

describe("the example documents", () => {
  test("are those that the index lists, each once, with a short title and a sentence", () => {
    const files = readdirSync(folder).filter((name) => name !== "index.json");
    expect(ids.map((id) => `${id}.json`).toSorted()).toEqual(files.toSorted());
    expect(new Set(index.map(({ title }) => title)).size).toBe(index.length);
    for (const { id, title, concept } of index) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(title).toMatch(/^[A-Z].{5,40}[^.]$/);
      expect(concept).toMatch(/^[A-Z].{15,110}\.$/);
    }
  });

  test.each(ids)("%s is read, and written and read again is the same problem", (id) => {
    const problem = problems.get(id);
    if (problem === undefined) throw new Error("not read");
    const document = writeProblem(problem);
    expect(problemFromDocument(document)).toEqual(problem);
    expect(readProblemDocument(document)).toEqual({ ok: true, problem });
    expect(readProblem(JSON.stringify(document))).toEqual({ ok: true, problem });
    // Nothing but defaults is written that the file does not say.
    const bare = JSON.parse(read(`${id}.json`)) as { bodies: object[] };
    expect(document).toMatchObject(bare);
  });

  test.each(ids)("%s names its bodies as a sentence would", (id) => {
    for (const { name } of problems.get(id)?.bodies ?? []) {
      expect(name).toMatch(/^[a-z']+( [a-z']+)*$/);
      expect(name).not.toMatch(/^(a|an|the) /);
    }
  });
});

/** What a document of format 1 can say, each with whether a problem says it. */
const concepts: readonly (readonly [string, (problem: Problem) => boolean])[] = [
  ["one rope", ({ bodies, ropes }) => bodies.length === 1 && ropes.length === 1],
  ["two ropes", ({ bodies, ropes }) => bodies.length === 1 && ropes.length === 2],
  ["three ropes", ({ bodies, ropes }) => bodies.length === 1 && ropes.length === 3],
  [
    "an angle from the vertical",
    ({ ropes }) => ropes.some(({ direction: d }) => d.kind === "angle" && d.written.from === "vertical"),
  ],
  ["run and rise", ({ ropes }) => ropes.some((rope) => rope.anchor === null && rope.direction.kind === "slope")],
  ["a place and an anchor", ({ ropes }) => ropes.some((rope) => rope.anchor !== null && rope.length === null)],
  ["a length", ({ ropes }) => ropes.some((rope) => rope.length !== null)],
  ["a knot", ({ bodies }) => bodies.some((body) => body.kind === "knot")],
  ["two knots", ({ bodies }) => bodies.filter((body) => body.kind === "knot").length === 2],
  [
    "a pulley without mass",
    ({ bodies }) => bodies.some((b) => b.kind === "pulley" && b.load.kind === "mass" && b.load.mass.n === 0n),
  ],
  [
    "a pulley with a mass",
    ({ bodies }) => bodies.some((b) => b.kind === "pulley" && b.load.kind === "mass" && b.load.mass.n > 0n),
  ],
  ["a weight", ({ bodies }) => bodies.some((body) => body.load.kind === "weight")],
  ["a rope between bodies", ({ ropes }) => ropes.some((rope) => rope.further.length === 1)],
  ["a rope round a pulley", ({ ropes }) => ropes.some((rope) => rope.further.some((pull) => pull.on === rope.on))],
  ["a rope with four pulls", ({ ropes }) => ropes.some((rope) => rope.further.length === 3)],
  [
    "a given acceleration",
    ({ bodies }) => bodies.some((body) => body.motion.kind === "given" && body.acceleration.y.n > 0n),
  ],
  [
    "a line with an acceleration to be found",
    ({ bodies }) => bodies.some((b) => b.motion.kind === "line" && b.motion.acceleration === null),
  ],
  [
    "a line with a known acceleration",
    ({ bodies }) => bodies.some((b) => b.motion.kind === "line" && b.motion.acceleration !== null),
  ],
  ["a body that already moves", ({ bodies }) => bodies.some((b) => b.motion.kind === "line" && b.motion.going === 1)],
  [
    "a line seen from another body",
    ({ bodies }) => bodies.some((b) => b.motion.kind === "line" && b.motion.seenFrom !== null),
  ],
  ["a cart", ({ frame }) => frame.x.n !== 0n],
  ["a lift", ({ frame }) => frame.y.n !== 0n],
  ["a smooth slope", ({ surfaces }) => surfaces.some((s) => s.lies.kind === "slope" && s.friction.kinetic === null)],
  [
    "static and kinetic friction",
    ({ surfaces }) => surfaces.some((s) => s.friction.static !== null && s.friction.kinetic !== null),
  ],
  ["a normal", ({ surfaces }) => surfaces.some((s) => s.lies.kind === "normal")],
  ["a surface of a body", ({ surfaces }) => surfaces.some((s) => s.of !== null)],
  ["a push of given size", ({ pushes }) => pushes.some((push) => push.size !== null)],
  ["a push to be found", ({ pushes }) => pushes.some((push) => push.size === null)],
  ["no gravity", ({ gravity }) => gravity.n === 0n],
  ["pound-force and foot", ({ units }) => units === "lbf-ft"],
];

test.each(concepts)("an example shows %s", (_, shows) => {
  expect([...problems.values()].some(shows)).toBe(true);
});
