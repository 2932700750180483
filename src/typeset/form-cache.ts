// Forms already typeset, kept for as long as the page lives; the printer may come late.
import { typesetForm } from "./slots.ts";
import type { MathPrinter, TypesetForm } from "./slots.ts";

/** Typesets forms, each once. `null` stands for "not yet": the printer has not been fetched. */
export class FormCache {
  private printer: MathPrinter | null;
  private readonly forms = new Map<string, TypesetForm>();

  /** With a printer at build; without one in the browser until it is needed. */
  constructor(printer: MathPrinter | null) {
    this.printer = printer;
  }

  /** Whether new forms can be typeset at once. */
  get isReady(): boolean {
    return this.printer !== null;
  }

  /** Takes the printer when it has come. */
  use(printer: MathPrinter): void {
    this.printer = printer;
  }

  /** The form typeset, or null if that has to wait. */
  get(form: string, display: boolean): TypesetForm | null {
    const key = display ? `D${form}` : form;
    const known = this.forms.get(key);
    if (known !== undefined) return known;
    if (this.printer === null) return null;
    const made = typesetForm(form, display, this.printer);
    this.forms.set(key, made);
    return made;
  }
}
