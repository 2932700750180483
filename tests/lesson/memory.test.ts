// @vitest-environment jsdom
// The last state kept in the browser, and browsers that keep nothing.
import { afterEach, describe, expect, it, vi } from "vitest";
import { recall, remember } from "../../src/lesson/memory.ts";

const refuse = (error: Error): void => {
  vi.stubGlobal("localStorage", {
    getItem: () => {
      throw error;
    },
    setItem: () => {
      throw error;
    },
    removeItem: () => {
      throw error;
    },
  });
};

afterEach(() => {
  vi.unstubAllGlobals();
  window.localStorage.clear();
});

describe("the last state of a lesson", () => {
  it("is kept for each lesson by itself", () => {
    expect(remember("two-ropes", "mass=5")).toBe(true);
    expect(recall("two-ropes")).toBe("mass=5");
    expect(recall("hoist")).toBeNull();
  });

  it("is forgotten where it is the lesson's start", () => {
    remember("two-ropes", "mass=5");
    remember("two-ropes", "");
    expect(recall("two-ropes")).toBeNull();
  });

  it("is nothing where the browser refuses, without a fault", () => {
    refuse(new DOMException("full", "QuotaExceededError"));
    expect(recall("two-ropes")).toBeNull();
    expect([remember("two-ropes", "mass=5"), remember("two-ropes", "")]).toEqual([false, false]);
  });

  it("hides no fault of another kind", () => {
    refuse(new TypeError("a fault of ours"));
    expect(() => recall("two-ropes")).toThrow(TypeError);
    expect(() => remember("two-ropes", "mass=5")).toThrow(TypeError);
  });
});
