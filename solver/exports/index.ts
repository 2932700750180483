// A derivation as data for files and other programs: the public JSON, format 1.
import { surdTexOf, exprTex } from "../5-words/index.ts";
import type { Line, Paragraph } from "../5-words/index.ts";
import { FIRST_SLOT, plainSentence } from "../5-words/index.ts";
import { attemptsOf } from "./attempts.ts";
import { statesOf } from "./states.ts";

export { statesOf } from "./states.ts";
export type { ExportedState } from "./states.ts";
import type { Derivation } from "../index.ts";
import type { Answer } from "../results/index.ts";
import { termsOf } from "../results/index.ts";

/** TeX with its slots filled in. */
export const filled = (tex: { readonly form: string; readonly slots: readonly string[] }): string =>
  tex.form
    .replace(/\{9000(\d{5})\}/g, (_, digits: string) => tex.slots[Number(`9000${digits}`) - FIRST_SLOT] ?? "")
    .replace(/\\htmlData\{ref=\w+\}/g, "");

/** Line numbers by line id. */
export function lineNumbers(paragraphs: readonly Paragraph[]): ReadonlyMap<string, number> {
  return new Map(paragraphs.flatMap((p) => p.lines.map((l): [string, number] => [l.id, l.number])));
}

function lineData(line: Line, inside: string | null, numbers: ReadonlyMap<string, number>): Record<string, unknown>[] {
  const own = {
    id: line.id,
    number: inside === null ? line.number : null,
    tex: filled(line.tex),
    plain: line.plain(),
    attempt: line.attempt,
    status: line.status,
    from: line.from,
    reason: plainSentence(line.reason, (id) => numbers.get(id)),
    kind: line.kind,
    inside,
  };
  return [own, ...line.smaller.flatMap((small) => lineData(small, line.id, numbers))];
}

function answerData(a: Answer, d: Derivation): Record<string, unknown> {
  const exact =
    a.exact === null
      ? null
      : {
          tex: surdTexOf(a.exact.newtons),
          terms: termsOf(a.exact.newtons),
          perWeight: a.exact.perWeight === null ? null : termsOf(a.exact.perWeight),
        };
  const letters = a.letters === null || d.model !== "hanging" ? null : { tex: filled(exprTex(a.letters, d.result)) };
  return { id: a.id, unit: a.unit, decimal: a.decimal, exact, letters };
}

/** Every name that any line's `plain` uses, with its value in each attempt. Angles are in radians. */
function symbolData(d: Derivation): Record<string, unknown>[] {
  return attemptsOf(d).flatMap((attempt) => {
    const used = new Set(
      d.paragraphs
        .filter((p) => p.attempt === attempt.id)
        .flatMap((p) =>
          p.lines.flatMap((l) =>
            [l, ...l.smaller].flatMap((x) => x.plain().sides.flatMap((side) => side.match(/[A-Za-z]\w*/g) ?? [])),
          ),
        ),
    );
    const names = [...attempt.values.symbols]
      .filter(([id]) => used.has(id))
      .map(([id, v]) => ({
        id,
        tex: attempt.tex(id),
        unit: attempt.unit(id),
        attempt: attempt.id,
        value: v.decimal,
      }));
    const angles = [...attempt.values.angles]
      .filter(([id]) => used.has(id) && !attempt.values.symbols.has(id))
      .map(([id, v]) => ({
        id,
        tex: attempt.tex(id),
        unit: "rad",
        attempt: attempt.id,
        value: v.radians,
      }));
    return [...names, ...angles];
  });
}

/** The derivation in the public format. */
export function exportDerivation(d: Derivation): Record<string, unknown> {
  const numbers = lineNumbers(d.paragraphs);
  return {
    format: 1,
    case: d.kind,
    slack: d.slack,
    answers: d.answers.map((a) => answerData(a, d)),
    ...(d.model === "system" ? { states: statesOf(d) } : {}),
    attempts: attemptsOf(d).map(({ id, assumes, holds }) => ({ id, assumes, holds })),
    symbols: symbolData(d),
    paragraphs: d.paragraphs.map((p) => ({
      id: p.id,
      kind: p.kind,
      part: p.part,
      attempt: p.attempt,
      heading: p.heading,
      sentences: [...p.before, ...p.after].map((s) => plainSentence(s, (id) => numbers.get(id))),
      lines: p.lines.flatMap((l) => lineData(l, null, numbers)),
      refers: p.refers,
    })),
  };
}

/** The derivation for a terminal. */
export function textDerivation(d: Derivation): string {
  const numbers = lineNumbers(d.paragraphs);
  const words = (s: Parameters<typeof plainSentence>[0]): string => plainSentence(s, (id) => numbers.get(id));
  return d.paragraphs
    .map((p) =>
      [
        p.heading.toUpperCase(),
        ...p.before.map(words),
        ...p.lines.map((l) => `  (${l.number})  ${l.text()}    [${words(l.reason)}]`),
        ...p.after.map(words),
      ].join("\n"),
    )
    .join("\n\n");
}

/** The derivation's lines in TeX, a displayed formula each, with the sentences between. */
export function texDerivation(d: Derivation): string {
  const numbers = lineNumbers(d.paragraphs);
  const escape = (t: string): string =>
    t
      .replace(/[&%#$_]/g, "\\$&")
      .replace(/\u00a0/g, "~")
      .replace(/−/g, "$-$")
      .replace(/°/g, "$^\\circ$");
  const words = (s: Parameters<typeof plainSentence>[0]): string =>
    s
      .map((r) =>
        r.kind === "math"
          ? `$${filled(r.tex)}$`
          : r.kind === "line"
            ? `(${String(numbers.get(r.id) ?? "")})`
            : escape(r.text),
      )
      .join("");
  return d.paragraphs
    .map((p) =>
      [
        `\\paragraph{${escape(p.heading)}}`,
        ...p.before.map(words),
        ...p.lines.map((l) => `\\[ ${filled(l.tex).replace(/\\degree/g, "^\\circ")} \\tag{${l.number}} \\]`),
        ...p.after.map(words),
      ].join("\n"),
    )
    .join("\n\n");
}
