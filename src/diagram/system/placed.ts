// Where everything of a situation is drawn, for whoever has to know: tests, and handles that are laid over the picture.
import type { Point } from "../geometry.ts";
import type { SystemScene } from "../system-scene.ts";
import { layoutsOf } from "./layout.ts";
import { arranged, cornersOf, viewOf } from "./view.ts";

/** A body's outline in the picture. */
export interface DrawnBody {
  readonly id: string;
  readonly kind: string;
  readonly corners: readonly Point[];
}

/** A straight stretch of rope in the picture, and the pulls of its rope that it stands for. */
export interface DrawnStrand {
  readonly key: string;
  readonly rope: string;
  readonly pulls: readonly number[];
  readonly degrees: number;
  readonly start: Point;
  readonly end: Point;
  /** The bodies and fixed pulleys that it leads to. */
  readonly joins: readonly [string, string];
}

/** A fixed pulley in the picture. */
export interface DrawnPulley {
  readonly key: string;
  readonly axle: Point;
  readonly radius: number;
}

/** A surface in the picture: its two ends and the surfaces of the scene that lie on it. */
export interface DrawnSurface {
  readonly surfaces: readonly string[];
  readonly start: Point;
  readonly end: Point;
}

/** The places of a situation in its picture. */
export interface Placed {
  readonly width: number;
  readonly height: number;
  readonly bodies: readonly DrawnBody[];
  readonly strands: readonly DrawnStrand[];
  readonly pulleys: readonly DrawnPulley[];
  readonly surfaces: readonly DrawnSurface[];
  /** How many overlaps of the layout could not be helped. */
  readonly overlaps: number;
  /** Whether all is drawn as it is given. */
  readonly faithful: boolean;
}

/** Where everything of a scene is drawn. */
export function placedSituation(scene: SystemScene): Placed {
  const parts = arranged(layoutsOf(scene));
  const view = viewOf(parts, scene.frame);
  const layouts = parts.map(({ layout }) => layout);
  return {
    width: view.width,
    height: view.height,
    bodies: layouts.flatMap(({ bodies }) =>
      bodies.map((body) => ({
        id: body.id,
        kind: body.shape.kind,
        corners: cornersOf(body).map((corner) => view.at(corner)),
      })),
    ),
    strands: layouts.flatMap(({ strands }) =>
      strands.map(({ key, rope, pulls, degrees, start, end, from, to }) => ({
        key,
        rope,
        pulls,
        degrees,
        start: view.at(start),
        end: view.at(end),
        joins: [from.at, to.at] as const,
      })),
    ),
    pulleys: layouts.flatMap(({ fixed }) =>
      fixed.map(({ key, axle, radius }) => ({ key, axle: view.at(axle), radius: radius * view.scale })),
    ),
    surfaces: parts.flatMap(({ faces }) =>
      faces.map(({ ground, start, end }) => ({
        surfaces: ground.surfaces.map(({ id }) => id),
        start: view.at(start),
        end: view.at(end),
      })),
    ),
    overlaps: layouts.reduce((sum, { overlaps }) => sum + overlaps, 0),
    faithful: layouts.every(({ faithful }) => faithful),
  };
}
