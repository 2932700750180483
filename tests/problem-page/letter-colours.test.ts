// The letters of forces are coloured as their arrows are.
import { describe, expect, it } from "vitest";
import { coloursAsRules } from "../../src/problem/letter-colours.ts";

describe("the colours of letters", () => {
  it("are those of forces and of their components, by rules of the page's own", () => {
    const colours = new Map([
      ["T", "2"],
      ["N1", "normal"],
    ]);
    expect(coloursAsRules(colours).split("\n")).toEqual([
      '[data-ref="T"],[data-ref="Tx"],[data-ref="Ty"]{--own:var(--force-2-text)}',
      '[data-ref="N1"],[data-ref="N1x"],[data-ref="N1y"]{--own:var(--force-normal-text)}',
    ]);
  });

  it("take nothing that is no id of a force into a rule", () => {
    expect(coloursAsRules(new Map([['T"]{}*{color:red}[x="', "1"]]))).toBe("");
  });
});
