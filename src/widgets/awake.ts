// What a page needs once a reader touches it: the solver and all that speaks its language. Fetched then, not before.
export { sceneOf } from "../diagram/scene-of.ts";
export { takeText, turnsOf } from "../lesson/edits.ts";
export { keepAddress } from "../lesson/address.svelte.ts";
export { sceneFor } from "../lesson/scenes.ts";
export { controlValues } from "../lesson/control-values.ts";
export { outcomeText } from "../lesson/outcome.ts";
export { decodeState } from "../../shared/link/index.ts";
