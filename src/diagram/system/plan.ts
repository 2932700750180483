// The unknown places of a layout and what is asked of them, by name.
import { leastSquares, type Row, type Terms, type Wish } from "./least-squares.ts";
import { dot, plus, times, type Vec } from "./vector.ts";

/** A point fixed to a named place at an offset: a corner of a body, the rim of a pulley. */
export interface Hold {
  readonly at: string;
  readonly offset: Vec;
}

/** Gathers unknowns and what is asked of them. */
export class Plan {
  readonly #places = new Map<string, number>();
  readonly #levels = new Map<string, number>();
  #count = 0;
  readonly #equal: Row[] = [];
  readonly #atLeast = new Map<string, Row[]>();
  readonly #wishes: Wish[] = [];

  /** The part of the arrow from one hold to another along a direction, as terms of unknowns and a value that is known. */
  #between(from: Hold, to: Hold, direction: Vec): { terms: Terms; known: number } {
    const [a, b] = [this.#place(from.at), this.#place(to.at)];
    const terms: [number, number][] = [];
    if (from.at !== to.at)
      terms.push([b, direction.x], [b + 1, direction.y], [a, 0 - direction.x], [a + 1, 0 - direction.y]);
    return { terms, known: dot(to.offset, direction) - dot(from.offset, direction) };
  }

  #place(name: string): number {
    const there = this.#places.get(name);
    if (there !== undefined) return there;
    this.#places.set(name, this.#count);
    this.#count += 2;
    return this.#count - 2;
  }

  #level(name: string): number {
    const there = this.#levels.get(name);
    if (there !== undefined) return there;
    this.#levels.set(name, this.#count);
    this.#count += 1;
    return this.#count - 1;
  }

  /** Names a place that may have nothing else asked of it. */
  place(name: string): void {
    this.#place(name);
  }

  /** The way from one hold to another has exactly this part along a direction. */
  exactly(from: Hold, to: Hold, direction: Vec, value: number): void {
    const { terms, known } = this.#between(from, to, direction);
    this.#equal.push({ terms, value: value - known });
  }

  /** The way from one hold to another has at least this part along a direction. `name` lets it be dropped again. */
  atLeast(from: Hold, to: Hold, direction: Vec, value: number, name = ""): void {
    const { terms, known } = this.#between(from, to, direction);
    const rows = this.#atLeast.get(name) ?? [];
    rows.push({ terms, value: value - known });
    this.#atLeast.set(name, rows);
  }

  /** Drops the bounds of a name. */
  drop(name: string): void {
    this.#atLeast.delete(name);
  }

  /** The way from one hold to another is wished to have this part along a direction. */
  wish(from: Hold, to: Hold, direction: Vec, value: number, weight: number): void {
    const { terms, known } = this.#between(from, to, direction);
    this.#wishes.push({ terms, value: value - known, weight });
  }

  /** A hold lies on a line that is known by its direction across; lines of one name are one. */
  onLine(hold: Hold, line: string, across: Vec): void {
    const place = this.#place(hold.at);
    const terms: Terms = [
      [place, across.x],
      [place + 1, across.y],
      [this.#level(line), -1],
    ];
    this.#equal.push({ terms, value: 0 - dot(hold.offset, across) });
  }

  /** A place is where it is said to be. */
  fix(name: string, at: Vec): void {
    const place = this.#place(name);
    this.#equal.push({ terms: [[place, 1]], value: at.x }, { terms: [[place + 1, 1]], value: at.y });
  }

  /** Finds all places. */
  solve(): Places {
    const atLeast = [...this.#atLeast.values()].flat();
    const { unknowns: found, contradictions } = leastSquares({
      count: this.#count,
      equal: this.#equal,
      atLeast,
      wishes: this.#wishes,
    });
    const missing = atLeast.map(({ terms, value }) =>
      terms.reduce((left, [unknown, factor]) => left - factor * (found[unknown] ?? 0), value),
    );
    const places = new Map(
      [...this.#places].map(([name, index]) => [name, { x: found[index] ?? 0, y: found[index + 1] ?? 0 }]),
    );
    return { places, missing: Math.max(0, ...missing), contradictions };
  }
}

/** The places found, by how much the worst bound is missed, and how many equations contradict others. */
export interface Places {
  readonly places: ReadonlyMap<string, Vec>;
  readonly missing: number;
  readonly contradictions: number;
}

/** Where a hold is. */
export function holdAt(places: ReadonlyMap<string, Vec>, hold: Hold): Vec {
  return plus(places.get(hold.at) ?? times(hold.offset, 0), hold.offset);
}
