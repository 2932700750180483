// Whoever comes by a link to a problem came to read it: the form is folded away, and one press unfolds it.

/** Folds the form where the address holds a problem. */
export function foldSetUp(document: Document): void {
  const setUp = document.querySelector<HTMLDetailsElement>("details.setup");
  if (setUp === null) return;
  setUp.open = !document.documentElement.classList.contains("is-linked");
  setUp.classList.add("is-ready");
}

/** Unfolds the form, to show what is wrong with a problem. */
export function unfoldSetUp(document: Document): void {
  const setUp = document.querySelector<HTMLDetailsElement>("details.setup");
  if (setUp !== null) setUp.open = true;
}
