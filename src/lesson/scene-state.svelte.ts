// The state of one derivation shown on a page: its problem, its settings, what was done and undone. One object a scene, never one a page.
import { decodeState, encodeState } from "../../shared/link/index.ts";
import type { LinkFault, PageState } from "../../shared/link/index.ts";
import { changeProblem, problemFromDocument } from "../../shared/problem/index.ts";
import type { Fault, ProblemChange, ProblemDocument } from "../../shared/problem/index.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import type { Derivation } from "../../solver/index.ts";
import { revealUpTo } from "./reveal.ts";
import type { Reveal } from "./reveal.ts";

const LONGEST_HISTORY = 200;

/** The start of a lesson's page. */
export function startOf(document: ProblemDocument): PageState {
  return { problem: problemFromDocument(document), settings: { figures: 3, firstAxis: "vertical" }, upTo: null };
}

/** The derivation of a page's state. */
export const derivationOf = (page: PageState): Derivation =>
  derive(page.problem, { ...defaultSettings, ...page.settings });

/** One scene: what is shown, and how it got there. */
export class Scene {
  readonly id: string;
  readonly start: PageState;
  /** What the build wrote: the start's derivation. */
  readonly built: Derivation;
  page: PageState;
  faults: readonly LinkFault[] = $state.raw([]);
  /** Whether anything was changed on this page since it was opened. */
  touched: boolean = $state(false);
  derivation: Derivation = $derived.by(() => (this.page === this.start ? this.built : derivationOf(this.page)));
  /** The lines there are, for choosing where a link stops. */
  lines: readonly { readonly id: string; readonly number: number }[] = $derived.by(() =>
    this.derivation.paragraphs.flatMap((p) => p.lines.map(({ id, number }) => ({ id, number }))),
  );
  reveal: Reveal | null = $derived.by(() => revealUpTo(this.derivation, this.built, this.page.upTo));
  canUndo: boolean = $derived.by(() => this.position > 0);
  canRedo: boolean = $derived.by(() => this.position < this.steps.length - 1);
  private steps: readonly PageState[] = $state.raw([]);
  private position: number = $state(0);
  private waiting: PageState | null = null;

  /** Made from the start of a lesson and, in a browser, from the query of its address. */
  constructor(id: string, document: ProblemDocument, query: string) {
    this.id = id;
    this.start = startOf(document);
    this.built = derivationOf(this.start);
    const decoded = query === "" ? { state: this.start, faults: [] } : decodeState(query, this.start);
    this.page = $state.raw(decoded.state);
    this.faults = decoded.faults;
    this.steps = [decoded.state];
  }

  /** The address's query for what is shown. */
  get query(): string {
    return encodeState(this.page, this.start);
  }

  /** Makes edits of the problem, shown in the next frame. Gives the faults if a value is refused; nothing changes then. */
  edit(changes: readonly ProblemChange[]): readonly Fault[] {
    let { problem } = this.latest;
    for (const change of changes) {
      const changed = changeProblem(problem, change);
      if (!changed.ok) return changed.faults;
      problem = changed.problem;
    }
    this.showSoon({ ...this.latest, problem });
    return [];
  }

  /** Changes a setting. */
  set(settings: Partial<PageState["settings"]>): void {
    this.showSoon({ ...this.latest, settings: { ...this.latest.settings, ...settings } });
  }

  /** Shows the lines up to one, or all. */
  showUpTo(line: string | null): void {
    this.showSoon({ ...this.latest, upTo: line });
    this.keep();
  }

  /** Shows a whole state, such as a stored one. */
  show(page: PageState): void {
    this.showSoon(page);
    this.keep();
  }

  /** Ends a change: from here it can be undone, unless it ended where it began. */
  keep(): void {
    this.showNow();
    const before = this.steps[this.position];
    if (before === undefined || encodeState(this.page, before) === "") return;
    const past = this.steps.slice(0, this.position + 1).slice(-LONGEST_HISTORY);
    this.steps = [...past, this.page];
    this.position = this.steps.length - 1;
  }

  /** Takes back a change. */
  undo(): void {
    this.moveTo(this.position - 1);
  }

  /** Makes a change again that was taken back. */
  redo(): void {
    this.moveTo(this.position + 1);
  }

  /** Back to the lesson's start; it can be undone. */
  reset(): void {
    this.show(this.start);
  }

  /** What is shown, or will be in the next frame. */
  private get latest(): PageState {
    return this.waiting ?? this.page;
  }

  private moveTo(position: number): void {
    const page = this.steps[position];
    if (page === undefined) return;
    this.waiting = null;
    this.position = position;
    this.page = page;
    this.touched = true;
  }

  /** One update an animation frame, however many events come. */
  private showSoon(page: PageState): void {
    const isFirst = this.waiting === null;
    this.waiting = page;
    if (isFirst) requestAnimationFrame(() => this.showNow());
  }

  private showNow(): void {
    if (this.waiting === null) return;
    this.page = this.waiting;
    this.waiting = null;
    this.touched = true;
  }
}
