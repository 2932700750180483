// The state of the page on which anybody sets up a problem. The document's text is what there is; the form is a view of it.
import { SvelteMap } from "svelte/reactivity";
import type { DocumentSettings, DocumentState } from "../../shared/link/document-link.ts";
import type { LinkFault } from "../../shared/link/index.ts";
import type { Fault, Problem } from "../../shared/problem/index.ts";
import type { Derivation } from "../../solver/index.ts";
import type { Reveal } from "../lesson/reveal.ts";
import { fetchOnce } from "../typeset/fetch-once.ts";
import { readObject, writeDocument } from "./document-text.ts";
import { listAt } from "./json.ts";
import type { JsonObject } from "./json.ts";
import type { ProblemPicture } from "./picture-of.ts";

/** The module that the page fetches late. */
export type Works = typeof import("./works.ts");
/** What can be undone. */
export interface Step {
  readonly text: string;
  readonly settings: DocumentSettings;
}

const LONGEST_HISTORY = 200;
const fetchWorks = fetchOnce<Works>(() => import("./works.ts"));

/** One page, asleep until it is touched or its address holds something. */
export class ProblemPage {
  readonly start: Step;
  text: string = $state.raw("");
  settings: DocumentSettings;
  /** What the form shows: the last text that held an object. */
  document: JsonObject = $state.raw({});
  /** Whether the text holds an object at all, so that form and text say the same. */
  isReadable: boolean = $state(true);
  faults: readonly Fault[] = $state.raw([]);
  /** Entries of the form that are no numbers, by field, with what is wrong: they are in no document. */
  readonly entries = new SvelteMap<string, string>();
  linkFaults: readonly LinkFault[] = $state.raw([]);
  works: Works | null = $state.raw(null);
  /** The last derivation there was; null while asleep. */
  derivation: Derivation | null = $state.raw(null);
  /** The message of the solver where it failed at a problem without faults. */
  broken: string | null = $state(null);
  touched: boolean = $state(false);
  upTo: string | null = $state(null);
  /** What an action of the reader did, to be announced. */
  said: string = $state("");
  /** Whether nothing is set up yet, and nothing else is wrong. */
  isEmpty: boolean = $derived.by(
    () =>
      this.isReadable &&
      listAt(this.document, "bodies").length === 0 &&
      this.faults.every((fault) => fault.path === "/bodies"),
  );
  /** Whether the derivation is that of the text. */
  isCurrent: boolean = $derived.by(() => this.faults.length === 0 && this.broken === null);
  /** The scene of its pictures; null while asleep, and where it could not be made. */
  picture: ProblemPicture | null = $state.raw(null);
  isUndrawn: boolean = $derived.by(() => this.works !== null && this.picture === null);
  reveal: Reveal | null = $derived.by(() =>
    this.works === null || this.derivation === null
      ? null
      : this.works.revealUpTo(this.derivation, this.derivation, this.upTo),
  );
  /** The address's query for the last text without faults; null where that is too long for an address. */
  query: string | null = $derived.by(() =>
    this.works === null
      ? ""
      : this.works.encodeDocumentState(this.stateOf(this.good, this.upTo), this.stateOf(this.start, null)),
  );
  canUndo: boolean = $derived.by(() => this.position > 0);
  canRedo: boolean = $derived.by(() => this.position < this.steps.length - 1);
  /** The last text without faults, with the present settings. */
  private goodText: string = $state.raw("");
  private good: Step = $derived.by(() => ({ text: this.goodText, settings: this.settings }));
  private problem: Problem | null = null;
  private builtOnce: Derivation | null = null;
  private steps: readonly Step[] = $state.raw([]);
  private position: number = $state(0);

  /** Begun with the text of the page's own example, without faults. */
  constructor(start: Step) {
    this.start = start;
    this.settings = $state.raw(start.settings);
    this.goodText = start.text;
    this.steps = [start];
    this.take(start.text);
  }

  /** The start's derivation, as the build wrote it. Throws while asleep. */
  get built(): Derivation {
    if (this.builtOnce === null) throw new Error("a page that is asleep has no derivation");
    return this.builtOnce;
  }

  /** Fetches what is needed; each further call gives the same. */
  async wake(): Promise<Works> {
    const works = await fetchWorks();
    if (this.works === null) {
      const reading = works.readProblem(this.start.text);
      if (!reading.ok) throw new Error("the page's own example has faults");
      this.problem = reading.problem;
      this.builtOnce = works.derivationWith(reading.problem, this.start.settings);
      this.derivation = this.builtOnce;
      this.picture = works.pictureOf(this.builtOnce);
      this.works = works;
      if (this.touched) this.check();
    }
    return works;
  }

  /** Shows what the query of an address asks for. */
  async open(query: string): Promise<void> {
    const works = await this.wake();
    if (this.touched) return;
    const { state, faults } = works.decodeDocumentState(query, this.stateOf(this.start, null));
    this.linkFaults = faults;
    this.settings = state.settings;
    this.upTo = state.upTo;
    const isStart =
      works.encodeDocumentState(
        { ...state, settings: this.start.settings, upTo: null },
        this.stateOf(this.start, null),
      ) === "";
    this.take(isStart ? this.start.text : writeDocument(state.document as JsonObject));
    this.steps = [{ text: this.text, settings: this.settings }];
    this.check();
  }

  /** Shows a stored query; it can be undone. */
  async restore(query: string): Promise<void> {
    const works = await this.wake();
    const { state } = works.decodeDocumentState(query, this.stateOf(this.start, null));
    this.settings = state.settings;
    this.write(writeDocument(state.document as JsonObject));
    this.keep();
  }

  /** An edit by the form: the text is written anew. */
  edit(change: (document: JsonObject) => JsonObject): void {
    const document = change(this.document);
    if (document === this.document) return;
    this.write(writeDocument(document));
  }

  /** Another text, typed, pasted, dropped or chosen. */
  write(text: string): void {
    this.touched = true;
    this.said = "";
    this.take(text);
    void this.wake().then(() => this.check());
  }

  /** Other settings. */
  set(settings: Partial<DocumentSettings>): void {
    this.touched = true;
    this.settings = { ...this.settings, ...settings };
    void this.wake().then(() => this.check());
  }

  /** Shows the lines up to one, or all. */
  showUpTo(line: string | null): void {
    this.touched = true;
    this.upTo = line;
    void this.wake();
  }

  /** Ends a change: from here it can be undone, unless it ended where it began. */
  keep(): void {
    const now: Step = { text: this.text, settings: this.settings };
    const before = this.steps[this.position];
    if (before?.text === now.text && before.settings === now.settings) return;
    this.steps = [...this.steps.slice(0, this.position + 1).slice(-LONGEST_HISTORY), now];
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

  private moveTo(position: number): void {
    const step = this.steps[position];
    if (step === undefined) return;
    this.position = position;
    this.settings = step.settings;
    this.entries.clear();
    this.write(step.text);
  }

  private take(text: string): void {
    this.text = text;
    const document = readObject(text);
    this.isReadable = document !== null;
    if (document !== null) this.document = document;
  }

  /** Reads the text and derives what it holds; where it has faults, or the solver fails, the last derivation stays. */
  private check(): void {
    const { works } = this;
    if (works === null) return;
    const reading = works.readProblem(this.text);
    this.faults = reading.ok ? [] : reading.faults;
    if (reading.ok) {
      this.problem = reading.problem;
      this.goodText = this.text;
    }
    if (this.problem === null) return;
    // The reader keeps the page; a defect is reported where defects of pages are.
    try {
      this.derivation = works.derivationWith(this.problem, this.settings);
      this.broken = null;
    } catch (error) {
      this.broken = error instanceof Error ? error.message : String(error);
      reportError(error);
      return;
    }
    try {
      this.picture = works.pictureOf(this.derivation);
    } catch (error) {
      this.picture = null;
      reportError(error);
    }
  }

  private stateOf({ text, settings }: Step, upTo: string | null): DocumentState {
    return { document: readObject(text) ?? {}, settings, upTo };
  }
}
