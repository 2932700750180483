// The frame that speeds up with all supports: the cabin of a lift, or the body of a cart on its wheels.
import { boxOf, type Box, type Point } from "../geometry.ts";
import { circlePath } from "../path-text.ts";
import { avoid, type Sketch } from "../sketch.ts";
import type { SystemScene } from "../system-scene.ts";
import { pointsOf, type Part, type SystemView } from "./view.ts";

const padding = { x: 20, top: 24, bottom: 20 };
const wheelRadius = 7;

/** Draws the outline of what carries all supports, where these speed up. */
export function drawFrame(sketch: Sketch, parts: readonly Part[], scene: SystemScene, view: SystemView): void {
  const { x, y } = scene.frame;
  if (x === 0 && y === 0) return;
  const inner = boxOf(parts.flatMap(pointsOf).map((place) => view.at(place)));
  const box: Box = {
    x: inner.x - padding.x,
    y: inner.y - padding.top,
    width: inner.width + 2 * padding.x,
    height: inner.height + padding.top + padding.bottom,
  };
  const corner = (right: number, down: number): Point => ({
    x: box.x + right * box.width,
    y: box.y + down * box.height,
  });
  const outline = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1), corner(0, 0)];
  sketch.lines("frame", outline, "cabin", avoid.outline);
  if (y === 0) {
    for (const [name, share] of [
      ["left", 0.22],
      ["right", 0.78],
    ] as const) {
      const centre = { x: corner(share, 1).x, y: corner(share, 1).y + wheelRadius };
      sketch.path(`frame-wheel-${name}`, circlePath(centre, wheelRadius), "wheel");
      sketch.block({ x: centre.x - wheelRadius, y: centre.y - wheelRadius, width: 14, height: 14 });
    }
  } else {
    const middle = corner(0.5, 0);
    sketch.lines("frame-cable", [{ x: middle.x, y: 0 }, middle], "cable", avoid.outline);
  }
}
