// Random documents by every way the format has of giving a number or a direction: run and rise, from the vertical, fractions, long
// decimals, angles beyond a turn's half, ids of the author's own, weights instead of masses.
const pick = <T>(random: () => number, values: readonly [T, ...T[]]): T =>
  values[Math.floor(random() * values.length)] ?? values[0];
const tenths = (x: number): number => Math.round(x * 10) / 10;

type Written = number | string;

const SLOPES: readonly [readonly [Written, Written], ...(readonly [Written, Written])[]] = [
  [3, 4],
  [6, 8],
  [-5, 12],
  [1, 1],
  [-1, 2],
  [2, 7],
  ["1/3", 1],
  ["-0.3", "0.4"],
  [1, 0],
  [0, 1],
  [4, -3],
];
const ANGLES: readonly [Written, ...Written[]] = [0, 30, 45, 90, 135, 150, 180, -15, 270, -360, "100/3", "12.34567"];
const IDS: readonly [string, ...string[]] = ["T1", "T2", "A", "B", "S", "F1", "left", "rope", "Tx", "cosa", "T"];

function direction(random: () => number): Record<string, unknown> {
  const kind = random();
  if (kind < 0.25) {
    const [run, rise] = pick(random, SLOPES);
    return { run, rise };
  }
  if (kind < 0.4)
    return { angle: tenths(random() * 90), from: "vertical", side: pick(random, ["left", "right"] as const) };
  if (kind < 0.55) return { angle: pick(random, ANGLES) };
  if (kind < 0.65) return { angle: tenths(random() * 720 - 360) };
  return { angle: tenths(random() < 0.5 ? 180 - random() * 90 : random() * 90) };
}

/** Two different ids, mostly the usual ones. A name that another id's component has is refused by the format, so none is made. */
function ids(random: () => number): readonly [string, string] {
  if (random() < 0.6) return ["T1", "T2"];
  const first = pick(random, IDS);
  const second = pick(random, IDS);
  const clash = first === second || (first + second).includes("Tx");
  return clash ? ["T1", "T2"] : [first, second];
}

/** A random document of one body on one or two ropes, all of it accepted by the format. */
export function wideDocument(random: () => number): Record<string, unknown> {
  const [first, second] = ids(random);
  const one = direction(random);
  const other = random() < 0.15 ? one : direction(random);
  const load =
    random() < 0.25
      ? { weight: pick<Written>(random, [50, "41.16", "125/3", 0.5]) }
      : { mass: pick<Written>(random, [4.2, "21/5", "1/3", 0.026, 3500, "3.14159265358979323846"]) };
  const gravity = pick<Written>(random, "weight" in load ? [9.8, "29/3", 1.62] : [9.8, "9.80665", 10, "29/3", 1.62, 0]);
  const acceleration = {
    x: pick<Written>(random, [0, 0, 0, 2, -3, "10/3", 9.8, 0.1]),
    y: pick<Written>(random, [0, 0, 0, 2, "1/3", -9.8, "-29/3", -12]),
  };
  const ropes = [
    { id: first, on: "bell", direction: one },
    { id: second, on: "bell", direction: other },
  ];
  return {
    format: 1,
    gravity,
    bodies: [{ id: "bell", ...load, acceleration }],
    ropes: random() < 0.1 ? ropes.slice(0, 1) : ropes,
  };
}
