// Published values of general set-ups, through the public problem document, in this process and by the command line.
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { readProblem } from "../../shared/problem/schema.ts";
import { modernNode } from "../../src/tools/modern-node.mjs";
import { exportDerivation } from "../../solver/exports/index.ts";
import { derive } from "../../solver/index.ts";
import { LEFT_OUT } from "./left-out.ts";
import { CASES } from "./published-cases.ts";
import { REFERENCE_IDS } from "./reference-ids.ts";
import { SET_UP_CASES } from "./set-ups/index.ts";
import type { SetUpCase } from "./set-ups/index.ts";
import { agrees } from "./set-ups/case.ts";
import type { Answered } from "./set-ups/case.ts";

/** What is read of the exported data. */
interface Data {
  readonly case: string;
  readonly answers: readonly { readonly id: string; readonly decimal: number | null }[];
  readonly states?: readonly { readonly id: string; readonly state: string }[];
  readonly attempts: readonly {
    readonly id: string;
    readonly assumes: readonly { readonly size?: string; readonly state: string }[];
  }[];
  readonly symbols: readonly { readonly id: string; readonly attempt: string; readonly value: number }[];
}

const LARGEST = /^largest (\w+)$/;

/** How large a push may be before something slides, in the attempt that asks for it. */
function largestOf({ attempts, symbols }: Data, push: string): number {
  const limit = attempts.find((a) => a.assumes.some((s) => s.size === push && s.state === "largest"));
  const found = symbols.find((s) => s.id === push && s.attempt === limit?.id);
  if (found === undefined) throw new Error(`nothing says how large ${push} may be`);
  return found.value;
}

/** An answer of the data by its id; the only unknown acceleration has no number. */
function decimalOf(data: Data, id: string): number {
  const { answers } = data;
  const push = LARGEST.exec(id)?.[1];
  if (push !== undefined) return largestOf(data, push);
  const own = answers.find((a) => a.id === id);
  const accelerations = answers.filter((a) => /^a\d*$/.test(a.id));
  const found = own ?? (/^a\d$/.test(id) && accelerations.length === 1 ? accelerations[0] : undefined);
  if (found?.decimal == null) throw new Error(`no answer ${id} among ${answers.map((a) => a.id).join(", ")}`);
  return found.decimal;
}

const answeredBy =
  (all: readonly Data[]): Answered =>
  (id, document = 0) => {
    const data = all[document];
    if (data === undefined) throw new Error(`there is no document ${document}`);
    return decimalOf(data, id);
  };

function derived(document: ProblemDocument): Data {
  const reading = readProblem(JSON.stringify(document));
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return JSON.parse(JSON.stringify(exportDerivation(derive(reading.problem)))) as Data;
}

/** A case's documents in order, each with its data; a later one may need the answers of those before. */
function run({ documents }: SetUpCase): { readonly document: ProblemDocument; readonly data: Data }[] {
  const done: { document: ProblemDocument; data: Data }[] = [];
  for (const item of documents) {
    const document = typeof item === "function" ? item(answeredBy(done.map((d) => d.data))) : item;
    done.push({ document, data: derived(document) });
  }
  return done;
}

function check(published: SetUpCase, all: readonly Data[]): void {
  expect(all.filter((d) => d.case !== "determined" && d.case !== "taut")).toEqual([]);
  for (const found of published.found) {
    const value = found.of(answeredBy(all));
    expect(agrees(value, found), `${found.what} is ${value}, printed ${found.value} to ${found.figures} figures`).toBe(
      true,
    );
  }
  for (const [id, state] of Object.entries(published.states ?? {}))
    expect(all[0]?.states?.find((s) => s.id === id)?.state, id).toBe(state);
}

describe("published set-ups agree to their printed figures", () => {
  it.each(SET_UP_CASES)("$id, grade $grade: $source", (published) => {
    check(
      published,
      run(published).map((d) => d.data),
    );
  });
});

describe("the command line gives the same for each of them", () => {
  let byCommand: Data[] = [];
  const counts = SET_UP_CASES.map((c) => c.documents.length);

  beforeAll(() => {
    const cli = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));
    const documents = SET_UP_CASES.flatMap((c) => run(c).map((d) => JSON.stringify(d.document)));
    const out = execFileSync(modernNode(), [cli, "-", "--lines", "--whole"], {
      input: documents.join("\n"),
      encoding: "utf8",
      maxBuffer: 64 * 1024 * 1024,
    });
    byCommand = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as Data);
  });

  it.each(SET_UP_CASES.map((c, i) => ({ ...c, first: counts.slice(0, i).reduce((a, b) => a + b, 0) })))(
    "$id",
    ({ first, ...published }) => {
      check(published, byCommand.slice(first, first + published.documents.length));
    },
  );

  it("and by --as json, a document at a time", () => {
    const cli = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));
    const some = SET_UP_CASES.filter((c) => ["knot-01", "frl-07", "pul-04"].includes(c.id));
    expect(some).toHaveLength(3);
    for (const published of some) {
      const input = JSON.stringify(published.documents[0]);
      const out = execFileSync(modernNode(), [cli, "-", "--as", "json"], { input, encoding: "utf8" });
      check(published, [JSON.parse(out) as Data]);
    }
  });
});

describe("the list of published cases", () => {
  const bare = (id: string): string => id.replace(/ \(.*\)$/, "");
  const ran = new Set([...CASES, ...SET_UP_CASES].map((c) => bare(c.id)));
  const left = Object.keys(LEFT_OUT).map(bare);

  it.each(REFERENCE_IDS)("%s is run, or left out with a reason", (id) => {
    expect(ran.has(id) || left.includes(id)).toBe(true);
  });

  it("holds every case that is run or left out, and each is run once", () => {
    expect([...ran, ...left].filter((id) => !REFERENCE_IDS.includes(id))).toEqual([]);
    const ids = [...CASES, ...SET_UP_CASES].map((c) => c.id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it("leaves out whole only what is not run", () => {
    expect(Object.keys(LEFT_OUT).filter((id) => id === bare(id) && ran.has(id))).toEqual([]);
  });

  it("says where each was read", () => {
    expect(SET_UP_CASES.filter((c) => c.locator === "" || c.source === "")).toEqual([]);
  });
});
