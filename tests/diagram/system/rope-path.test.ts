import { describe, expect, it } from "vitest";
import { ropePath } from "../../../src/diagram/system/rope-path.ts";

/** A rope that pulls these bodies in these directions, as a row of joins: w round a pulley, - straight, ^ over a fixed pulley, | tied. */
function course(...pulls: readonly (readonly [on: string, degrees: number])[]): string {
  const rope = {
    id: "T",
    label: [],
    state: "taut" as const,
    pulls: pulls.map(([on, degrees]) => ({ on, degrees, degreesText: null, angleLetter: "" })),
    anchor: null,
    length: null,
  };
  const signs = { wheel: "w", straight: "-", turn: "^", tie: "|" } as const;
  return ropePath(rope)
    .map(({ kind }) => signs[kind])
    .join("");
}

describe("the course of a rope", () => {
  it("with one pull leads to a support", () => expect(course(["lantern", 115])).toBe("|"));

  it("between two bodies that it pulls towards each other is straight", () => {
    expect(course(["lantern", 20], ["bell", -160])).toBe("-");
    expect(course(["lantern", 90], ["knot", 270])).toBe("-");
  });

  it("between two bodies that it pulls otherwise runs over a fixed pulley", () => {
    expect(course(["bucket", 90], ["crate", 90])).toBe("^");
    expect(course(["crate", 0], ["bucket", 90])).toBe("^");
    expect(course(["near", 30], ["far", 149])).toBe("^");
  });

  it("with two pulls on one pulley runs round it, from a support where it begins there", () => {
    expect(course(["block", 90], ["block", 90], ["bucket", 90])).toBe("|w^");
    expect(course(["crate", 0], ["block", 90], ["block", 90])).toBe("^w|");
    expect(course(["block", 90], ["block", 90])).toBe("|w|");
    expect(course(["bucket", 90], ["block", -90], ["block", -90], ["lamp", 90])).toBe("-w-");
  });

  it("with an odd number of pulls on one pulley is tied to it", () => {
    expect(course(["block", 90], ["block", 90], ["block", 90], ["bucket", 90])).toBe("^w^");
    expect(course(["block", 90], ["block", 90], ["block", 90], ["block", 90], ["bucket", 90])).toBe("|w^w^");
  });

  it("goes on through several pulleys", () => {
    expect(course(["a", 90], ["b", 90], ["b", 90], ["c", 90], ["c", 90])).toBe("^w^w|");
  });
});
