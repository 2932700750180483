// Pointing at a thing anywhere lights it everywhere: a term in a line, its arrow, its angle. And a line lights the lines it came from.

/** Follows pointer and focus over the whole page. */
export function startPointing(document: Document): void {
  let lit: Element[] = [];
  const clear = (): void => {
    for (const e of lit) e.classList.remove("lit", "is-source");
    lit = [];
  };
  const light = (target: EventTarget | null): void => {
    clear();
    if (!(target instanceof Element)) return;
    const refs = target.closest("[data-ref]")?.getAttribute("data-ref")?.split(" ") ?? [];
    for (const ref of refs)
      for (const e of document.querySelectorAll(`[data-ref~="${CSS.escape(ref)}"]`)) mark(e, "lit");
    const from = target.closest<HTMLElement>(".line")?.dataset.from?.split(" ") ?? [];
    for (const id of from) {
      const source = id === "" ? null : document.getElementById(id);
      if (source !== null) mark(source, "is-source");
    }
    const to = target.closest<HTMLElement>("[data-line]")?.dataset.line;
    const line = to === undefined ? null : document.getElementById(to);
    if (line !== null) mark(line, "is-source");
  };
  function mark(e: Element, name: string): void {
    e.classList.add(name);
    lit.push(e);
  }
  document.addEventListener("pointerover", (event) => {
    // While a handle is held the numbers change at every move; lighting waits.
    if (event.buttons === 0) light(event.target);
  });
  document.addEventListener("focusin", (event) => light(event.target));
  document.addEventListener("focusout", clear);
}
