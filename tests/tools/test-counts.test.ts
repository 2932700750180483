import { describe, expect, it } from "vitest";
import { closingLine, countTests } from "../../src/tools/test-counts.mjs";

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((test) => ({ status: test })),
});

describe("the counts of a test run", () => {
  it("adds up passed, failed and skipped tests", () => {
    const report = {
      testResults: [file("failed", "passed", "failed"), file("passed", "passed", "pending", "todo")],
    };
    expect(countTests(report, 1)).toEqual({ passed: 2, failed: 1, skipped: 2 });
  });

  it("counts a file that does not load as a failure", () => {
    expect(countTests({ testResults: [file("failed"), file("passed", "passed")] }, 1).failed).toBe(1);
  });

  it("counts an error outside every test as a failure", () => {
    expect(countTests({ testResults: [file("passed", "passed")] }, 1).failed).toBe(1);
  });

  it("does not let a run that executed nothing pass", () => {
    expect(countTests({ testResults: [] }, 0).failed).toBe(1);
    expect(countTests(undefined, 0).failed).toBe(1);
  });

  it("ends in one plain line", () => {
    expect(closingLine({ passed: 3, failed: 0, skipped: 1 })).toBe("3 passed, 0 failed, 1 skipped");
  });
});
