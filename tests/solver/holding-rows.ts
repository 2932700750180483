// Rows of the table of cases in which something holds the body: both ropes, one of them, or nothing where nothing is needed.
// Answers worked out by hand, from the balance along each axis.
import { W } from "./case-row.ts";
import type { Row } from "./case-row.ts";
import { opposite } from "./set-ups.ts";

/** Both ropes straight, or one of them slack. */
export const HOLDING: readonly Row[] = [
  { title: "both pull", setUp: { ropes: opposite(65, 40) }, kind: "taut", answers: { T1: 32.64266, T2: 18.0085957 } },
  {
    title: "a tension of exactly 0 beside a vertical rope",
    setUp: { ropes: [90, 40] },
    kind: "taut",
    answers: { T1: W, T2: 0 },
  },
  {
    title: "a tension of exactly 0 in a cart at g / tan 45°",
    setUp: { ropes: opposite(65, 45), ax: 9.8 },
    kind: "taut",
    answers: { T1: 0, T2: W * Math.SQRT2 },
  },
  {
    title: "a tension of exactly 0 with no exact angle beside it",
    setUp: { ropes: opposite(45, 40), ax: -9.8 },
    kind: "taut",
    answers: { T1: W * Math.SQRT2, T2: 0 },
  },
  {
    title: "one would push, both to the left",
    setUp: { ropes: [160, 140] },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: W },
  },
  {
    title: "one would push, both to the right",
    setUp: { ropes: [20, 40] },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: W },
  },
  {
    title: "one would push, cart to the right",
    setUp: { ropes: opposite(65, 40), ax: 12 },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: 4.2 * Math.hypot(12, 9.8) },
  },
  {
    title: "one would push, cart to the left",
    setUp: { ropes: opposite(65, 40), ax: -12 },
    kind: "slack",
    slack: ["T2"],
    answers: { T1: 4.2 * Math.hypot(12, 9.8), T2: 0 },
  },
  {
    title: "one would push, the other carrying nothing",
    setUp: { ropes: [-90, 40] },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: W },
  },
  {
    title: "free fall",
    setUp: { ropes: opposite(65, 40), ay: -9.8 },
    kind: "slack",
    slack: ["T1", "T2"],
    answers: { T1: 0, T2: 0 },
  },
  {
    title: "no gravity and no acceleration",
    setUp: { ropes: opposite(65, 40), gravity: 0 },
    kind: "slack",
    slack: ["T1", "T2"],
    answers: { T1: 0, T2: 0 },
  },
  {
    title: "free fall and a cart to the right",
    setUp: { ropes: opposite(65, 40), ax: 3, ay: -9.8 },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: 12.6 },
  },
  {
    title: "free fall and a cart to the left",
    setUp: { ropes: opposite(65, 40), ax: -3, ay: -9.8 },
    kind: "slack",
    slack: ["T2"],
    answers: { T1: 12.6, T2: 0 },
  },
  { title: "one rope straight up", setUp: { ropes: [90] }, kind: "taut", answers: { T1: W } },
  { title: "one rope straight up in a lift", setUp: { ropes: [90], ay: 2 }, kind: "taut", answers: { T1: 4.2 * 11.8 } },
  {
    title: "given by its weight",
    setUp: { ropes: opposite(30, 60), weight: 50 },
    kind: "taut",
    answers: { T1: 25, T2: 50 * Math.cos(Math.PI / 6) },
  },
  {
    title: "equal angles in a lift that speeds up",
    setUp: { ropes: opposite(30, 30), ay: 2 },
    kind: "taut",
    answers: { T1: 4.2 * 11.8, T2: 4.2 * 11.8 },
  },
  {
    title: "equal angles in a lift that slows down",
    setUp: { ropes: opposite(30, 30), ay: -2 },
    kind: "taut",
    answers: { T1: 4.2 * 7.8, T2: 4.2 * 7.8 },
  },
  {
    title: "one rope level, the other taking the weight",
    setUp: { ropes: opposite(0, 30) },
    kind: "taut",
    answers: { T1: W * Math.sqrt(3), T2: 2 * W },
  },
  {
    title: "one rope to a post below, at 30° down, the other up at 60°",
    setUp: { ropes: [-30, 120] },
    kind: "taut",
    answers: { T1: W, T2: W * Math.sqrt(3) },
  },
  {
    title: "ropes leading down, the posts outrunning free fall",
    setUp: { ropes: [-60, -120], ay: -14.8 },
    kind: "taut",
    answers: { T1: 21 / Math.sqrt(3), T2: 21 / Math.sqrt(3) },
  },
  {
    title: "no gravity, the support speeding up upwards",
    setUp: { ropes: opposite(30, 30), gravity: 0, ay: 2 },
    kind: "taut",
    answers: { T1: 8.4, T2: 8.4 },
  },
  {
    title: "no gravity, the support speeding up sideways",
    setUp: { ropes: opposite(65, 40), gravity: 0, ax: 3 },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: 12.6 },
  },
  {
    title: "one oblique rope in a cart just so",
    setUp: { ropes: [45], ax: 9.8 },
    kind: "taut",
    answers: { T1: W * Math.SQRT2 },
  },
  {
    title: "one rope in free fall",
    setUp: { ropes: [50], ay: -9.8 },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0 },
  },
  {
    title: "a slope of one to one beside an angle in degrees",
    setUp: { ropes: [135, { run: 1, rise: 1 }] },
    kind: "taut",
    answers: { T1: W / Math.SQRT2, T2: W / Math.SQRT2 },
  },
  {
    title: "directions by run and rise",
    setUp: {
      ropes: [
        { run: -3, rise: 4 },
        { run: 4, rise: 3 },
      ],
      weight: 50,
    },
    kind: "taut",
    answers: { T1: 40, T2: 30 },
  },
];
