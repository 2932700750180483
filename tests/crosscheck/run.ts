// npm run crosscheck: draws the documents, asks the oracle, writes the fixture. Needs python3-sympy (PYTHON: another Python that has SymPy).
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

const drawn = generate();
const oracle = ask("", "--name").trim();
process.stdout.write(`${drawn.length} documents to ${oracle}\n`);
const lines = ask(drawn.map((d) => JSON.stringify(d.document)).join("\n"))
  .trim()
  .split("\n");
if (lines.length !== drawn.length) throw new Error(`${lines.length} answers to ${drawn.length} documents`);
const answered = drawn.map((d, i): FixtureCase => ({ ...d, answer: JSON.parse(lines[i] ?? "") as OracleAnswer }));
const cases = answered.filter((c) => c.answer.rivals === undefined);
const date = new Date().toISOString().slice(0, 10);
const text = fixtureText({ oracle, date, dropped: answered.length - cases.length, cases });
writeFileSync(FIXTURE, text);
const count = (kind: OracleAnswer["case"]): string => `${cases.filter((c) => c.answer.case === kind).length} ${kind}`;
process.stdout.write(
  `${cases.length} written (${count("determined")}, ${count("under-determined")}, ${count("impossible")}), ${answered.length - cases.length} left open by the model; ${Math.round(text.length / 1000)} kB\n`,
);
