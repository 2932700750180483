// npm run crosscheck: draws the documents, asks the oracle, writes the fixture. With a seed (npm run crosscheck -- 7) it draws other
// documents, writes nothing and compares our solver with the oracle at once. Needs python3-sympy (PYTHON: another Python with SymPy).
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readProblem } from "../../shared/problem/schema.ts";
import { exportDerivation } from "../../solver/exports/index.ts";
import { derive } from "../../solver/index.ts";
import { beyondExport, differences } from "./compare.ts";
import type { SetUpData } from "./compare.ts";
import { FIXTURE, fixtureText } from "./fixture.ts";
import type { FixtureCase, OracleAnswer } from "./fixture.ts";
import { generate } from "./generate.ts";

const { PYTHON = "/usr/bin/python3" } = process.env;
const ORACLE = fileURLToPath(new URL("oracle.py", import.meta.url));
const MOST_OUTPUT = 64 * 1024 * 1024;

function ask(input: string, ...more: string[]): string {
  return execFileSync(PYTHON, ["-B", ORACLE, ...more], {
    input,
    encoding: "utf8",
    maxBuffer: MOST_OUTPUT,
    stdio: ["pipe", "pipe", "inherit"],
  });
}

/** Documents of a seed with the oracle's answers. */
function answered(seed?: number): readonly FixtureCase[] {
  const drawn = generate(seed);
  const lines = ask(drawn.map((d) => JSON.stringify(d.document)).join("\n"))
    .trim()
    .split("\n");
  if (lines.length !== drawn.length) throw new Error(`${lines.length} answers to ${drawn.length} documents`);
  return drawn.map((d, i): FixtureCase => ({ ...d, answer: JSON.parse(lines[i] ?? "") as OracleAnswer }));
}

function write(): void {
  const oracle = ask("", "--name").trim();
  const cases = answered();
  const text = fixtureText({ oracle, date: new Date().toISOString().slice(0, 10), cases });
  writeFileSync(FIXTURE, text);
  const count = (kind: OracleAnswer["case"]): string => `${cases.filter((c) => c.answer.case === kind).length} ${kind}`;
  const open = cases.filter((c) => c.answer.rivals !== undefined).length;
  process.stdout.write(
    `${cases.length} documents by ${oracle}: ${count("determined")}, ${count("under-determined")}, ${count("impossible")}; ` +
      `${open} with more than one case that holds; ${Math.round(text.length / 1000)} kB\n`,
  );
}

function differencesFor(c: FixtureCase): readonly string[] {
  const reading = readProblem(JSON.stringify(c.document));
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  const derivation = derive(reading.problem);
  return differences(c, exportDerivation(derivation) as unknown as SetUpData, beyondExport(derivation));
}

function compare(seed: number): void {
  const cases = answered(seed);
  let wrong = 0;
  for (const c of cases) {
    const found = faultsOf(c);
    if (found.length === 0) continue;
    wrong++;
    process.stdout.write(`${c.kind}: ${found.join("; ")}\n  ${JSON.stringify(c.document)}\n`);
  }
  process.stdout.write(`seed ${seed}: ${wrong} of ${cases.length} documents differ\n`);
  if (wrong > 0) process.exitCode = 1;
}

/** An error of our program on one document is a difference too. */
function faultsOf(c: FixtureCase): readonly string[] {
  try {
    return differencesFor(c);
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return [`${error.name}: ${error.message}`];
  }
}

const [seed] = process.argv.slice(2);
if (seed === undefined) write();
else if (/^\d{1,9}$/.test(seed)) compare(Number(seed));
else throw new Error(`seed: found ${seed}, accepted: a whole number of at most 9 digits`);
