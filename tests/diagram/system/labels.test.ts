import { describe, expect, it } from "vitest";
import { boxesOf, placedSituation } from "../../../src/diagram/index.ts";
import { collisions } from "../collisions.ts";
import { labelsOnShafts } from "../shafts.ts";
import { depthOf } from "./measure.ts";
import { everyPicture as draw } from "./pictures.ts";

const everyPicture = draw();
const situations = everyPicture.filter(({ picture }) => picture.name === "system-situation");

describe("labels of set-ups", () => {
  it("cover no label and no arrowhead and are nowhere cut off, in every picture", () => {
    expect(everyPicture.length).toBeGreaterThan(8000);
    const found = everyPicture.flatMap(({ name, picture }) => collisions(picture).map((fault) => `${name}: ${fault}`));
    expect(found).toEqual([]);
  });

  it("lie on no body", () => {
    const found = situations.flatMap(({ name, picture, scene }) => {
      const { bodies } = placedSituation(scene);
      return picture.labels.flatMap(({ key, box }) => {
        const { x, y, width, height } = box;
        const corners = [{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }]; // prettier-ignore
        return bodies.flatMap(({ id, corners: outline }) =>
          depthOf(corners, outline) > 1 ? [`${name}: ${key} on ${id}`] : [],
        );
      });
    });
    expect(found).toEqual([]);
  });

  it("lie on an arrow's shaft or a rope in fewer than one case in a thousand", () => {
    let labels = 0;
    const crossed = everyPicture.flatMap(({ name, picture }) => {
      labels += picture.labels.length;
      return labelsOnShafts(picture).map((key) => `${name}: ${key}`);
    });
    expect(labels).toBeGreaterThan(20_000);
    expect(crossed.length, crossed.slice(0, 40).join("\n")).toBeLessThan(labels / 1000);
  });
});

describe("pictures of set-ups", () => {
  it("name every rope, every load and every push of their scene", () => {
    for (const { name, picture, scene } of situations) {
      const keys = new Set(picture.labels.map(({ key }) => key));
      for (const { id } of [...scene.ropes, ...scene.bodies])
        expect(keys.has(`name-${id}`), `${name}: ${id}`).toBe(true);
      for (const { id } of scene.pushes) expect(keys.has(`push-${id}-label`), `${name}: ${id}`).toBe(true);
    }
  });

  it("have keys that are unique in their picture, and hold only finite numbers", () => {
    for (const { name, picture } of everyPicture) {
      const boxes = boxesOf(picture).map(({ key }) => key);
      expect(new Set(boxes).size, name).toBe(boxes.length);
      const shapes = picture.shapes.map(({ key }) => key);
      expect(new Set(shapes).size, `${name}: ${shapes.join(" ")}`).toBe(shapes.length);
      expect(/NaN|Infinity|undefined|null,null/.test(JSON.stringify(picture)), name).toBe(false);
    }
  });
});
