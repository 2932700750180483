// Fetches the maths printer at leisure, once the reader has touched a control: then it is there when a form first changes.
import { fetchKatex } from "../typeset/late-katex.ts";

let asked = false;

/** Asks for the printer when the browser is idle; only the first call does anything. */
export function fetchSoon(): void {
  if (asked) return;
  asked = true;
  const fetch = (): void => {
    void fetchKatex();
  };
  if ("requestIdleCallback" in window) window.requestIdleCallback(fetch);
  else setTimeout(fetch, 1);
}
