// The pictures as components. Their look is in pictures.css, which the layout of the pages imports once.
export { default as AngleChain } from "./AngleChain.svelte";
export { default as BodyForces } from "./BodyForces.svelte";
export { default as BodyPolygon } from "./BodyPolygon.svelte";
export { default as Components } from "./Components.svelte";
export { default as ForceDiagram } from "./ForceDiagram.svelte";
export { default as ForcePolygon } from "./ForcePolygon.svelte";
export { default as RightTriangle } from "./RightTriangle.svelte";
export { default as Situation } from "./Situation.svelte";
export { default as SystemSituation } from "./SystemSituation.svelte";
