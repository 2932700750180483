// Collects the lines of one attempt: gives each its attempt-wide id and the status its attempt has.
import type { Expr } from "../algebra/expr.ts";
import type { Passage, PassageData, Reason, Relation, Status, Step, StepKind } from "./types.ts";

/** What a move says about the line it makes; the writer fills in the rest. */
export interface Draft {
  readonly id: string;
  readonly sides: readonly Expr[];
  readonly reason: Reason;
  readonly from?: readonly string[];
  readonly kind?: StepKind;
  readonly relation?: Relation;
  readonly status?: Status;
  readonly angles?: "degrees" | "letters";
  readonly smaller?: readonly Draft[];
}

/** Collects passages and lines of one attempt. */
export class Writer {
  readonly attempt: string;
  readonly passages: Passage[] = [];
  private readonly prefix: string;
  private readonly holds: Status;
  private steps: Step[] = [];

  /** `prefix` keeps line ids of a second attempt apart ("" for the first); `failed` makes ordinary lines trial lines. */
  constructor(attempt: string, prefix: string, failed: boolean) {
    this.attempt = attempt;
    this.prefix = prefix;
    this.holds = failed ? "trial" : "solution";
  }

  /** Whether this attempt ends in a contradiction. */
  get failed(): boolean {
    return this.holds === "trial";
  }

  /** The attempt-wide id of a line. */
  idOf(id: string): string {
    return this.prefix + id;
  }

  /** Adds a line to the passage being written and gives its id back. */
  line(draft: Draft): string {
    const step = this.finish(draft);
    this.steps.push(step);
    return step.id;
  }

  /** Whether the line just written is this one. */
  isLast(id: string): boolean {
    const last = this.steps.at(-1) ?? this.passages.findLast((p) => p.steps.length > 0)?.steps.at(-1);
    return last?.id === id;
  }

  /** Ends the passage being written. */
  passage(id: string, data: PassageData): void {
    this.passages.push({ id: this.prefix + id, attempt: this.attempt, data, steps: this.steps });
    this.steps = [];
  }

  /** Ends the passage being written, if it has a line. */
  passageIfAny(id: string, data: PassageData): void {
    if (this.steps.length > 0) this.passage(id, data);
  }

  private finish(draft: Draft): Step {
    const kind = draft.kind ?? "algebra";
    const step: Step = {
      id: this.prefix + draft.id,
      relation: draft.relation ?? "=",
      sides: draft.sides,
      kind,
      status: draft.status ?? this.holds,
      from: draft.from ?? [],
      reason: draft.reason,
      angles: draft.angles ?? "degrees",
    };
    return draft.smaller === undefined || draft.smaller.length === 0
      ? step
      : { ...step, smaller: draft.smaller.map((d) => this.finish(d)) };
  }
}
