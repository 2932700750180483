// The pictures, as plain data, and what dragging in them means. No drawing, no page.
export { angleChain } from "./angle-chain.ts";
export { components } from "./components.ts";
export { angleRef, givenDegrees, pulls, type Pull } from "./direction.ts";
export { dragRange, loadDirections, loadPlace, ropeDirection, settle } from "./drag.ts";
export type { View } from "./fit-view.ts";
export { forceDiagram } from "./force-diagram.ts";
export { crosses, overlap, stickOut, type Box, type Point } from "./geometry.ts";
export { chainParameter, hangingCurve } from "./hanging-curve.ts";
export {
  boxesOf,
  type BoxKind,
  type Handle,
  type NamedBox,
  type Picture,
  type PlacedLabel,
  type Shape,
} from "./picture.ts";
export { forcePolygon, polygonSides, type PolygonSide } from "./polygon.ts";
export { hasTriangle, rightTriangle } from "./right-triangle.ts";
export type { Attempt, DiagramScene, QuantityLabel, ScenePoint, SceneRope, Sign } from "./scene.ts";
export { situation } from "./situation.ts";
export { drawnEnds, situationView, slackCurve, viewWithEnds } from "./situation-view.ts";
export { forceDiagramToScale } from "./to-scale.ts";
export {
  beginDrag,
  changeOf,
  moveDrag,
  sameTurns,
  shows,
  viewDuring,
  type SituationChange,
  type SituationDrag,
  type Turn,
} from "./situation-drag.ts";
export { sceneOf, tensionLabel } from "./scene-of.ts";
export { letter, symbol, words, type Run } from "./label.ts";
export { bodyForceDiagram } from "./system/body-forces.ts";
export { bodyPolygon, bodySides } from "./system/body-polygon.ts";
export { systemSituation } from "./system/situation.ts";
export type {
  ForceAngle,
  SystemBody,
  SystemForce,
  SystemPull,
  SystemPush,
  SystemRope,
  SystemScene,
  SystemSurface,
} from "./system-scene.ts";
export { assumedSceneOf, systemSceneOf } from "./system-scene-of.ts";
export {
  placedSituation,
  type DrawnBody,
  type DrawnPulley,
  type DrawnStrand,
  type DrawnSurface,
  type Placed,
} from "./system/placed.ts";
