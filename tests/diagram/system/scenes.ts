/**
 * Set-ups of every kind over a grid of settings: awkward angles (5°, 85°, equal ones), huge and tiny loads, slack ropes, long names.
 */
import type { BodyDocument, ProblemDocument, RopeDocument, SurfaceDocument } from "../../../shared/problem/index.ts";
import { sceneFromDocument } from "./from-document.ts";
import type { SystemScene } from "../../../src/diagram/index.ts";

/** A scene with a name to find it by. */
export interface NamedScene {
  readonly name: string;
  readonly scene: SystemScene;
  readonly document: ProblemDocument;
}

type Parts = Omit<ProblemDocument, "format" | "gravity">;
const up = { angle: 90 } as const;
const down = { angle: -90 } as const;
const right = { angle: 0 } as const;
const angles = [5, 20, 30, 45, 60, 75, 85];
const slopes = [5, 15, 30, 45, 60, 75, 85];
const masses = ["0.000001", "12", "1000000000"];

const pairs = (list: readonly number[]): [number, number][] =>
  list.flatMap((a) => list.map((b): [number, number] => [a, b]));
const load = (id: string, mass = "12", name = id): BodyDocument => ({ id, name, mass });
const hung = (id: string, mass = "12"): BodyDocument => ({ ...load(id, mass), motion: { along: down } });
const hangs = (id: string, on: string, to: string): RopeDocument => ({ id, on, direction: up, to });
const over = (id: string, ...pulls: [string, number][]): RopeDocument => ({
  id,
  pulls: pulls.map(([on, angle]) => ({ on, direction: { angle } })),
});
const on = (id: string, body: string, angle = 0, rough = false): SurfaceDocument => ({
  id,
  on: body,
  slope: { angle },
  ...(rough ? { friction: { static: 0.5, kinetic: 0.4 } } : {}),
});

const kinds: Readonly<Record<string, () => Parts[]>> = {
  "a knot and three ropes": () =>
    pairs(angles).map(([a, b]) => ({
      bodies: [load("lantern", "12", "red paper lantern"), { id: "k", kind: "knot" }],
      ropes: [
        { id: "T1", on: "k", direction: { angle: 180 - a } },
        { id: "T2", on: "k", direction: { angle: b } },
        hangs("T3", "lantern", "k"),
      ],
    })),
  "two knots in a chain": () =>
    pairs(angles).flatMap(([a, b]) =>
      [0, 20, -20].map((middle): Parts => ({
        bodies: [load("red"), load("green"), { id: "k1", kind: "knot" }, { id: "k2", kind: "knot" }],
        ropes: [
          { id: "T1", on: "k1", direction: { angle: 180 - a } },
          { id: "T2", on: "k1", direction: { angle: middle }, to: "k2" },
          { id: "T3", on: "k2", direction: { angle: b } },
          hangs("S1", "red", "k1"),
          hangs("S2", "green", "k2"),
        ],
      })),
    ),
  "a hoist": () =>
    masses.flatMap((mass) =>
      [{}, { frame: { y: -3 } }, { surfaces: [on("N", "bucket")] }].map((more): Parts => ({
        ...more,
        bodies: [hung("bucket", mass), hung("crate")],
        ropes: [over("T", ["bucket", 90], ["crate", 90])],
      })),
    ),
  "a table and a hanging load": () =>
    [0, 180].flatMap((angle) =>
      [true, false].map((rough): Parts => ({
        bodies: [load("crate"), hung("bucket")],
        ropes: [over("T", ["crate", angle], ["bucket", 90])],
        surfaces: [on("N", "crate", 0, rough)],
      })),
    ),
  "a slope and a hanging load": () =>
    slopes.flatMap((a) =>
      [a, 180 - a].map((angle): Parts => ({
        bodies: [load("sledge"), hung("bucket")],
        ropes: [over("T", ["sledge", angle], ["bucket", 90])],
        surfaces: [on("N", "sledge", angle, a % 2 === 0)],
      })),
    ),
  "a slope with a load held": () =>
    slopes.flatMap((a) =>
      [0, 4, 20]
        .filter((more) => a + more < 89)
        .map((more): Parts => ({
          bodies: [load("sledge", "12", "boat sledge")],
          ropes: [{ id: "T", on: "sledge", direction: { angle: 180 - a - more } }],
          surfaces: [on("N", "sledge", 180 - a)],
        })),
    ),
  "a push on level ground": () =>
    [0, 180, 5, 85, -5, -85, 40, 90, -90].map((angle): Parts => ({
      bodies: [load("crate")],
      surfaces: [on("N", "crate", 0, true)],
      pushes: [{ id: "P", on: "crate", direction: { angle }, size: "120.5" }],
    })),
  "crates on each other": () =>
    slopes.concat(0).map((angle): Parts => ({
      bodies: [load("low"), load("middle"), load("high")],
      surfaces: [
        on("N1", "low", angle, true),
        { ...on("N2", "middle", angle, true), of: "low" },
        { ...on("N3", "high", angle, true), of: "middle" },
      ],
      ...(angle === 0 ? { pushes: [{ id: "P", on: "low", direction: right, size: 60 }] } : {}),
    })),
  "crates side by side": () =>
    [0, ...slopes].map((angle): Parts => ({
      bodies: [load("tea"), load("fish"), load("ice")],
      surfaces: [
        on("N1", "tea", angle),
        on("N2", "fish", angle),
        on("N3", "ice", angle),
        { id: "C1", on: "fish", of: "tea", normal: { angle } },
        { id: "C2", on: "ice", of: "fish", normal: { angle } },
      ],
      pushes: [{ id: "P", on: "tea", direction: { angle }, size: 200 }],
    })),
  "a movable pulley": () =>
    [2, 3, 4, 5].flatMap((count) =>
      [true, false].map((below): Parts => ({
        bodies: [
          { id: "block", kind: "pulley", motion: { along: up } },
          hung("bucket"),
          ...(below ? [{ ...load("crate"), motion: { along: up } }] : []),
        ],
        ropes: [
          over("T", ...Array.from({ length: count }, (): [string, number] => ["block", 90]), ["bucket", 90]),
          ...(below ? [hangs("S", "crate", "block")] : []),
        ],
      })),
    ),
  "a pulley on a pulley": () => [
    {
      bodies: [hung("crate"), { id: "block", kind: "pulley", motion: { along: up } }, hung("bucket"), hung("lamp")],
      ropes: [
        over("T1", ["crate", 90], ["block", 90]),
        over("T2", ["bucket", 90], ["block", -90], ["block", -90], ["lamp", 90]),
      ],
    },
  ],
  "two slopes": () =>
    pairs(slopes).map(([a, b]) => ({
      bodies: [load("near"), load("far")],
      surfaces: [on("N1", "near", a), on("N2", "far", 180 - b, true)],
      ropes: [over("T", ["near", a], ["far", 180 - b])],
    })),
  "a cart": () =>
    [0, ...slopes].map((angle): Parts => ({
      frame: { x: 4 },
      bodies: [load("crate")],
      surfaces: [on("N", "crate", angle, true)],
    })),
  "a lift": () =>
    masses.map((mass): Parts => ({
      frame: { y: 1.5 },
      bodies: [load("crate", mass), load("bell", mass), load("lantern", mass)],
      surfaces: [on("N1", "crate"), { ...on("N2", "bell"), of: "crate" }],
      ropes: [{ id: "T", on: "lantern", direction: up }],
    })),
  "a load pulled aside": () =>
    pairs(angles).map(([a, b]) => ({
      bodies: [{ ...load("board", "4.2", "noodle shop sign"), acceleration: { x: 1, y: 0 } }],
      ropes: [
        { id: "T1", on: "board", direction: { angle: 180 - a } },
        { id: "T2", on: "board", direction: { angle: -b } },
      ],
      pushes: [{ id: "P", on: "board", direction: right }],
    })),
  "a row on ropes": () =>
    [0, ...slopes].map((angle): Parts => ({
      bodies: ["one", "two", "three", "four"].map((id) => load(id)),
      surfaces: ["one", "two", "three", "four"].map((id, i) => on(`N${i + 1}`, id, angle)),
      ropes: [
        { id: "T1", on: "one", direction: { angle }, to: "two" },
        { id: "T2", on: "two", direction: { angle }, to: "three" },
        { id: "T3", on: "three", direction: { angle }, to: "four" },
      ],
      pushes: [{ id: "P", on: "four", direction: { angle } }],
    })),
  "a crate on a ramp": () =>
    slopes.flatMap((a) =>
      [a, 180 - a].map((angle): Parts => ({
        bodies: [{ ...load("ramp"), motion: { along: right } }, load("crate")],
        surfaces: [on("N1", "ramp"), { ...on("N2", "crate", angle), of: "ramp" }],
      })),
    ),
};

/** Every scene of the grid. */
export const namedScenes: readonly NamedScene[] = Object.entries(kinds).flatMap(([kind, make]) =>
  make().flatMap((parts, index): NamedScene[] => {
    const document: ProblemDocument = { format: 1, gravity: 9.8, ...parts };
    const scene = sceneFromDocument(document);
    const slack = { ...scene, ropes: scene.ropes.map((rope, i) => ({ ...rope, state: i === 0 ? ("slack" as const) : rope.state })) }; // prettier-ignore
    const named = { name: `${kind} ${index}`, scene, document };
    return scene.ropes.length > 0 && index % 3 === 0
      ? [named, { name: `${named.name}, slack`, scene: slack, document }]
      : [named];
  }),
);

/** The kinds of the grid. */
export const kindNames = Object.keys(kinds);
