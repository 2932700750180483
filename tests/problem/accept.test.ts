import { describe, expect, test } from "vitest";
import { rational } from "../../shared/exact/index.ts";
import { frictionId, writeProblem } from "../../shared/problem/index.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { readProblemDocument } from "../../shared/problem/schema.ts";
import { angle, at, bell, block, document, knot, lantern, roped, surfaced, up } from "./small-set-ups.ts";

function read(data: unknown): Problem {
  const reading = readProblemDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

const angled = (degrees: string): unknown => ({
  kind: "angle",
  degrees: rational(degrees),
  written: { from: "horizontal" },
});
const slope = (run: string, rise: string): unknown => ({ kind: "slope", run: rational(run), rise: rational(rise) });
const zero = { x: rational("0"), y: rational("0") };

describe("bodies", () => {
  test("without acceleration and motion say nothing of it; a list of ropes may be missing", () => {
    const { bodies, ropes, units, frame } = read(document());
    expect(bodies[0]).toMatchObject({ kind: "load", motion: { kind: "unstated" }, acceleration: zero, at: null });
    expect([ropes, units, frame]).toEqual([[], "SI", zero]);
    expect(writeProblem(read(document())).bodies).toEqual([{ id: "lantern", name: "lantern", mass: 4 }]);
  });

  test("that hang on ropes alone have a given acceleration of 0, and it is written, as ever", () => {
    const problem = read(roped([lantern()], { id: "T", on: "lantern", direction: up }));
    expect(problem.bodies[0]?.motion).toEqual({ kind: "given" });
    expect(writeProblem(problem).bodies[0]?.acceleration).toEqual({ x: 0, y: 0 });
  });

  test.each([
    ["a load without mass", lantern({ mass: 0 }), { kind: "mass", mass: rational("0") }],
    ["a knot", knot(), { kind: "mass", mass: rational("0") }],
    ["a knot that says so", knot({ mass: "0.0" }), { kind: "mass", mass: rational("0") }],
    ["a pulley", block(), { kind: "mass", mass: rational("0") }],
    ["a pulley with a mass", block({ mass: "1/2" }), { kind: "mass", mass: rational("1/2") }],
    ["a pulley with a weight", block({ weight: 20 }), { kind: "weight", weight: rational("20") }],
  ])("%s", (_, body, load) => {
    expect(read(document({ bodies: [body] })).bodies[0]?.load).toEqual(load);
  });

  test.each([
    ["free", "free", { kind: "free" }],
    ["a line", { along: angle(20) }, { along: angled("20"), acceleration: null, going: 0, seenFrom: null }],
    ["a known acceleration", { along: up, acceleration: "-1/3" }, { acceleration: rational("-1/3") }],
    ["going on", { along: up, going: "forwards" }, { going: 1 }],
    ["going back", { along: up, going: "backwards" }, { going: -1 }],
    [
      "seen from another",
      { along: { run: 1, rise: 2 }, seenFrom: "bell" },
      { along: slope("1", "2"), seenFrom: "bell" },
    ],
  ])("that move: %s", (_, motion, expected) => {
    const problem = read(document({ bodies: [lantern({ motion }), bell()] }));
    expect(problem.bodies[0]?.motion).toMatchObject(expected);
  });

  test("seen from each other in a row", () => {
    const moving = (seenFrom: string): Parameters<typeof bell>[0] => ({ motion: { along: up, seenFrom } });
    const bodies = [lantern(moving("bell")), bell(moving("block")), block()];
    expect(read(document({ bodies })).bodies).toHaveLength(3);
  });
});

describe("ropes", () => {
  const rope = (bodies: Parameters<typeof roped>[0], given: Parameters<typeof roped>[1]): Problem["ropes"][number] => {
    const [first] = read(roped(bodies, given)).ropes;
    if (first === undefined) throw new Error("no rope");
    return first;
  };

  test.each([
    [angle(30), angled("-150")],
    [angle(180), angled("0")],
    [{ run: 3, rise: "-1/2" }, slope("-3", "1/2")],
    [
      { angle: 25, from: "vertical", side: "left" },
      { kind: "angle", degrees: rational("-65"), written: { from: "vertical", side: "right", angle: rational("155") } },
    ],
  ])("along %j to another body pull that the opposite way, in the same manner of writing", (direction, other) => {
    const { on, further } = rope([lantern(), bell()], { id: "T", on: "lantern", direction, to: "bell" });
    expect([on, further]).toEqual(["lantern", [{ on: "bell", direction: other }]]);
  });

  test("between two places have the direction from one to the other, exactly", () => {
    const bodies = [lantern({ at: at(1, 2) }), bell({ at: { x: "-1/3", y: 5 } })];
    const { direction, further } = rope(bodies, { id: "T", on: "lantern", to: "bell" });
    expect([direction, further]).toEqual([slope("-4/3", "3"), [{ on: "bell", direction: slope("4/3", "-3") }]]);
  });

  test("that go straight are the same by their pulls", () => {
    const pulls = [
      { on: "lantern", direction: angle(30) },
      { on: "bell", direction: angle(-150) },
    ];
    const joined = rope([lantern(), bell()], { id: "T", on: "lantern", direction: angle(30), to: "bell" });
    expect(rope([lantern(), bell()], { id: "T", pulls })).toEqual(joined);
    const alone = rope([lantern()], { id: "T", on: "lantern", direction: angle(30) });
    expect(rope([lantern()], { id: "T", pulls: pulls.slice(0, 1) })).toEqual(alone);
  });

  test("to an anchor have its direction where the body has a place", () => {
    const tied = rope([lantern({ at: at(1, 2) })], { id: "T", on: "lantern", anchor: at(-2, 6) });
    expect(tied).toMatchObject({ direction: slope("-3", "4"), anchor: { x: rational("-2") }, length: null });
  });

  test("to an anchor have a length where the body hangs freely", () => {
    const hanging = rope([lantern()], { id: "T", on: "lantern", anchor: at(-2, 6), length: 2.5 });
    expect(hanging).toMatchObject({ direction: { kind: "hangs" }, length: rational("5/2") });
  });

  test("round a pulley and over fixed ones keep the order of their pulls", () => {
    const pulls = ["block", "block", "lantern"].map((on) => ({ on, direction: up }));
    const { on, further } = rope([block(), lantern()], { id: "T", pulls });
    expect([on, ...further.map((pull) => pull.on)]).toEqual(["block", "block", "lantern"]);
    expect(writeProblem(read(roped([block(), lantern()], { id: "T", pulls }))).ropes[0]).toEqual({ id: "T", pulls });
  });
});

describe("surfaces and pushes", () => {
  test.each([
    ["a slope", {}, { kind: "slope", direction: angled("25") }],
    ["a slope to the left", { slope: angle(155) }, { kind: "slope", direction: angled("155") }],
    ["a level one", { slope: angle(0) }, { kind: "slope", direction: angled("0") }],
    ["a normal, also level", { slope: undefined, normal: angle(180) }, { kind: "normal", direction: angled("180") }],
    ["a normal straight down", { slope: undefined, normal: angle(-90) }, { kind: "normal", direction: angled("-90") }],
  ])("%s", (_, surface, lies) => {
    const [read0] = read(surfaced(surface)).surfaces;
    expect(read0).toEqual({ id: "N", on: "lantern", of: null, lies, friction: { static: null, kinetic: null } });
  });

  test.each([
    [{ static: 0.5 }, "1/2", null],
    [{ kinetic: "2/7" }, null, "2/7"],
    [{ static: 0.4, kinetic: 0.4 }, "2/5", "2/5"],
    [{ static: 0, kinetic: 0 }, "0", "0"],
    [{ static: 100, kinetic: 0 }, "100", "0"],
  ])("friction of %j", (friction, sticking, kinetic) => {
    const value = (text: string | null): unknown => (text === null ? null : rational(text));
    expect(read(surfaced({ friction })).surfaces[0]?.friction).toEqual({
      static: value(sticking),
      kinetic: value(kinetic),
    });
  });

  test("a push of a size, of none, and of one to be found", () => {
    const push = { id: "P", on: "lantern", direction: up };
    const sizes = [{ size: 40 }, { size: 0 }, {}].map((size) => read(document({ pushes: [{ ...push, ...size }] })));
    expect(sizes.map(({ pushes }) => pushes[0]?.size)).toEqual([rational("40"), rational("0"), null]);
  });
});

describe("names", () => {
  test.each([
    ["N", "f"],
    ["N1", "f1"],
    ["N12", "f12"],
    ["C", "Cf"],
    ["NA", "NAf"],
    ["N1a", "N1af"],
    ["n", "nf"],
  ])("the friction at %s is called %s", (surface, friction) => {
    expect(frictionId(surface)).toBe(friction);
  });

  test("of a smooth surface's friction are free", () => {
    expect(read(surfaced({}, { pushes: [{ id: "f", on: "lantern", direction: up }] })).pushes).toHaveLength(1);
  });

  test.each(["a1", "m2", "W3x", "Ax", "Ay", "A", "Wy", "mus1", "theta1", "slug", "epsilon", "alpharise", "theta1run"])(
    "that were free stay so where nothing new is used: %s",
    (id) => {
      expect(read(roped([lantern()], { id, on: "lantern", direction: up })).ropes).toHaveLength(1);
      const two = roped([lantern(), bell()], { id, on: "lantern", direction: up });
      expect(readProblemDocument(two).ok).toBe(false);
    },
  );
});
