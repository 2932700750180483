// The page's state, one in a browser, and what wakes it.
import { ProblemPage } from "./problem-page.svelte.ts";
import type { Step } from "./problem-page.svelte.ts";

const TOUCHES = ["pointerdown", "keydown", "focusin", "touchstart", "dragenter"] as const;
let page: ProblemPage | null = null;

/** The state of the page. On the server it is made anew each time and never kept. */
export function problemPage(start: Step): ProblemPage {
  if (typeof window === "undefined") return new ProblemPage(start);
  if (page !== null) return page;
  const made = new ProblemPage(start);
  page = made;
  if (window.location.search !== "") void made.open(window.location.search);
  else
    for (const touch of TOUCHES)
      window.addEventListener(touch, () => void made.wake(), { once: true, passive: true, capture: true });
  return made;
}
