// What is said of a passage about a set-up.
import type { Passage, SetUpPassageData } from "../../../4-steps/types.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { SpokenPassage } from "../passage.ts";

type Of<K extends SetUpPassageData["kind"]> = Extract<SetUpPassageData, { kind: K }>;

/** Speaks of one kind of passage. */
export type SetUpSpeaker<K extends SetUpPassageData["kind"]> = (
  data: Of<K>,
  passage: Passage,
  s: SetUpSpeech,
) => SpokenPassage;
