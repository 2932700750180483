// Text for reading aloud that still waits is written before the page is printed or copied from.
import { restQueue } from "../page-writing.ts";

/** Writes waiting text before print and copy. */
export function flushBeforeUse(window: Window): void {
  window.addEventListener("beforeprint", () => restQueue.flush());
  window.document.addEventListener("copy", () => restQueue.flush());
}
