// Rows of the table of cases that cannot be, or that forces alone do not decide.
import { W } from "./case-row.ts";
import type { Row } from "./case-row.ts";
import { opposite } from "./set-ups.ts";

/** Impossible and under-determined. */
export const OPEN: readonly Row[] = [
  {
    title: "the support outruns free fall",
    setUp: { ropes: opposite(65, 40), ay: -12 },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "the support outruns free fall, one rope level",
    setUp: { ropes: opposite(65, 0), ay: -12 },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both would push, ropes leading down",
    setUp: { ropes: [-60, -120] },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both level: nothing pulls up",
    setUp: { ropes: [180, 0] },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both along one oblique line, at rest",
    setUp: { ropes: [40, -140] },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both straight up",
    setUp: { ropes: [90, 90] },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1+T2": W },
  },
  {
    title: "one straight up, one straight down",
    setUp: { ropes: [90, -90] },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1-T2": W },
  },
  {
    title: "both along one oblique line, the cart just so",
    setUp: { ropes: [45, 45], ax: 9.8 },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1+T2": W * Math.SQRT2 },
  },
  {
    title: "both level, falling, pulled to the right",
    setUp: { ropes: [180, 0], ax: 2, ay: -9.8 },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1-T2": -8.4 },
  },
  { title: "one oblique rope at rest", setUp: { ropes: [40] }, kind: "impossible", answers: { T1: null } },
  { title: "one rope below", setUp: { ropes: [-90] }, kind: "impossible", answers: { T1: null } },
  {
    title: "both straight down, the posts outrunning free fall",
    setUp: { ropes: [-90, -90], ay: -14.8 },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1+T2": 21 },
  },
  {
    title: "both straight up, the support outrunning free fall",
    setUp: { ropes: [90, 90], ay: -14.8 },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "two slopes along one line, written differently",
    setUp: {
      ropes: [
        { run: 3, rise: 4 },
        { run: -6, rise: -8 },
      ],
    },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
];
