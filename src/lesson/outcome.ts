// The outcome of a derivation as plain text, for the line that is said after a change.
import { plainSentence } from "../../solver/index.ts";
import type { Derivation } from "../../solver/index.ts";

/** What the present values come to. */
export const outcomeText = (derivation: Derivation): string => plainSentence(derivation.outcome, () => undefined);
