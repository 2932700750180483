// npm run crosscheck: draws the documents, asks the oracle, writes the fixture. With a seed (npm run crosscheck -- 7) it draws other
// documents, writes nothing and compares our solver with the oracle at once. Needs python3-sympy (PYTHON: another Python with SymPy).
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
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

/** Our solver is loaded for this alone: the fixture is written without it. */
async function compare(seed: number): Promise<void> {
  const { compareAll } = await import("./against.ts");
  if (compareAll(answered(seed)) > 0) process.exitCode = 1;
}

const [seed] = process.argv.slice(2);
if (seed === undefined) write();
else if (/^\d{1,9}$/.test(seed)) await compare(Number(seed));
else throw new Error(`seed: found ${seed}, accepted: a whole number of at most 9 digits`);
