import { describe, expect, it } from "vitest";
import { matchesLock } from "../../src/tools/installed.mjs";

const lock = {
  packages: {
    "": { version: "0.1.0" },
    "node_modules/a": { version: "1.0.0", integrity: "sha512-a" },
    "node_modules/other-system": { version: "1.0.0", integrity: "sha512-o", optional: true },
  },
};
const installed = { packages: { "node_modules/a": { version: "1.0.0", integrity: "sha512-a" } } };

describe("whether the packages are installed", () => {
  it("is true when all but the optional ones are there", () => {
    expect(matchesLock(lock, installed)).toBe(true);
  });

  it("is false when one is missing, has another version or other contents", () => {
    expect(matchesLock(lock, { packages: {} })).toBe(false);
    expect(matchesLock(lock, { packages: { "node_modules/a": { version: "2.0.0", integrity: "sha512-a" } } })).toBe(
      false,
    );
    expect(matchesLock(lock, { packages: { "node_modules/a": { version: "1.0.0", integrity: "sha512-b" } } })).toBe(
      false,
    );
  });

  it("is false when the lock file no longer has a package that is there", () => {
    const more = { packages: { ...installed.packages, "node_modules/b": { version: "1.0.0" } } };
    expect(matchesLock(lock, more)).toBe(false);
  });
});
