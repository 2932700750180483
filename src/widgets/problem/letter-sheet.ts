// A sheet of the page's own rules, written while it is open: which force has which colour depends on the problem.

let sheet: CSSStyleSheet | null = null;

/** Puts rules in place of those put before. */
export function useRules(document: Document, rules: string): void {
  if (sheet === null) {
    sheet = new CSSStyleSheet();
    document.adoptedStyleSheets.push(sheet);
  }
  sheet.replaceSync(rules);
}
