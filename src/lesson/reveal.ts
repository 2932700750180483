// Showing a derivation up to a line: which lines and paragraphs stand before the stop.
import type { Derivation, Paragraph } from "../../solver/index.ts";

/** What is shown when a page stops at a line. */
export interface Reveal {
  /** The line it stops at: the one asked for, or the last earlier one that is there at these values; null if none is. */
  readonly stop: string | null;
  /** Whether the line asked for is there. */
  readonly exact: boolean;
  /** Whether any lesson line has the id asked for. */
  readonly known: boolean;
  /** The line after the stop, null at the end. */
  readonly next: string | null;
  readonly lines: ReadonlySet<string>;
  /** Paragraphs shown, and those of them shown to their end. */
  readonly paragraphs: ReadonlySet<string>;
  readonly complete: ReadonlySet<string>;
}

const lineIds = (paragraphs: readonly Paragraph[]): string[] => paragraphs.flatMap((p) => p.lines.map((l) => l.id));

/** What to show up to a line; null shows all. `usual` is the lesson's own derivation, which orders lines that are absent here. */
export function revealUpTo(shown: Derivation, usual: Derivation, upTo: string | null): Reveal | null {
  if (upTo === null) return null;
  const here = lineIds(shown.paragraphs);
  const order = lineIds(usual.paragraphs);
  const exact = here.includes(upTo);
  const place = order.indexOf(upTo);
  const stop = exact ? upTo : (order.slice(0, Math.max(place, 0)).findLast((id) => here.includes(id)) ?? null);
  const last = stop === null ? -1 : here.indexOf(stop);
  const lines = new Set(here.slice(0, last + 1));
  const stopAt = shown.paragraphs.findIndex((p) => p.lines.some((l) => l.id === stop));
  // Before the first line stand the problem and its picture.
  const before = stopAt < 0 ? shown.paragraphs.findIndex((p) => p.lines.length > 0) : stopAt + 1;
  const visible = before < 0 ? shown.paragraphs : shown.paragraphs.slice(0, before);
  const complete = visible.filter((p) => p.lines.every((l) => lines.has(l.id)));
  return {
    stop,
    exact,
    known: exact || place >= 0,
    next: here[last + 1] ?? null,
    lines,
    paragraphs: new Set(visible.map((p) => p.id)),
    complete: new Set(complete.map((p) => p.id)),
  };
}
