// Directions in the words of the trade, and back.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { directionOf, oppositeOf, readEntry, reworded, uphillOf, wordsOf } from "../../src/problem/index.ts";
import type { JsonObject } from "../../src/problem/index.ts";

const said = (direction: JsonObject, slope: JsonObject | null = null): string => {
  const { heading, reference, angle, run, rise } = wordsOf(direction, slope);
  return [heading, ...(angle === "" ? [] : [angle, reference]), run, rise].filter((word) => word !== "").join(" ");
};
const up30 = { angle: 30 };

describe("the words of a direction", () => {
  it.each<[JsonObject, string]>([
    [{ angle: 0 }, "right"],
    [{ angle: 90 }, "up"],
    [{ angle: 180 }, "left"],
    [{ angle: -180 }, "left"],
    [{ angle: -90 }, "down"],
    [{ angle: 270 }, "down"],
    [{ angle: 40 }, "up-right 40 horizontal"],
    [{ angle: 115 }, "up-left 65 horizontal"],
    [{ angle: -35.5 }, "down-right 35.5 horizontal"],
    [{ angle: 200 }, "down-left 20 horizontal"],
    [{ angle: "1/3" }, "up-right 1/3 horizontal"],
    [{ angle: 25, from: "vertical", side: "left" }, "up-left 25 vertical"],
    [{ angle: 150, from: "vertical", side: "right" }, "down-right 30 vertical"],
    [{ angle: 90, from: "vertical", side: "left" }, "left"],
    [{ angle: 0, from: "vertical", side: "left" }, "up"],
    [{ run: -3, rise: 4 }, "run-rise -3 4"],
    [{ angle: "steep" }, "up-right steep horizontal"],
  ])("%o is %s", (direction, words) => {
    expect(said(direction)).toBe(words);
  });

  it("are of the slope where the direction is along it", () => {
    expect(said({ angle: 30 }, up30)).toBe("up-slope");
    expect(said({ angle: -150 }, up30)).toBe("down-slope");
    expect(said({ angle: 155 }, { angle: 155 })).toBe("up-slope");
    expect(said({ run: -4, rise: -3 }, { run: 4, rise: 3 })).toBe("down-slope");
    expect(said({ angle: 0 }, { angle: 0 })).toBe("right");
  });
});

describe("the direction that words mean", () => {
  const angle = fc.oneof(
    fc.integer({ min: -360, max: 360 }),
    fc.integer({ min: -3600, max: 3600 }).map((n) => n / 10),
  );
  const direction: fc.Arbitrary<JsonObject> = fc.oneof(
    angle.map((degrees) => ({ angle: degrees })),
    fc.record({
      angle: fc.integer({ min: 1, max: 1799 }).map((n) => n / 10),
      from: fc.constant("vertical"),
      side: fc.constantFrom("left", "right"),
    }),
    fc.record({ run: fc.integer({ min: -9, max: 9 }), rise: fc.integer({ min: 1, max: 9 }) }),
  );
  /** Degrees anticlockwise in (−180, 180], from the format's own definition and nothing of the form. */
  const degreesOf = (d: JsonObject): number => {
    const turned =
      "run" in d
        ? (Math.atan2(Number(d.rise), Number(d.run)) * 180) / Math.PI
        : d.from === "vertical"
          ? 90 + (d.side === "left" ? 1 : -1) * Number(d.angle)
          : Number(d.angle);
    const within = ((turned % 360) + 360) % 360;
    return Math.round((within > 180 ? within - 360 : within) * 1e6) / 1e6;
  };

  it("is the one they were made of", () => {
    fc.assert(
      fc.property(direction, (one) => {
        const back = directionOf(wordsOf(one, null), null);
        expect(back === null ? null : degreesOf(back)).toBe(degreesOf(one));
      }),
    );
  });

  it("turns round twice to itself", () => {
    fc.assert(
      fc.property(direction, (one) => {
        expect(degreesOf(oppositeOf(oppositeOf(one)))).toBe(degreesOf(one));
        expect(Math.abs(Math.abs(degreesOf(oppositeOf(one)) - degreesOf(one)) - 180)).toBeLessThan(1e-6);
      }),
    );
  });

  it("goes up along a slope, whichever way the slope is written", () => {
    fc.assert(
      fc.property(direction, (slope) => {
        const uphill = uphillOf(slope);
        const isLevel = degreesOf(slope) % 180 === 0;
        if (isLevel) expect(uphill).toBeNull();
        else expect(degreesOf(uphill ?? {})).toBeGreaterThan(0);
      }),
    );
  });

  it.each(["", "abc", "-1", "90.5", "1e9"])("is none for the angle “%s”", (text) => {
    expect(directionOf({ ...wordsOf({ angle: 40 }, null), angle: text }, null)).toBeNull();
  });

  it("keeps decimals as typed, commas and all", () => {
    expect(directionOf({ ...wordsOf({ angle: 40 }, null), angle: "27,5" }, null)).toEqual({ angle: 27.5 });
    expect(directionOf({ ...wordsOf({ angle: 140 }, null), angle: "0.1" }, null)).toEqual({ angle: 179.9 });
    expect(readEntry("0.1234567890123456789")).toBe("0.1234567890123456789");
  });

  it("has numbers to begin with when the words change", () => {
    expect(directionOf(reworded(wordsOf({ angle: 90 }, null), "up-left"), null)).toEqual({ angle: 150 });
    expect(directionOf(reworded(wordsOf({ angle: 115 }, null), "up-right"), null)).toEqual({ angle: 65 });
    expect(directionOf(reworded(wordsOf({ angle: -160 }, null), "run-rise"), null)).toEqual({ run: -4, rise: -3 });
  });
});
