// A rope's angle as a reader sets it: degrees up from the level line on its own side.
import { describe, expect, it } from "vitest";
import { controlValues, ownDegrees } from "../../src/lesson/control-values.ts";
import { problemOf } from "../solver/set-ups.ts";

describe("degrees on a rope's own side", () => {
  it.each([
    [115, "left", 65],
    [40, "right", 40],
    [90, "left", 90],
    [100, "right", 100],
    [180, "left", 0],
    [-20, "right", -20],
    [-160, "left", -20],
    [114.9, "left", 65.1],
  ] as const)("%d° anticlockwise is, on the %s, %d° up", (degrees, side, own) => {
    expect(ownDegrees(degrees, side)).toBe(own);
  });
});

describe("the controls' values", () => {
  it("keep the sides of the lesson's start when a rope has gone over", () => {
    const page = (ropes: number[]) =>
      ({ problem: problemOf({ ropes }), settings: { figures: 3, firstAxis: "vertical" }, upTo: null }) as const;
    const { ropes } = controlValues(page([80, 100]), page([115, 40]));
    expect(ropes).toEqual([
      { id: "T1", side: "left", degrees: 100 },
      { id: "T2", side: "right", degrees: 100 },
    ]);
  });
});
