// The order of thought at the settings that differ most: which passages come, with which lines. Worked out by hand on a board, line by line.
import { describe, expect, it } from "vitest";
import { defaultSettings, deriveHanging } from "../../solver/index.ts";
import { opposite, problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

const movesOf = (setUp: SetUp, firstAxis: "vertical" | "horizontal" = "vertical"): string[] =>
  deriveHanging(problemOf(setUp), { ...defaultSettings, firstAxis }).result.attempts.flatMap((a) =>
    a.passages.map((p) => p.id),
  );
const linesOf = (setUp: SetUp): string[] =>
  deriveHanging(problemOf(setUp)).paragraphs.flatMap((p) => p.lines.map((l) => l.id));
const textOf = (setUp: SetUp, id: string): string | undefined =>
  deriveHanging(problemOf(setUp))
    .paragraphs.flatMap((p) => p.lines)
    .find((l) => l.id === id)
    ?.text();

const BEFORE_ALGEBRA = ["vertical", "horizontal", "count", "angles", "components", "substitution"];
const AFTER_ANSWER = ["answer", "check.balance", "check.polygon", "letters"];

const TABLE: readonly { readonly title: string; readonly setUp: SetUp; readonly moves: readonly string[] }[] = [
  {
    title: "65° and 40° at rest: stuck twice, isolate, eliminate, collect, put back",
    setUp: { ropes: opposite(65, 40) },
    moves: [...BEFORE_ALGEBRA, "isolate", "eliminate", "collect", "exact", "numbers", "put-back.T2", ...AFTER_ANSWER],
  },
  {
    title: "45° and 45°: equal pulls, no elimination of a second one, a root to clear",
    setUp: { ropes: opposite(45, 45) },
    moves: [...BEFORE_ALGEBRA, "isolate", "eliminate", "collect", "exact", "numbers", ...AFTER_ANSWER],
  },
  {
    title: "90° and 40°: the horizontal law settles rope 2 alone, and it carries nothing",
    setUp: { ropes: opposite(90, 40) },
    moves: [...BEFORE_ALGEBRA, "settle.T2", "settle.T1", "exact", "numbers", ...AFTER_ANSWER],
  },
  {
    title: "both ropes up to the left: seen on one line, solved as evidence, then one rope alone",
    setUp: { ropes: [160, 140] },
    moves: [
      "vertical",
      "horizontal",
      "one-sided",
      "count",
      "angles",
      "components",
      "substitution",
      "isolate",
      "eliminate",
      "collect",
      "evidence",
      "alone.vertical",
      "alone.horizontal",
      "alone.settle.T2y",
      "alone.free-rope",
      "alone.answer",
      "alone.check.balance",
      "alone.check.length",
      "alone.check.polygon",
      "alone.letters",
    ],
  },
  {
    title: "a cart at 12 m/s²: solved to the end, then rope 1 is let go",
    setUp: { ropes: opposite(65, 40), ax: 12 },
    moves: [
      ...BEFORE_ALGEBRA,
      "isolate",
      "eliminate",
      "collect",
      "evidence",
      "alone.vertical",
      "alone.horizontal",
      "alone.settle.T2y",
      "alone.free-rope",
      "alone.answer",
      "alone.check.balance",
      "alone.check.length",
      "alone.check.polygon",
      "alone.letters",
    ],
  },
  {
    title: "free fall: upward parts that add up to zero are each zero, no elimination",
    setUp: { ropes: opposite(65, 40), ay: -9.8 },
    moves: [...BEFORE_ALGEBRA, "one-sided", "exact", "answer", "check.polygon"],
  },
  {
    title: "a support that outruns free fall: named on one line, and no further",
    setUp: { ropes: opposite(65, 40), ay: -12 },
    moves: ["vertical", "horizontal", "one-sided"],
  },
  {
    title: "rope 1 level: the vertical law settles rope 2 at once",
    setUp: { ropes: opposite(0, 40) },
    moves: [...BEFORE_ALGEBRA, "settle.T2", "settle.T1", "exact", "numbers", "put-back.T1", ...AFTER_ANSWER],
  },
];

describe("the list of moves", () => {
  it.each(TABLE)("$title", ({ setUp, moves }) => {
    expect(movesOf(setUp)).toEqual(moves);
  });

  it.each(TABLE)("$title; from the horizontal axis the same moves, the laws exchanged", ({ setUp, moves }) => {
    const exchanged = moves.map((id) =>
      id.replace(/vertical|horizontal/, (axis) => (axis === "vertical" ? "horizontal" : "vertical")),
    );
    expect(movesOf(setUp, "horizontal")).toEqual(exchanged);
  });

  it("does not change with a drag that leaves both ropes oblique, unequal and pulling", () => {
    const usual = linesOf({ ropes: opposite(64, 41) });
    for (const [a, b] of [
      [65, 40],
      [20, 70],
      [33.3, 12.1],
      [85, 5],
    ] as const)
      expect(linesOf({ ropes: opposite(a, b) })).toEqual(usual);
  });
});

describe("the lines of the two-rope case at 65° and 40°", () => {
  it("run from the law to both tensions, one move a line", () => {
    const at = (id: string): string | undefined => textOf({ ropes: opposite(65, 40) }, id);
    expect(at("vertical.law")).toBe("T1y + T2y − mg = m ay");
    expect(at("vertical.given")).toBe("T1y + T2y − mg = 0");
    expect(at("horizontal.given")).toBe("T2x − T1x = 0");
    expect(at("component.T1y")).toBe("T1y = T1 sin 65°");
    expect(at("isolate.gather")).toBe("T2 cos 40° = T1 cos 65°");
    expect(at("eliminate.collect")).toBe("T1 (sin 65° + cos 65° tan 40°) = mg");
    expect(at("eliminate.divide")).toBe("T1 = mg/(sin 65° + cos 65° tan 40°)");
    expect(at("number.T1.factor")).toBe("sin 65° + cos 65° tan 40° ≈ 1.26093");
    expect(at("number.T1")).toBe("T1 ≈ 41.16 N/1.26093 ≈ 32.643 N");
    expect(at("number.T2")).toBe("T2 ≈ 32.643 N · 0.55169 ≈ 18.009 N");
    expect(at("answer.T1")).toBe("T1 ≈ 32.6 N");
    expect(at("check.vertical")).toBe("T1 sin 65° + T2 sin 40° ≈ 29.584 N + 11.576 N ≈ 41.160 N");
    expect(at("letters.T1.joined")).toBe("T1 = (mg cos β)/(sin(α + β))");
    expect(at("letters.T2.cancel")).toBe("T2 = (mg cos α)/(sin(α + β))");
  });

  it("are at least fifteen that hold at the solution", () => {
    const lines = deriveHanging(problemOf({ ropes: opposite(65, 40) })).paragraphs.flatMap((p) => p.lines);
    expect(lines.filter((l) => l.status === "solution").length).toBeGreaterThanOrEqual(15);
  });
});

describe("the other settings", () => {
  it("clear the root at 45° and 45° and give the multiple of the weight, not newtons that are not short", () => {
    const setUp = { ropes: opposite(45, 45) };
    expect(textOf(setUp, "exact.T.combine")).toBe("T = mg/(√2)");
    expect(textOf(setUp, "exact.T.rationalise")).toBe("T = (√2/2) mg");
    expect(textOf(setUp, "answer.T1.exact")).toBe("T1 = (√2/2) mg");
    expect(textOf(setUp, "answer.T1")).toBe("T1 ≈ 29.1 N");
  });

  it("drop the component that is not there at 90° and divide by cos 40°, never by cos 90°", () => {
    const setUp = { ropes: opposite(90, 40) };
    expect(textOf(setUp, "horizontal.law")).toBe("T2x = m ax");
    expect(textOf(setUp, "settle.T2.divide")).toBe("T2 = 0");
    expect(linesOf(setUp)).not.toContain("component.T1x");
    expect(textOf(setUp, "answer.T1")).toBe("T1 ≈ 41.2 N");
  });

  it("show −92.2 N and 113 N as evidence for two ropes up to the left, and 41.2 N on rope 2 alone", () => {
    const setUp = { ropes: [160, 140] };
    expect(textOf(setUp, "horizontal.empty") ?? textOf(setUp, "vertical.empty")).toBe("−mg = 0");
    expect(textOf(setUp, "number.T1")).toMatch(/≈ −92\.18\d N$/);
    expect(textOf(setUp, "number.T2")).toMatch(/≈ 113\.09 N$/);
    expect(textOf(setUp, "alone.answer.T2")).toBe("T2 ≈ 41.2 N");
    expect(textOf(setUp, "alone.length.T1")).toBe("L1 ≈ 2.9238 h");
    expect(textOf(setUp, "alone.length.distance")).toMatch(/≈ 2\.2001 h$/);
  });

  it("find −0.897 N in the cart, then 65.1 N at 39.2°, and leave the long exact root out", () => {
    const setUp = { ropes: opposite(65, 40), ax: 12 };
    expect(textOf(setUp, "number.T1")).toMatch(/≈ −0\.89666 N$/);
    expect(textOf(setUp, "evidence.T1")).toBe("T1 > 0");
    expect(textOf(setUp, "alone.answer.T2")).toBe("T2 ≈ 65.1 N");
    expect(textOf(setUp, "alone.free.theta.answer")).toBe("θ ≈ 39.2°");
    expect(textOf(setUp, "alone.letters.T2.mass")).toBe("T2 = m √(g² + ax²)");
    expect(linesOf(setUp)).not.toContain("alone.answer.T2.exact");
  });
});
