/**
 * Adds up what the test run came to. A run may never look better than it was: a test file that does not load, an error
 * outside every test, or a run that executed nothing each counts as a failure.
 */

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Counts
 * @typedef {{ status: string, assertionResults: { status: string }[] }} TestFile
 * @typedef {{ testResults: TestFile[] }} TestReport the parts used of the test runner's JSON report
 */

/**
 * Counts the tests of a report.
 * @param {TestReport | undefined} report undefined when the runner wrote none
 * @param {number} exitCode the runner's exit code
 * @returns {Counts}
 */
export function countTests(report, exitCode) {
  const files = report?.testResults ?? [];
  const results = files.flatMap((file) => file.assertionResults.map((test) => test.status));
  const passed = results.filter((status) => status === "passed").length;
  const failed = results.filter((status) => status === "failed").length;
  const broken = files.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const known = failed + broken;
  const unexplained = known === 0 && (exitCode !== 0 || passed === 0) ? 1 : 0;
  return { passed, failed: known + unexplained, skipped: results.length - passed - failed };
}

/**
 * The plain closing line of `npm test`.
 * @param {Counts} counts
 * @returns {string}
 */
export function closingLine({ passed, failed, skipped }) {
  return `${String(passed)} passed, ${String(failed)} failed, ${String(skipped)} skipped`;
}
