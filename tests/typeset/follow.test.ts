// @vitest-environment jsdom
// Paragraphs kept in step by patching must be the same, node for node, as the same paragraphs written anew.
import katex from "katex";
import { describe, expect, it } from "vitest";
import { derive } from "../../solver/index.ts";
import type { Derivation, Sentence } from "../../solver/index.ts";
import { FormCache, Follower, NotYetTypeset, RestQueue, paragraphMarkup } from "../../src/typeset/index.ts";
import type { Writing } from "../../src/typeset/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

/** Typesets at once, and keeps what it typeset for the whole file. */
const full = new FormCache(katex);

const numbersOf = (shown: Derivation): Writing["numberOf"] => {
  const numbers = new Map(shown.paragraphs.flatMap((p) => p.lines.map((l): [string, number] => [l.id, l.number])));
  return (line) => numbers.get(line);
};

/** The paragraphs of a derivation as a build would write them. */
const written = (shown: Derivation): string =>
  shown.paragraphs.map((p) => paragraphMarkup(p, { cache: full, numberOf: numbersOf(shown) })).join("");

/** The same markup as a browser gives it back. */
function asRead(markup: string): string {
  const box = document.createElement("div");
  box.innerHTML = markup;
  return box.innerHTML;
}

/** A page that shows a derivation, with its follower. */
class Shown {
  readonly root = document.createElement("div");
  readonly rest = new RestQueue();
  readonly cache: FormCache;
  private readonly follower: Follower;
  private derivation: Derivation;

  constructor(built: Derivation, cache: FormCache) {
    this.cache = cache;
    this.derivation = built;
    this.root.innerHTML = written(built);
    const numberOf = (line: string): number | undefined => numbersOf(this.derivation)(line);
    this.follower = new Follower(this.root, built.paragraphs, { cache, numberOf }, this.rest);
  }

  show(next: Derivation): void {
    this.derivation = next;
    this.follower.show(next.paragraphs);
  }

  /** What stands on the page once the hand rests. */
  get atRest(): string {
    this.rest.flush();
    return this.root.innerHTML;
  }
}

/** Where two texts part, with a little of what stands there. */
function parting(one: string, other: string): string {
  if (one === other) return "";
  let at = 0;
  while (one[at] === other[at]) at++;
  return `…${one.slice(Math.max(0, at - 120), at + 60)}… instead of …${other.slice(at, at + 60)}…`;
}

const usual = derive(problemOf({ ropes: opposite(65, 40) }));

describe("paragraphs that follow", () => {
  it("are the paragraphs written anew, after each of 50 random changes of everything", () => {
    const random = seeded(271828);
    const page = new Shown(usual, full);
    for (let i = 0; i < 50; i++) {
      const set = setUp(random);
      const next = derive(problemOf(set));
      page.show(next);
      expect(parting(page.atRest, asRead(written(next))), `change ${i}, to ${JSON.stringify(set)}`).toBe("");
    }
  });

  it("are so along a drag too, to and fro, over the special angles", () => {
    const page = new Shown(usual, full);
    const turns = Array.from({ length: 35 }, (_, i) => 28 + i);
    for (const turn of [...turns, ...turns.toReversed()]) {
      const next = derive(problemOf({ ropes: opposite(turn, 45) }));
      page.show(next);
      if (turn % 15 === 0) expect(parting(page.atRest, asRead(written(next))), `at ${turn}°`).toBe("");
    }
  });

  it("are whole before the printer has come, and right once it has, whatever was asked for meanwhile", () => {
    const random = seeded(31415);
    for (let i = 0; i < 20; i++) {
      const sets = [setUp(random), setUp(random)];
      const page = new Shown(usual, new FormCache(null));
      const wanted = sets.map((set) => derive(problemOf(set)));
      for (const next of wanted) {
        try {
          page.show(next);
        } catch (error) {
          if (!(error instanceof NotYetTypeset)) throw error;
        }
      }
      page.cache.use(katex);
      const last = wanted.at(-1) ?? usual;
      page.show(last);
      expect(parting(page.atRest, asRead(written(last))), JSON.stringify(sets)).toBe("");
    }
  });

  it("show nothing twice when the printer comes in the middle of a change", () => {
    const [paragraph] = usual.paragraphs;
    if (paragraph === undefined) throw new Error("there is no paragraph");
    const words = (text: string): Sentence => [{ kind: "text", text }];
    const formula: Sentence = [{ kind: "math", tex: { form: "z_9", slots: [] }, text: "z9" }];
    const more = { ...paragraph, before: [...paragraph.before, words("One more."), words("And one."), formula] };
    const page = new Shown(usual, new FormCache(null));
    const next = { ...usual, paragraphs: [more, ...usual.paragraphs.slice(1)] };
    expect(() => page.show(next)).toThrow(NotYetTypeset);
    page.cache.use(katex);
    page.show(next);
    expect(parting(page.atRest, asRead(written(next)))).toBe("");
  });

  it("change what is seen at once, and what is read aloud when the hand rests", () => {
    const page = new Shown(usual, full);
    const next = derive(problemOf({ ropes: opposite(65, 41) }));
    page.show(next);
    const texts = (tag: string): string[] =>
      [...page.root.querySelectorAll(`[id="vertical.substituted"] > .shown ${tag}[data-n]`)].map((e) => e.textContent);
    expect(texts("span")).toContain("41");
    expect(texts("mn")).toContain("40");
    page.rest.flush();
    expect(texts("mn")).toEqual(texts("span"));
  });

  it("leave an element that stays where it stands, so that a reader's focus and place stay too", () => {
    const page = new Shown(usual, full);
    const line = page.root.querySelector('[id="vertical.law"]');
    page.show(derive(problemOf({ ropes: opposite(30, 70) })));
    expect(page.root.querySelector('[id="vertical.law"]')).toBe(line);
  });

  it("refuse a page that is not as it was built", () => {
    const root = document.createElement("div");
    expect(
      () => new Follower(root, usual.paragraphs, { cache: full, numberOf: numbersOf(usual) }, new RestQueue()),
    ).toThrow(/not hold/);
  });
});
