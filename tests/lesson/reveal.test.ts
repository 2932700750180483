// Where a link that stops at a line stops.
import { describe, expect, it } from "vitest";
import { derive } from "../../solver/index.ts";
import { revealUpTo } from "../../src/lesson/reveal.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

const usual = derive(problemOf({ ropes: opposite(65, 40) }));
const upright = derive(problemOf({ ropes: opposite(90, 40) }));

describe("showing up to a line", () => {
  it("shows all when no line is named", () => {
    expect(revealUpTo(usual, usual, null)).toBeNull();
  });

  it("shows that line, those before it, and names the next", () => {
    const reveal = revealUpTo(usual, usual, "vertical.given");
    expect(reveal).toMatchObject({ stop: "vertical.given", exact: true, known: true, next: "horizontal.law" });
    expect([...(reveal?.lines ?? [])]).toEqual(["vertical.law", "vertical.given"]);
    expect(reveal?.paragraphs.has("vertical")).toBe(true);
    expect(reveal?.paragraphs.has("horizontal")).toBe(false);
  });

  it("leaves out what follows from a paragraph that is not shown to its end", () => {
    const reveal = revealUpTo(usual, usual, "vertical.law");
    expect(reveal?.paragraphs.has("vertical")).toBe(true);
    expect(reveal?.complete.has("vertical")).toBe(false);
  });

  it("stops at the last earlier line where its own is absent at these values", () => {
    expect(revealUpTo(upright, usual, "eliminate.divide")).toMatchObject({
      stop: "horizontal.substituted",
      exact: false,
      known: true,
    });
  });

  it("says when no such line exists, and then shows what stands before the first line", () => {
    const reveal = revealUpTo(usual, usual, "no.such.line");
    expect(reveal).toMatchObject({ stop: null, exact: false, known: false, next: "vertical.law" });
    expect(reveal?.paragraphs.has("problem")).toBe(true);
  });
});
