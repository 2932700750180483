/**
 * A warning on the console fails the test that caused it: nobody reads a warning in a run that passes.
 */
import { afterEach, beforeEach, expect, vi } from "vitest";

beforeEach(() => {
  vi.spyOn(console, "warn");
  vi.spyOn(console, "error");
});

afterEach(() => {
  const said = [...vi.mocked(console.warn).mock.calls, ...vi.mocked(console.error).mock.calls];
  vi.restoreAllMocks();
  expect(said, "messages on the console during the test").toEqual([]);
});
