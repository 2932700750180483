// Elements of the page: made from markup, found where the build put them, and put in order.

/** The one element in a piece of markup. */
export function fromMarkup(markup: string): HTMLElement {
  const template = document.createElement("template");
  template.innerHTML = markup;
  return elementAt([...template.content.children], 0);
}

/** An element of a list. Throws where the page is not as it was built. */
export function elementAt(elements: readonly Element[], index: number): HTMLElement {
  const found = elements[index];
  if (found instanceof HTMLElement) return found;
  throw new Error("the page does not hold the paragraphs it was built with");
}

/** The child that fits a simple selector. Throws where the page is not as it was built. */
export function childOf(element: Element, selector: string): HTMLElement {
  const found = element.querySelector<HTMLElement>(`:scope > ${selector}`);
  if (found === null) throw new Error(`the page does not hold ${selector} where it was built`);
  return found;
}

/** Puts elements into a container in order, moving only those out of place; other children stay before them. */
export function placeInOrder(container: Element, elements: readonly HTMLElement[]): void {
  let before: ChildNode | null = null;
  for (let i = elements.length - 1; i >= 0; i--) {
    const element = elements[i];
    if (element === undefined) continue;
    if (element.parentNode !== container || element.nextSibling !== before) container.insertBefore(element, before);
    before = element;
  }
}
