// The JSON that the command line writes, field by field, for a program that is not ours to rely on.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { modernNode } from "../../src/tools/modern-node.mjs";
import { documentOf, opposite } from "../solver/set-ups.ts";
import type { SetUp } from "../solver/set-ups.ts";

const CLI = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));

const terms = z.array(z.tuple([z.string().regex(/^-?\d+(\/\d+)?$/), z.int().positive()]));
const tex = z.strictObject({ tex: z.string().min(1) });
const line = z.strictObject({
  id: z.string().min(1),
  number: z.int().positive().nullable(),
  tex: z.string().min(1),
  plain: z.strictObject({ relation: z.enum(["=", "≈", ">", "<"]), sides: z.array(z.string().min(1)).min(2) }),
  attempt: z.string().min(1),
  status: z.enum(["always", "solution", "trial", "rounded", "contradiction"]),
  from: z.array(z.string().min(1)),
  reason: z.string().min(1),
  kind: z.enum(["law", "geometry", "algebra", "number"]),
  inside: z.string().min(1).nullable(),
});

/** Format 1 of the command line's JSON. Nothing more than this and nothing less. */
const FORMAT = z.strictObject({
  format: z.literal(1),
  case: z.enum(["taut", "slack", "impossible", "under-determined"]),
  slack: z.array(z.string()),
  answers: z.array(
    z.strictObject({
      id: z.string().min(1),
      unit: z.literal("N"),
      decimal: z.number().nullable(),
      exact: z.strictObject({ tex: z.string().min(1), terms, perWeight: terms.nullable() }).nullable(),
      letters: tex.nullable(),
    }),
  ),
  attempts: z
    .array(
      z.strictObject({
        id: z.string().min(1),
        assumes: z.array(z.strictObject({ rope: z.string(), state: z.enum(["taut", "slack", "free"]) })),
        holds: z.boolean(),
      }),
    )
    .min(1),
  symbols: z.array(
    z.strictObject({ id: z.string(), tex: z.string(), unit: z.string(), attempt: z.string(), value: z.number() }),
  ),
  paragraphs: z.array(
    z.strictObject({
      id: z.string().min(1),
      kind: z.string().min(1),
      part: z.string().min(1),
      attempt: z.string().min(1),
      heading: z.string().min(1),
      sentences: z.array(z.string().min(1)),
      lines: z.array(line),
      refers: z.array(z.string()),
    }),
  ),
});

function json(setUp: SetUp, ...options: readonly string[]): z.infer<typeof FORMAT> {
  const input = JSON.stringify(documentOf(setUp));
  const { stdout } = spawnSync(modernNode(), [CLI, "-", "--as", "json", ...options], { input, encoding: "utf8" });
  return FORMAT.parse(JSON.parse(stdout));
}

describe("the JSON of the command line", () => {
  it.each([
    ["both ropes pull", { ropes: opposite(65, 40) }, "taut"],
    ["an exact answer", { ropes: opposite(45, 45) }, "taut"],
    ["one rope slack in a cart", { ropes: opposite(65, 40), ax: 12 }, "slack"],
    ["free fall", { ropes: opposite(65, 40), ay: -9.8 }, "slack"],
    ["impossible", { ropes: [180, 0] }, "impossible"],
    ["only the sum is fixed", { ropes: [90, 90] }, "under-determined"],
  ] as const)("has all its fields and no other: %s", (_, setUp, kind) => {
    const data = json(setUp);
    expect(data.case).toBe(kind);
    const attempts = new Set(data.attempts.map((a) => a.id));
    const used = data.paragraphs.flatMap((p) => [p.attempt, ...p.lines.map((l) => l.attempt)]);
    expect(used.filter((id) => !attempts.has(id))).toEqual([]);
    expect(data.symbols.filter((s) => !attempts.has(s.attempt))).toEqual([]);
  });

  it("gives full doubles, and exact terms in newtons that need not be short", () => {
    const [answer] = json({ ropes: opposite(45, 45) }).answers;
    expect(answer).toMatchObject({
      id: "T1",
      exact: { terms: [["1029/50", 2]], perWeight: [["1/2", 2]] },
      letters: { tex: String.raw`\frac{{m g}}{2 \sin {\alpha}}` },
    });
    expect(answer?.decimal).toBeCloseTo((41.16 * Math.SQRT2) / 2, 13);
    expect(json({ ropes: opposite(65, 40) }).answers.map((a) => a.exact)).toEqual([null, null]);
  });

  it("has an exact slack answer in a cart, but no multiple of the weight there", () => {
    const answers = json({ ropes: opposite(65, 40), ax: 12 }).answers;
    expect(answers.map((a) => [a.id, a.exact?.terms, a.exact?.perWeight])).toEqual([
      ["T1", [], null],
      ["T2", [["21/25", 6001]], null],
    ]);
  });

  it("names the ropes that each attempt takes as straight, loose or of unknown direction", () => {
    expect(json({ ropes: [160, 140] }).attempts).toEqual([
      {
        id: "both-taut",
        assumes: [
          { rope: "T1", state: "taut" },
          { rope: "T2", state: "taut" },
        ],
        holds: false,
      },
      {
        id: "T1-slack",
        assumes: [
          { rope: "T1", state: "slack" },
          { rope: "T2", state: "free" },
        ],
        holds: true,
      },
    ]);
  });

  it("is the same twice, and figures change what is printed but not the answers", () => {
    const [usual, again, fine] = [
      json({ ropes: opposite(65, 40) }),
      json({ ropes: opposite(65, 40) }),
      json({ ropes: opposite(65, 40) }, "--figures", "6"),
    ];
    expect(again).toEqual(usual);
    expect(fine.answers).toEqual(usual.answers);
    expect(fine.paragraphs).not.toEqual(usual.paragraphs);
  });
});
