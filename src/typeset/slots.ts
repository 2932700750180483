// Lines of maths with number slots: typeset once a form, and from then on only the slots' text changes.
import type { KatexOptions } from "katex";

/** What of KaTeX is needed: it comes by import at build, and by a late fetch in the browser. */
export interface MathPrinter {
  renderToString(tex: string, options: KatexOptions): string;
}

/** A form typeset, with a mark on each element that holds a slot. */
export interface TypesetForm {
  readonly markup: string;
}

const OPTIONS: KatexOptions = {
  throwOnError: true,
  strict: (code: string) => (code === "htmlExtension" ? "ignore" : "error"),
  // Only our own references may become attributes.
  trust: (context) =>
    context.command === "\\htmlData" && Object.keys(context.attributes).every((name) => name === "data-ref"),
  maxSize: 50,
};

const PLACED = /<(span|mn)((?:\s[^<>]*)?)>(9000\d{5})<\/\1>/g;
const FIRST = 900000000;

/** Typesets a form. Throws where the TeX is bad, or where a placeholder did not land alone in one element. */
export function typesetForm(form: string, display: boolean, printer: MathPrinter): TypesetForm {
  const html = printer
    .renderToString(form, { ...OPTIONS, displayMode: display })
    .replace(/<annotation[^>]*>.*?<\/annotation>/gs, "");
  const counts = new Map<string, number>();
  const markup = html.replace(PLACED, (_, tag: string, attributes: string, digits: string) => {
    const key = `${tag}${digits}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
    return `<${tag}${attributes} data-n="${Number(digits) - FIRST}">${digits}</${tag}>`;
  });
  const bare = markup.replace(/data-n="\d+">9000\d{5}</g, "");
  if (/9000\d{5}/.test(bare)) throw new Error(`a number slot stands beside another number in: ${form}`);
  for (const [key, count] of counts) {
    const digits = key.replace(/\D/g, "");
    if (counts.get(`span${digits}`) !== count || counts.get(`mn${digits}`) !== count)
      throw new Error(`a number slot is not alone in: ${form}`);
  }
  return { markup };
}

/** The markup with its slots filled in. */
export const filled = (form: TypesetForm, slots: readonly string[]): string =>
  form.markup.replace(
    /data-n="(\d+)">9000\d{5}</g,
    (_, index: string) => `data-n="${index}">${escapeText(slots[Number(index)] ?? "")}<`,
  );

/** Text for HTML. */
export const escapeText = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
