// What a further attempt only repeats is not written again: its lines that say the same for the same reasons give way to those that stand already.
import type { SetUpAttempt } from "../../4-steps/types.ts";
import { degreesOfTurned } from "../../algebra/turned.ts";
import { say } from "../sentence.ts";
import type { Line, Paragraph, Run, Sentence } from "../types.ts";

/** Lines as they stand, by what they say; and for each line that gave way, the one that stands for it. */
export class Standing {
  private readonly lines = new Map<string, Line[]>();
  private readonly instead = new Map<string, string>();
  private readonly attempts: SetUpAttempt[] = [];
  private used: Line[] = [];
  private comparable = false;

  /** Begins an attempt: whether angles and axes are those of the ones before decides whether lines can be the same. */
  begin(attempt: SetUpAttempt): void {
    this.comparable = this.attempts.length > 0 && this.attempts.every((other) => isComparable(other, attempt));
    this.attempts.push(attempt);
    this.used = [];
  }

  /** Whether a line stands already; it is remembered either way. */
  stands(line: Line): boolean {
    const text = line.text();
    const known = this.lines.get(text) ?? [];
    const same = this.comparable ? known.find((one) => this.isSame(one, line)) : undefined;
    if (same === undefined) {
      if (line.status !== "contradiction") this.lines.set(text, [...known, line]);
      return false;
    }
    this.instead.set(line.id, same.id);
    if (!this.used.includes(same)) this.used.push(same);
    return true;
  }

  private isSame(one: Line, other: Line): boolean {
    if (one.kind !== other.kind || other.status === "contradiction" || one.from.length !== other.from.length)
      return false;
    return one.from.every((id, i) => this.root(id) === this.root(other.from[i] ?? ""));
  }

  private root(id: string): string {
    return this.instead.get(id) ?? id;
  }

  /** The lines that stand for some of this attempt, as a list of references: (1), (2) and (5) to (9). */
  references(): Sentence {
    const lines = [...this.used].sort((a, b) => a.number - b.number);
    const runs: Line[][] = [];
    for (const line of lines) {
      const last = runs[runs.length - 1];
      if (last?.at(-1)?.number === line.number - 1) last.push(line);
      else runs.push([line]);
    }
    const parts = runs.flatMap((run): Sentence[] => {
      const [first, ...others] = run.map((l): Run => ({ kind: "line", id: l.id }));
      const last = others[others.length - 1];
      if (first === undefined) return [];
      return last === undefined || others.length < 2 ? [first, ...others].map((r) => [r]) : [say`${first} to ${last}`];
    });
    return parts.flatMap((p, i) => say`${i === 0 ? "" : i === parts.length - 1 ? " and " : ", "}${p}`);
  }

  /** A paragraph with every reference to a line that gave way turned to the one that stands for it. */
  settled(p: Paragraph): Paragraph {
    const sentence = (list: Sentence): Sentence =>
      list.map((r) => (r.kind === "line" ? { ...r, id: this.root(r.id) } : r));
    const line = (l: Line): Line => ({
      ...l,
      from: l.from.map((id) => this.root(id)),
      reason: sentence(l.reason),
      smaller: l.smaller.map(line),
    });
    return { ...p, before: p.before.map(sentence), lines: p.lines.map(line), after: p.after.map(sentence) };
  }
}

/** Whether equations of two attempts speak of the same angles and axes. */
function isComparable(a: SetUpAttempt, b: SetUpAttempt): boolean {
  const angles = [...b.setUp.angles].every(([id, { radians }]) => a.setUp.angles.get(id)?.radians === radians);
  const axes = b.equations.axes.every((axis) => {
    const other = a.equations.axes.find((o) => o.body === axis.body);
    return (
      other !== undefined &&
      degreesOfTurned(other.x) === degreesOfTurned(axis.x) &&
      degreesOfTurned(other.y) === degreesOfTurned(axis.y)
    );
  });
  return angles && axes;
}
