import { describe, expect, it } from "vitest";
import { wantedPort } from "../../src/tools/port.mjs";

describe("the port that the site is served from", () => {
  it("is the one on the command line, else PORT, else 4321", () => {
    expect(wantedPort(["--port", "5000"], "6000")).toBe(5000);
    expect(wantedPort(["--port=5000"], undefined)).toBe(5000);
    expect(wantedPort([], "6000")).toBe(6000);
    expect(wantedPort([], undefined)).toBe(4321);
  });

  it("is refused, naming it, when it is no port", () => {
    expect(() => wantedPort(["--port", "99999"], undefined)).toThrow(/"99999".*1 to 65535/);
    expect(() => wantedPort([], "web")).toThrow(/"web"/);
  });
});
