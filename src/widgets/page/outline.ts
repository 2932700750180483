// The outline: entries open in place. Without a script they are all open; on paper too.

const parts = (document: Document): HTMLDetailsElement[] => [
  ...document.querySelectorAll<HTMLDetailsElement>("details.part"),
];

/** Closes the entries, opens the one an address points at, and lets the buttons open and close all. */
export function startOutline(document: Document): void {
  const isClassLink = document.documentElement.classList.contains("is-class-link");
  for (const part of parts(document)) {
    part.open = isClassLink;
    part.classList.add("is-ready");
  }
  openTarget(document);
  window.addEventListener("hashchange", () => openTarget(document));
  document.querySelector("[data-open-all]")?.addEventListener("click", () => setAll(document, true));
  document.querySelector("[data-close-all]")?.addEventListener("click", () => setAll(document, false));
  openOnPaper(document);
}

function setAll(document: Document, open: boolean): void {
  for (const part of parts(document)) part.open = open;
}

/** The id an address points at; as it stands where it is no proper escape. */
function targetId(): string {
  const text = window.location.hash.slice(1);
  try {
    return decodeURIComponent(text);
  } catch (error) {
    if (!(error instanceof URIError)) throw error;
    return text;
  }
}

/** Waits for a line that is only there at the address's own numbers. */
let waiting: MutationObserver | null = null;

function stopWaiting(): void {
  waiting?.disconnect();
  waiting = null;
}

/** Opens whatever holds the address's target and brings it into view, at once or as soon as it is there. */
function openTarget(document: Document): void {
  stopWaiting();
  const id = targetId();
  if (id === "" || showTarget(document, id)) return;
  waiting = new MutationObserver(() => {
    if (showTarget(document, id)) stopWaiting();
  });
  waiting.observe(document.body, { childList: true, subtree: true });
  // Once the reader does something the page must not jump any more.
  for (const touch of ["pointerdown", "keydown"]) window.addEventListener(touch, stopWaiting, { once: true });
}

function showTarget(document: Document, id: string): boolean {
  const target = document.getElementById(id);
  if (target === null) return false;
  for (let at: Element | null = target; at !== null; at = at.parentElement)
    if (at instanceof HTMLDetailsElement) at.open = true;
  target.scrollIntoView({ block: "center" });
  document.querySelector(".is-target")?.classList.remove("is-target");
  target.classList.add("is-target");
  return true;
}

/** Prints everything, then leaves the entries as they were. */
function openOnPaper(document: Document): void {
  let closed: HTMLDetailsElement[] = [];
  window.addEventListener("beforeprint", () => {
    closed = [...document.querySelectorAll("details")].filter((d) => !d.open && !d.classList.contains("more"));
    for (const d of closed) d.open = true;
  });
  window.addEventListener("afterprint", () => {
    for (const d of closed) d.open = false;
  });
}
