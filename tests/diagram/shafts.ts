/**
 * Finds labels that lie on a line that stands for a force or a rope. Not always avoidable, so it is counted.
 */
import { crosses, type Picture } from "../../src/diagram/index.ts";

const lineLook = /^(?:shaft|tail|leg|rail|rope(?! ?-?outline))/;

/** The keys of the labels whose letters a shaft, a leg or a rope goes through. */
export function labelsOnShafts(picture: Picture): string[] {
  const pieces = picture.shapes
    // An arc, such as a rope on the rim of a wheel, has no straight way between its ends.
    .filter((shape) => lineLook.test(shape.look) && !shape.d.includes("A"))
    .flatMap((shape) => {
      const points = Array.from(shape.d.matchAll(/(-?[\d.]+),(-?[\d.]+)/g), ([, x, y]) => ({
        x: Number(x),
        y: Number(y),
      }));
      return points.slice(1).map((b, index) => ({ a: points[index] ?? b, b }));
    });
  return picture.labels
    .filter(({ box }) => {
      // The letters' own part of the line's height.
      const inner = { x: box.x + 1, y: box.y + 3, width: box.width - 2, height: box.height - 6 };
      return pieces.some(({ a, b }) => crosses(inner, a.x, a.y, b.x, b.y));
    })
    .map((label) => label.key);
}
