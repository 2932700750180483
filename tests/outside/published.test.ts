// Published values, through the public problem document and the command line's JSON.
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { modernNode } from "../../src/tools/modern-node.mjs";
import { derive } from "../../solver/index.ts";
import { exported } from "../solver/exported.ts";
import type { Exported } from "../solver/exported.ts";
import { problemFrom } from "../solver/set-ups.ts";
import { LEFT_OUT } from "./left-out.ts";
import { CASES } from "./published-cases.ts";
import type { PublishedCase, Printed } from "./published-case.ts";

const documentOf = ({ gravity, mass, weight, ax = 0, ay = 0, ropes }: PublishedCase): Record<string, unknown> => ({
  format: 1,
  gravity,
  bodies: [{ id: "load", ...(weight === undefined ? { mass } : { weight }), acceleration: { x: ax, y: ay } }],
  ropes: ropes.map((direction, i) => ({ id: `T${i + 1}`, on: "load", direction })),
});

/** Whether a value rounds to the printed one: within half a unit of its last significant figure. */
function agrees(value: number, { value: printed, figures }: Pick<Printed, "value" | "figures">): boolean {
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(printed))) + 1 - figures);
  return Math.abs(value - printed) <= unit * 0.5000001;
}

function answers(data: Exported, { printed, fromVertical }: PublishedCase): void {
  if (fromVertical !== undefined) {
    const theta = data.symbols.find((s) => s.id === "theta" && s.attempt === data.attempts.at(-1)?.id)?.value ?? NaN;
    const degrees = 90 - (theta * 180) / Math.PI;
    expect(agrees(degrees, fromVertical), `${degrees}° and ${fromVertical.value}° from the vertical`).toBe(true);
  }
  for (const p of printed) {
    const value = (data.answers[p.rope]?.decimal ?? NaN) / (p.shared ?? 1);
    expect(agrees(value, p), `${value} and ${p.value} to ${p.figures} figures`).toBe(true);
  }
}

describe("published worked examples agree to their printed figures", () => {
  it.each(CASES)("$id, grade $grade: $source", (published) => {
    answers(exported(derive(problemFrom(documentOf(published)))), published);
  });

  it.each(CASES.filter((c) => ["two-01", "two-04", "two-17", "lift-06", "sym-08 (plucked)", "pend-01"].includes(c.id)))(
    "$id, by the command line",
    (published) => {
      const cli = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));
      const out = execFileSync(modernNode(), [cli, "-", "--as", "json"], {
        input: JSON.stringify(documentOf(published)),
        encoding: "utf8",
      });
      answers(JSON.parse(out) as Exported, published);
    },
  );

  it("would not agree with a value one unit off in the last figure", () => {
    expect(agrees(109.01, { value: 108, figures: 3 })).toBe(false);
  });
});

describe("every published case", () => {
  it("says where it was read, and has a value or an angle to agree with", () => {
    expect(CASES.filter((c) => c.locator === "" || (c.printed.length === 0 && c.fromVertical === undefined))).toEqual(
      [],
    );
  });
});

describe("published cases that are left out", () => {
  it.each(Object.entries(LEFT_OUT))("%s: %s", (id, reason) => {
    expect(CASES.map((c) => c.id)).not.toContain(id);
    expect(reason).not.toBe("");
  });
});
