// The outcome in one sentence, for whoever has just changed a number.
import { symbol } from "../../algebra/expr.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";

/** What the problem comes to at its present values. */
export function outcomeOf(s: Speech): Sentence {
  const { result, world } = s;
  const pull = (id: string): Sentence => say`${s.rope(id)} pulls with ${s.number(symbol(id), "N", id)}`;
  if (result.kind === "taut") return capital(say`${listed(world.ropes.map((r) => pull(r.id)))}.`);
  if (result.kind === "slack") {
    const loose = world.ropes.filter((r) => result.slack.includes(r.id));
    const kept = world.ropes.filter((r) => !result.slack.includes(r.id));
    if (kept.length === 0)
      return world.ropes.length === 1 ? say`The rope carries nothing.` : say`Both ropes carry nothing.`;
    return capital(say`${listed(loose.map((r) => s.rope(r.id)))} is slack; ${listed(kept.map((r) => pull(r.id)))}.`);
  }
  if (result.kind === "under-determined") return say`The pulls are not determined one by one.`;
  return say`Not possible: ${result.impossible === "outrun" ? say`the ropes cannot pull the ${s.body} down` : result.impossible === "off-line" ? say`nothing pulls the way that is needed` : say`a rope would have to push`}.`;
}

function capital(sentence: Sentence): Sentence {
  const [first, ...rest] = sentence;
  return first?.kind === "text"
    ? [{ kind: "text", text: first.text.charAt(0).toUpperCase() + first.text.slice(1) }, ...rest]
    : sentence;
}
