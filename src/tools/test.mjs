/**
 * `npm test`: installs what is missing, builds the site, makes every check, runs every test (a real browser included),
 * and ends with one plain line: N passed, N failed, N skipped.
 * With arguments (`npm test -- tests/exact`) only the build and the tests they select are run.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { build, checks } from "./checks.mjs";
import { ensureInstalled } from "./install.mjs";
import { root, siteFolder } from "./project.mjs";
import { runScript } from "./run-script.mjs";
import { closingLine, countTests } from "./test-counts.mjs";

/** @typedef {import("./checks.mjs").Check} Check */

const report = "node_modules/.cache/tautline/tests.json";
const checksAtOnce = 2;

/** @typedef {"passed" | "failed" | "skipped"} Outcome */

/**
 * Makes one check and says how it went; its output is shown only when it fails.
 * @param {Check} check
 * @returns {Promise<Outcome>}
 */
async function make(check) {
  const { about } = check;
  if (about !== undefined && !hasFiles(about)) {
    console.log(`skip  ${check.name}  (there is no ${about} file)`);
    return "skipped";
  }
  const run = await runScript(check.script, check.args, { capture: true });
  const passed = run.code === 0;
  console.log(`${passed ? "ok  " : "FAIL"}  ${check.name}  (${run.seconds.toFixed(1)} s)`);
  if (!passed) console.log(run.output);
  return passed ? "passed" : "failed";
}

/**
 * @param {string} ending
 * @returns {boolean} whether the site's source holds a file whose name ends so
 */
function hasFiles(ending) {
  return readdirSync(join(root, "src"), { recursive: true }).some((file) => String(file).endsWith(ending));
}

/**
 * Makes the checks, a few at a time.
 * @param {Check[]} list
 * @returns {Promise<Outcome[]>}
 */
async function makeAll(list) {
  const waiting = [...list];
  /** @type {Outcome[]} */
  const results = [];
  const lane = async () => {
    for (let check = waiting.shift(); check; check = waiting.shift()) results.push(await make(check));
  };
  await Promise.all(Array.from({ length: checksAtOnce }, lane));
  return results;
}

/**
 * Runs the tests, showing them as they come.
 * @param {string[]} selected what the command line selects; empty for all
 * @returns {Promise<import("./test-counts.mjs").Counts>}
 */
async function runTests(selected) {
  const place = join(root, report);
  mkdirSync(dirname(place), { recursive: true });
  rmSync(place, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  const run = await runScript("node_modules/vitest/vitest.mjs", ["run", ...reporters, ...selected]);
  return countTests(readReport(place), run.code);
}

/**
 * @param {string} place
 * @returns {import("./test-counts.mjs").TestReport | undefined} undefined when the runner did not get to writing one
 */
function readReport(place) {
  if (!existsSync(place)) return undefined;
  /** @type {unknown} */
  const content = JSON.parse(readFileSync(place, "utf8"));
  return /** @type {import("./test-counts.mjs").TestReport} */ (content);
}

/** @returns {Promise<void>} */
async function test() {
  const selected = process.argv.slice(2);
  ensureInstalled();
  // A build that fails must not leave the tests an older site to pass on.
  rmSync(join(root, siteFolder), { recursive: true, force: true });
  const results = [await make(build)];
  if (selected.length === 0) results.push(...(await makeAll(checks)));
  const tests = await runTests(selected);
  const made = (/** @type {Outcome} */ outcome) => results.filter((result) => result === outcome).length;
  const failed = tests.failed + made("failed");
  console.log(closingLine({ passed: tests.passed + made("passed"), failed, skipped: tests.skipped + made("skipped") }));
  process.exitCode = failed === 0 ? 0 : 1;
}

test().catch((/** @type {unknown} */ error) => {
  console.error(error);
  console.log(closingLine({ passed: 0, failed: 1, skipped: 0 }));
  process.exitCode = 1;
});
