// Derivations of set-ups as they were worked out on a board: the lines that matter, in their order. The comments give the physics by which each was found.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readProblem } from "../../shared/problem/schema.ts";
import { defaultSettings, deriveSystem } from "../../solver/index.ts";
import type { Settings } from "../../solver/index.ts";

/** The text of every line of an example's derivation. */
function linesOf(example: string, settings: Partial<Settings>): readonly string[] {
  const url = new URL(`../../shared/problem/examples/${example}.json`, import.meta.url);
  const reading = readProblem(readFileSync(url, "utf8"));
  if (!reading.ok) throw new Error(`${example} has faults`);
  const { paragraphs } = deriveSystem(reading.problem, { ...defaultSettings, ...settings });
  return paragraphs.flatMap((p) => p.lines.map((l) => l.text()));
}

interface Board {
  readonly title: string;
  readonly example: string;
  readonly settings?: Partial<Settings>;
  readonly lines: readonly string[];
}

const BOARDS: readonly Board[] = [
  {
    // Axes along the slope: across it N balances mg cos θ, along it f balances mg sin θ. tan 20° = 0.364 < 0.5, so it stays.
    title: "a crate at rest on a rough slope: each axis settles one force, and friction stays below its largest",
    example: "crate-at-rest-on-rough-slope",
    lines: [
      "N − Wy = m ay",
      "N − Wy = 0",
      "f − Wx = 0",
      "Wy = mg cos 20°",
      "Wx = mg sin 20°",
      "N − mg cos 20° = 0",
      "f − mg sin 20° = 0",
      "N = mg cos 20°",
      "f = mg sin 20°",
      "N ≈ 111 N", // 117.6 N · 0.93969
      "f ≈ 40.2 N", // 117.6 N · 0.34202
      "μs N ≈ 55.254 N", // half of 110.508 N
      "f < μs N",
    ],
  },
  {
    // tan 35° = 0.700 > 0.5: it slips. Then f = μk N against the sliding, and m a = f − mg sin θ; N is as before.
    title: "a crate that slips: assumed at rest, refuted, then kinetic friction; only the law along the slope is new",
    example: "crate-that-slips",
    lines: [
      "f − mg sin 35° = 0",
      "N = mg cos 35°",
      "N ≈ 12 kg · 9.8 m/s² cos 35° ≈ 96.332 N",
      "f < μs N",
      "f − Wx = m a",
      "f = μk N",
      "f − mg sin 35° = m a",
      "m a = f − mg sin 35°",
      "a = (f − mg sin 35°)/m",
      "f ≈ 0.4 · 96.332 N ≈ 38.533 N",
      "a ≈ −2.41 m/s²", // 9.8 (0.4 · 0.81915 − 0.57358)
    ],
  },
  {
    // The same with level axes: N and f stand in both laws; times sin and cos of 35° and added they are the laws along and across the slope.
    title: "the same with level axes: both laws turned into those along and across the slope",
    example: "crate-that-slips",
    settings: { axes: "level" },
    lines: [
      "Ny = N cos 35°",
      "fy = f sin 35°",
      "Nx = N sin 35°",
      "fx = f cos 35°",
      "N cos 35° + f sin 35° − mg = 0",
      "f cos 35° − N sin 35° = 0",
      "f − mg sin 35° = 0",
      "N − mg cos 35° = 0",
      "f < μs N",
      "Ny + fy − mg = m a sin 35°",
      "fx − Nx = m a cos 35°",
      "f − mg sin 35° = m a",
      "N − mg cos 35° = 0",
      "a ≈ −2.41 m/s²",
    ],
  },
  {
    // Both accelerations are the same size; from one law T = m1 g − m1 a, put into the other.
    title: "two loads on a hoist: one tension, one acceleration",
    example: "hoist-with-two-loads",
    lines: [
      "m1 g − T = m1 a1",
      "T − m2 g = m2 a2",
      "a2 = a1",
      "T − m2 g = m2 a1",
      "T = m1 g − m1 a1",
      "m1 g − m1 a1 − m2 g = m2 a1",
      "m1 a1 + m2 a1 = m1 g − m2 g",
      "(m1 + m2) a1 = (m1 − m2) g",
      "a1 = (m1 − m2) g/(m1 + m2)",
      "a1 = ((12 kg − 8 kg) · 9.8 m/s²)/(12 kg + 8 kg) = 1.96 m/s²",
      "T = 12 kg · 9.8 m/s² − 12 kg · 1.96 m/s² = 94.08 N", // 2 · 12 · 8 · 9.8/20
    ],
  },
  {
    // Two strands at the block: the bucket moves twice as far. m1, m2 rise with a, m3 sinks with 2a: (m1 + m2 + 4 m3) a = (2 m3 − m1 − m2) g.
    title: "a movable pulley and a bucket: two to one",
    example: "movable-pulley-and-bucket",
    lines: [
      "2 T − m1 g − S = m1 a1",
      "S − m2 g = m2 a2",
      "m3 g − T = m3 a3",
      "a3 = 2 a1",
      "a2 = a1",
      "m3 g − T = 2 m3 a1",
      "S = m2 g + m2 a1",
      "T = m3 g − 2 m3 a1",
      "(m1 + m2 + 4 m3) a1 = (2 m3 − m1 − m2) g",
      "a1 = (2 m3 − m1 − m2) g/(m1 + m2 + 4 m3)",
      "T ≈ 67.9 N", // 8 (9.8 − 2 · 0.65333)
      "S ≈ 125 N", // 12 (9.8 + 0.65333)
      "a1 ≈ 0.653 m/s²", // 3 · 9.8/45
      "a3 ≈ 1.31 m/s²",
    ],
  },
  {
    // a2 = −a1 and a3 + a4 = 2 a2; T1 = 2 T2. With T2 = m4 (g + a4) the two that are left give a4 (m1 m4 + m1 m3 + 4 m3 m4) = g (3 m1 m3 − m1 m4 − 4 m3 m4).
    title: "a pulley hung from a pulley: no fraction in a fraction",
    example: "pulley-hung-from-a-pulley",
    lines: [
      "T1 − 2 T2 = 0",
      "a2 = −a1",
      "a3 + a4 = 2 a2",
      "T1 = 2 T2",
      "T2 = m4 g + m4 a4",
      "(m1 m4 + m1 m3 + 4 m3 m4) a4 = (3 m1 m3 − m1 m4 − 4 m3 m4) g",
      "T1 ≈ 80.2 N",
      "T2 ≈ 40.1 N", // 3 (9.8 + 3.5636)
      "a1 ≈ −0.891 m/s²", // 9.8 − 80.18/9, downwards
      "a3 ≈ −1.78 m/s²", // 40.09/5 − 9.8
      "a4 ≈ 3.56 m/s²", // 9.8 · 48/132
    ],
  },
  {
    // T3 = mg; sideways T2 cos 45° = T1 cos 30°; upwards T1 (sin 30° + cos 30° tan 45°) = mg, and T1 = 2 mg/(1 + √3) = mg (√3 − 1).
    title: "a knot with three ropes: exact in the end",
    example: "knot-with-three-ropes",
    lines: [
      "T1y + T2y − T3 = 0",
      "T2x − T1x = 0",
      "T3 = mg",
      "T2 cos 45° = T1 cos 30°",
      "T2 = (T1 cos 30°)/cos 45°",
      "T1 (sin 30° + cos 30° tan 45°) = T3",
      "T1 = T3/(sin 30° + cos 30° tan 45°)",
      "T1 = (49 √3 − 49) N",
      "T1 ≈ 35.9 N",
      "T2 ≈ 43.9 N", // 35.870 · 0.86603/0.70711
    ],
  },
  {
    // N = mg + P sin 20°, f = μk N, P cos 20° = f: P (cos 20° − μk sin 20°) = μk mg.
    title: "the push for a steady speed: it presses down as well",
    example: "push-for-steady-speed",
    lines: [
      "f = μk N",
      "N − mg − P sin 20° = 0",
      "P cos 20° − f = 0",
      "P cos 20° − μk N = 0",
      "N = mg + P sin 20°",
      "P (cos 20° − μk sin 20°) = μk mg",
      "P = μk mg/(cos 20° − μk sin 20°)",
      "P ≈ 83.7 N", // 68.6/(0.93969 − 0.35 · 0.34202)
    ],
  },
  {
    // Along the ramp m1 (a1 + a2 cos 30°) = −m1 g sin 30°; across it N1 − m1 g cos 30° = −m1 a2 sin 30°; the ramp: N1 sin 30° = m2 a2.
    title: "a crate on a ramp that slides: the ramp is pushed away from under it",
    example: "crate-on-sliding-ramp",
    lines: [
      "N1 − W1y = −m1 a2 sin 30°",
      "−W1x = m1 a2 cos 30° + m1 a1",
      "N1x = m2 a2",
      "N1 = m1 g cos 30° − m1 a2 sin 30°",
      "(m1 g cos 30° − m1 a2 sin 30°) sin 30° = m2 a2",
      "m1 a2 sin² 30° + m2 a2 = m1 g sin 30° cos 30°",
      "(m1 sin² 30° + m2) a2 = m1 g sin 30° cos 30°",
      "a1 = −(g sin 30° + a2 cos 30°)",
      "a1 ≈ −5.76 m/s²", // −(4.9 + 0.99848 · 0.86603)
      "a2 = (49 √3/85) m/s²", // 9.8 · (√3/4)/(4 + 1/4)
    ],
  },
  {
    // At rest f2 = P = 90 N > 0.25 · 245 N. Sliding: a = (P − μk2 (m1 + m2) g)/(m1 + m2) = 41/25. The top crate slips at a = μs1 g = 4.9: P = 49 + 25 · 4.9.
    title: "stacked crates: the lower one slides, the upper one rides, and how large the push may be",
    example: "stacked-crates",
    lines: [
      "f2 = P",
      "μs2 N2 = 61.25 N",
      "f1 = m1 a2",
      "P − f1 − f2 = m2 a2",
      "(m1 + m2) a2 = P − f2",
      "a2 = (90 N − 49 N)/(5 kg + 20 kg) = 1.64 m/s²",
      "f1 = 5 kg · 1.64 m/s² = 8.2 N",
      "f1 < μs1 N1",
      "f1 = μs1 N1",
      "a2 = f1/m1",
      "P = f1 + f2 + m2 a2",
      "P = 24.5 N + 49 N + 20 kg · 4.9 m/s² = 171.5 N",
    ],
  },
  {
    // The wall: f = mg and N = P; it holds while mg ≤ μs P, so P is at least 29.4 N/0.6, and the weight at most 0.6 · 60 N.
    title: "a crate held against a wall: at least so much of a push, at most so much of a weight",
    example: "crate-held-against-wall",
    lines: ["f = mg", "N = P", "f < μs N", "f = μs N", "N = f/μs", "P = N = 49 N", "W = f = 36 N"],
  },
  {
    // Sideways T3 = T1; then 2 T1 sin 45° + T2 = mg: one equation for two.
    title: "three ropes: one equation too few, and what there is to say all the same",
    example: "lantern-on-three-ropes",
    lines: ["T3 cos 45° − T1 cos 45° = 0", "T3 = T1", "2 T1 sin 45° + T2 − mg = 0"],
  },
  {
    // On the floor N = m (Ay + g) = −44 N: it comes off and falls with g alone.
    title: "a lift that falls faster than the crate: the floor would have to pull",
    example: "crate-in-a-falling-lift",
    lines: ["N − mg = m Ay", "N > 0", "−mg = m ay", "ay = −g", "ay = −9.80 m/s²"],
  },
];

describe("what stands on the board", () => {
  it.each(BOARDS)("$title", ({ example, settings = {}, lines }) => {
    const all = linesOf(example, settings);
    // Each line of the board after the one before it.
    let from = 0;
    const found = lines.map((line) => {
      const at = all.indexOf(line, from);
      if (at >= 0) from = at + 1;
      return at < 0 ? `missing after ${all[from - 1] ?? "the start"}: ${line}` : line;
    });
    expect(found).toEqual(lines);
  });
});
