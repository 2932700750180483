// What the sentences about set-ups claim of motion, of what is not determined and of other cases, on random problems.
import { describe, expect, it } from "vitest";
import { convertedDecimal } from "../../shared/format/units.ts";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { statesOf } from "../../solver/exports/index.ts";
import { heldIn, modelOf } from "../support/mechanics/index.ts";
import { answerOf, casesOf, claims, derived, faults, numberOf, short, statesText } from "./set-up-cases.ts";
import { accelerationOf, tangentOf, WAYS } from "./set-up-ways.ts";

const CASES = casesOf(60);

/** How many of the cases claim a thing: a test of a claim that nobody makes would show nothing. */
const claiming = (pattern: RegExp): number =>
  CASES.filter(({ derivation }) => claims(derivation, pattern).length > 0).length;

describe("the way in which something accelerates", () => {
  const ACCELERATES =
    /^(.+) accelerates? (to the right|to the left|upwards|downwards|up the slope|down the slope)(?:, seen from [^:.]+)?[:.]/;

  it("is that of the answers", () => {
    let told = 0;
    expect(
      faults(CASES, (one) =>
        claims(one.derivation, ACCELERATES).flatMap(([, who = "", way = ""]) =>
          one.derivation.system.setUp.bodies.flatMap(({ id }) => {
            if (!new RegExp(`(?:^|\\W)${id}(?:\\W|$)`, "i").test(who)) return [];
            const acceleration = accelerationOf(one, id);
            if (acceleration === null) return [];
            told++;
            return WAYS[way]?.(...acceleration) === true
              ? []
              : [`${id} accelerates ${way}, but ${acceleration.join(", ")}`];
          }),
        ),
      ),
    ).toEqual([]);
    expect(told).toBeGreaterThan(500);
  });

  it("is the way in which it was assumed to start sliding, where that is said", () => {
    expect(claiming(/was assumed to slide|were assumed to slide/)).toBeGreaterThan(100);
    expect(
      faults(CASES, (one) =>
        claims(one.derivation, /way in which (.+) (?:was|were) assumed to slide/).flatMap(([, who = ""]) =>
          (one.document.surfaces ?? []).flatMap((surface) => {
            const state = statesOf(one.derivation).find(({ id }) => id === surface.id)?.state ?? "";
            if (!state.startsWith("slides") || !new RegExp(`(?:^|\\W)${surface.on}(?:\\W|$)`).test(who)) return [];
            const [x, y] = tangentOf(surface);
            const [ax, ay] = accelerationOf(one, surface.on) ?? [NaN, NaN];
            const speed = ax * x + ay * y;
            return (state === "slides forwards" && speed > 0) || (state === "slides backwards" && speed < 0)
              ? []
              : [`${surface.on} ${state} at ${speed}`];
          }),
        ),
      ),
    ).toEqual([]);
  });
});

describe("the way in which something would start to slide without friction", () => {
  /** The document without any friction. */
  const smooth = (document: ProblemDocument): ProblemDocument => ({
    ...document,
    surfaces: (document.surfaces ?? []).map((surface) => {
      const { friction, ...rest } = surface;
      return friction === undefined ? surface : rest;
    }),
  });

  it("is the way in which it does, where the only rough surface is made smooth", () => {
    let told = 0;
    const alone = CASES.filter(
      ({ document, derivation: d }) =>
        (document.surfaces ?? []).length === 1 &&
        statesOf(d).some((s) => s.state === "stuck") &&
        d.kind === "determined",
    );
    expect(
      faults(alone, ({ document, derivation: d }) =>
        claims(
          d,
          /without it (?:the )?(\w+) would start to slide (to the right|to the left|upwards|downwards|up the slope|down the slope)/,
        )
          .slice(-1)
          .flatMap(([, id = "", way = ""]) => {
            const other = smooth(document);
            const acceleration = accelerationOf({ document: other, derivation: derived(other) }, id);
            if (acceleration === null) return [];
            told++;
            return WAYS[way]?.(...acceleration) === true ? [] : [`${id} slides ${way}, but ${acceleration.join(", ")}`];
          }),
      ),
    ).toEqual([]);
    expect(told).toBeGreaterThan(100);
  });
});

describe("what comes off a surface", () => {
  it("speeds up away from it, as is claimed", () => {
    expect(claiming(/speeds up away from it/)).toBeGreaterThan(20);
    expect(
      faults(CASES, (one) =>
        claims(one.derivation, /^Seen from .+, (.+) speeds up away from it/).flatMap(([, who = ""]) =>
          (one.document.surfaces ?? []).flatMap((surface) => {
            const isMeant = surface.of === undefined && new RegExp(`(?:^|\\W)${surface.on}$`).test(who);
            const lifted = statesOf(one.derivation).some((s) => s.id === surface.id && s.state === "lifted");
            if (!isMeant || !lifted) return [];
            const [x, y] = tangentOf(surface);
            const [ax, ay] = accelerationOf(one, surface.on) ?? [NaN, NaN];
            const { x: Ax, y: Ay } = one.derivation.system.setUp.frame;
            const away = (ax - Ax.decimal) * -y + (ay - Ay.decimal) * x;
            // The normal of a slope points to its upper side.
            return away * (x < 0 && "slope" in surface ? -1 : 1) > 0 ? [] : [`${surface.on} at ${away}`];
          }),
        ),
      ),
    ).toEqual([]);
  });
});

describe("what is not determined", () => {
  const BOUNDED = CASES.filter(({ derivation: d }) => d.kind === "under-determined" && d.system.ranges.length > 0);

  /** The document with a rope that ends at a support replaced by a pull of given size. */
  const pulledBy = (document: ProblemDocument, id: string, size: number): ProblemDocument | null => {
    const rope = (document.ropes ?? []).find((r) => r.id === id);
    if (rope === undefined || !("direction" in rope) || "to" in rope) return null;
    const { direction } = rope;
    if (direction === undefined) return null;
    return {
      ...document,
      ropes: (document.ropes ?? []).filter((r) => r !== rope),
      pushes: [...(document.pushes ?? []), { id: "Q9", on: rope.on, direction, size: short(size) }],
    };
  };

  it("can be anything within the bounds that are claimed, and nothing beyond them", () => {
    let probed = 0;
    expect(
      faults(BOUNDED, ({ document, derivation: d }) =>
        d.system.ranges.flatMap(({ id, least, most }) => {
          const rest = statesText(d)
            .split(", ")
            .filter((s) => !s.startsWith(`${id} `))
            .join(", ");
          const isPossible = (size: number): boolean | null => {
            const other = pulledBy(document, id, size);
            if (other === null) return null;
            const derivation = derived(other);
            return derivation.kind !== "impossible" && statesText(derivation) === rest;
          };
          const width = most - least;
          if (!(width > 1e-3 * most) || isPossible(least + width / 2) === null) return [];
          probed++;
          return [
            ...(isPossible(least + width / 2) === true ? [] : [`${id} between ${least} and ${most}`]),
            ...(isPossible(most - 1e-4 * width) === true ? [] : [`${id} just below ${most}`]),
            ...(isPossible(most + 1e-4 * width) === false ? [] : [`${id} just above ${most}`]),
            ...(least <= 0 || isPossible(least - 1e-4 * width) === false ? [] : [`${id} just below ${least}`]),
          ];
        }),
      ),
    ).toEqual([]);
    expect(probed).toBeGreaterThan(20);
  });
});

describe("other claims", () => {
  it("that one more case fulfils every law: an independent search finds more than one", () => {
    const twofold = CASES.filter(({ derivation }) => claims(derivation, /One more case fulfils every law/).length > 0);
    expect(twofold.length).toBeGreaterThan(0);
    expect(
      faults(twofold, ({ document }) => (heldIn(modelOf(document)).length > 1 ? [] : ["there is one case"])),
    ).toEqual([]);
  });

  it("that a slack rope has less to bridge than it is long", () => {
    expect(claiming(/ to bridge, less than its length/)).toBeGreaterThan(3);
    expect(
      faults(CASES, ({ derivation: d }) =>
        claims(d, /has (\S+)\s\S+ to bridge, less than its length of (\S+)\s/).flatMap(
          ([all, apart = "", long = ""]) => (numberOf(apart) <= numberOf(long) ? [] : [all]),
        ),
      ),
    ).toEqual([]);
  });

  it("of forces in newtons: a pound-force is what the exact conversion makes it", () => {
    const board = derived(
      {
        format: 1,
        units: "lbf-ft",
        gravity: 32.2,
        bodies: [{ id: "board", name: "shop sign", weight: 1 }],
        ropes: [{ id: "T", on: "board", direction: { angle: 90 } }],
      },
      { figures: 6 },
    );
    const exactly = convertedDecimal("force", 1, "lbf-ft", "SI").toPrecision(6);
    expect(claims(board, /^In newtons, 1 lbf being (\S+)\sN: T is (\S+)\sN\.$/)[0]?.slice(1)).toEqual([
      exactly,
      exactly,
    ]);
    expect(claiming(/^In newtons/)).toBeGreaterThan(20);
    expect(
      faults(CASES, ({ derivation: d }) =>
        claims(d, /^In newtons[^:]+: (.+)\./).flatMap(([, list = ""]) =>
          [...list.matchAll(/(\w+) is (−?[\d.×⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g)].flatMap(([all, letter = "", text = ""]) => {
            const exact = convertedDecimal("force", answerOf(d, letter), "lbf-ft", "SI");
            return Math.abs(numberOf(text.replace("−", "-")) - exact) <= 0.006 * Math.abs(exact) ? [] : [all];
          }),
        ),
      ),
    ).toEqual([]);
  });
});
