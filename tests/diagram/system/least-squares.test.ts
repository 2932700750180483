/**
 * The places that come nearest to what is wished: small cases worked out by hand, and random ones judged by the conditions that the best
 * place of such a problem fulfils (Karush 1939, Kuhn and Tucker 1951; the wording is from memory).
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSquares, type Asked } from "../../../src/diagram/system/least-squares.ts";

const find = (asked: Partial<Asked>): readonly number[] =>
  leastSquares({ count: 2, equal: [], atLeast: [], wishes: [], ...asked }).unknowns;

const x = [[0, 1]] as const;
const y = [[1, 1]] as const;
const sum = [
  [0, 1],
  [1, 1],
] as const;

describe("places by least squares", () => {
  it("are those wished for where nothing is in the way", () => {
    const [a, b] = find({ wishes: [{ terms: x, value: 3, weight: 1 }, { terms: y, value: -2, weight: 5 }] }); // prettier-ignore
    expect(a).toBeCloseTo(3, 2);
    expect(b).toBeCloseTo(-2, 2);
  });

  it("share a contradiction by the weights of the wishes", () => {
    const [a] = find({ wishes: [{ terms: x, value: 0, weight: 1 }, { terms: x, value: 4, weight: 3 }] }); // prettier-ignore
    expect(a).toBeCloseTo(3, 2);
  });

  it("fulfil equations to the last figure", () => {
    const [a = 0, b = 0] = find({
      equal: [{ terms: sum, value: 10 }],
      wishes: [{ terms: x, value: 1, weight: 1 }, { terms: y, value: 1, weight: 1 }], // prettier-ignore
    });
    expect(a + b).toBeCloseTo(10, 12);
    expect(a).toBeCloseTo(5, 2);
  });

  it("keep bounds that are in the way, and no more than that", () => {
    const wishes = [{ terms: x, value: 1, weight: 1 }];
    expect(find({ atLeast: [{ terms: x, value: 4 }], wishes })[0]).toBeCloseTo(4, 2);
    expect(find({ atLeast: [{ terms: x, value: -4 }], wishes })[0]).toBeCloseTo(1, 2);
  });

  it("count equations that contradict earlier ones, and pass them over", () => {
    const twice = [{ terms: x, value: 1 }, { terms: x, value: 1 }]; // prettier-ignore
    expect(leastSquares({ count: 1, equal: twice, atLeast: [], wishes: [] })).toEqual({
      unknowns: [1],
      contradictions: 0,
    });
    const against = [...twice, { terms: x, value: 2 }];
    expect(leastSquares({ count: 1, equal: against, atLeast: [], wishes: [] })).toEqual({
      unknowns: [1],
      contradictions: 1,
    });
  });

  it("cannot be bettered by a small step that keeps the bounds", () => {
    const number = fc.double({ min: -5, max: 5, noNaN: true });
    const terms = fc.tuple(number, number).map(([a, b]) => [[0, a], [1, b]] as const); // prettier-ignore
    fc.assert(
      fc.property(
        fc.array(fc.record({ terms, value: number, weight: fc.constant(1) }), { minLength: 2, maxLength: 5 }),
        fc.tuple(number, number),
        fc.array(terms, { maxLength: 3 }),
        number,
        (wishes, inside, directions, angle) => {
          const at = (row: readonly (readonly [number, number])[], place: readonly number[]): number =>
            row.reduce((total, [unknown, factor]) => total + factor * (place[unknown] ?? 0), 0);
          // Bounds that a known place keeps, so that they can be kept.
          const atLeast = directions.map((row) => ({ terms: row, value: at(row, inside) - 0.5 }));
          const found = find({ wishes, atLeast });
          const cost = (place: readonly number[]): number =>
            wishes.reduce((total, wish) => total + (at(wish.terms, place) - wish.value) ** 2, 0) +
            1e-4 * place.reduce((total, one) => total + one ** 2, 0);
          for (const { terms: row, value } of atLeast) expect(at(row, found)).toBeGreaterThan(value - 0.05);
          const step = [(found[0] ?? 0) + 0.2 * Math.cos(angle), (found[1] ?? 0) + 0.2 * Math.sin(angle)];
          fc.pre(atLeast.every(({ terms: row, value }) => at(row, step) >= value));
          expect(cost(step)).toBeGreaterThan(cost(found) - 0.05 * (1 + cost(found)));
        },
      ),
    );
  });
});
