/**
 * The settings at which every picture is looked at, and every picture of a setting.
 */
import {
  angleChain,
  components,
  forceDiagram,
  forceDiagramToScale,
  forcePolygon,
  rightTriangle,
  situation,
  type DiagramScene,
  type Picture,
} from "../../src/diagram/index.ts";
import type { Setting } from "./two-ropes.ts";

const steep = [5, 12, 20, 33, 40, 45, 58, 65, 76, 85];
const all = [...steep, 90];
const low = [-30, -20, -5, 0];

const pairs = (ones: readonly number[], others: readonly number[]): [number, number][] =>
  ones.flatMap((one) => others.map((other): [number, number] => [one, other]));

const opposite = pairs(all, all).map(([a, b]): [number, number] => [180 - a, b]);
const crossed = pairs(steep, steep).map(([a, b]): [number, number] => [a, 180 - b]);
const bothRight = pairs(steep, steep);
const bothLeft = pairs(steep, steep).map(([a, b]): [number, number] => [180 - a, 180 - b]);
const falling = [
  ...pairs(all, low).map(([a, b]): [number, number] => [180 - a, b]),
  ...pairs(low, all).map(([a, b]): [number, number] => [180 - a, b]),
  ...pairs(low, low).map(([a, b]): [number, number] => [180 - a, b]),
];
const some = opposite.filter((_, index) => index % 7 === 0).concat(bothRight.filter((_, index) => index % 11 === 0));
const tenths: [number, number][] = [
  [115.3, 40.7],
  [95.4, 84.9],
  [174.6, 5.2],
  [90.1, 90.2],
];

/** Every setting. */
export const settings: readonly Setting[] = [
  ...[...opposite, ...crossed, ...bothRight, ...bothLeft, ...falling, ...tenths].map((ropes): Setting => ({ ropes })),
  ...some.flatMap((ropes): Setting[] => [
    { ropes, ax: 12 },
    { ropes, ax: -3 },
    { ropes, ay: 3 },
    { ropes, ax: 2, ay: -4 },
    { ropes, ay: -9.8 },
    { ropes, ax: 3, ay: -9.8 },
    { ropes, ay: -15 },
    { ropes, ax: 0.01, ay: 0.01 },
    { ropes, mass: 1e9 },
    { ropes, mass: 2.5e-7, name: "bell", byWeight: true },
    { ropes, g: 0 },
    { ropes, g: 0, ax: 4, ay: 2 },
    { ropes, mass: 1e6, ax: 12, ay: 3, name: "shop sign" },
  ]),
];

/** All pictures of a scene, each with a name of its own. */
export function picturesOf(scene: DiagramScene): [name: string, picture: Picture][] {
  const triangles = scene.ropes.flatMap(({ id }): [string, Picture][] => [
    [`triangle of ${id}, given`, rightTriangle(scene, id, "assumed")],
    [`triangle of ${id}, found`, rightTriangle(scene, id)],
  ]);
  return [
    ["situation", situation(scene)],
    ["force diagram, given", forceDiagram(scene, "assumed")],
    ["force diagram, found", forceDiagram(scene)],
    ["components, given", components(scene, "assumed")],
    ["components, found", components(scene)],
    ["chain of angles", angleChain(scene)],
    ["force diagram to scale", forceDiagramToScale(scene)],
    ["polygon", forcePolygon(scene)],
    ...triangles,
  ];
}
