import { describe, expect, it } from "vitest";
import { boxesOf, forceDiagram, situation } from "../../src/diagram/index.ts";
import { collisions, faults } from "./collisions.ts";
import { labelsOnShafts } from "./shafts.ts";
import { picturesOf, settings } from "./settings.ts";
import { twoRopes } from "./two-ropes.ts";

const withoutText = (scene: ReturnType<typeof twoRopes>): typeof scene => ({
  ...scene,
  weightText: null,
  ropes: scene.ropes.map((rope) => ({ ...rope, tensionText: null })),
});

describe("labels", () => {
  it("cover no label, arrowhead or handle and are nowhere cut off, at every setting", () => {
    expect(settings.length).toBeGreaterThan(800);
    const found = settings.flatMap((setting) => {
      const scene = twoRopes(setting);
      return [scene, withoutText(scene)].flatMap((shown) =>
        picturesOf(shown).flatMap(([name, picture]) =>
          collisions(picture).map((fault) => `${JSON.stringify(setting)} ${name}: ${fault}`),
        ),
      );
    });
    expect(found).toEqual([]);
  });

  it("lie on an arrow's shaft or a rope in fewer than one case in a thousand", () => {
    let labels = 0;
    const crossed: string[] = [];
    for (const setting of settings) {
      for (const [name, picture] of picturesOf(twoRopes(setting))) {
        labels += picture.labels.length;
        crossed.push(...labelsOnShafts(picture).map((key) => `${name}: ${key}`));
      }
    }
    expect(labels).toBeGreaterThan(10_000);
    expect(crossed.length, crossed.join("\n")).toBeLessThan(labels / 1000);
    const seeded = forceDiagram(twoRopes({ ropes: [115, 40] }));
    const onDot = seeded.labels.map((label) => ({ ...label, box: { ...label.box, x: 170, y: 170 } }));
    expect(labelsOnShafts({ ...seeded, labels: onDot })).toHaveLength(onDot.length);
  });

  it("are caught when one is moved onto another, an arrowhead or a handle, or over the edge", () => {
    const scene = twoRopes({ ropes: [115, 40] });
    for (const picture of [forceDiagram(scene), situation(scene)]) {
      expect(collisions(picture)).toEqual([]);
      const boxes = boxesOf(picture);
      const label = boxes[0];
      if (label === undefined) throw new Error("The picture has no label to move.");
      for (const other of boxes.slice(1)) {
        const moved = { ...label, box: { ...label.box, x: other.box.x + 1, y: other.box.y + 1 } };
        const seen = [...faults([moved, ...boxes.slice(1)], picture.width, picture.height)];
        expect(seen.join("\n"), other.key).toContain(`label ${label.key} and ${other.kind} ${other.key} overlap`);
      }
      const over = { ...label, box: { ...label.box, x: picture.width - 4 } };
      expect([...faults([over], picture.width, picture.height)]).toEqual([expect.stringContaining("is cut off")]);
    }
  });

  it("have boxes under keys that are unique in their picture", () => {
    for (const setting of settings.filter((_, index) => index % 29 === 0)) {
      for (const [name, picture] of picturesOf(twoRopes(setting))) {
        const keys = boxesOf(picture).map((box) => box.key);
        expect(new Set(keys).size, name).toBe(keys.length);
        const drawn = picture.shapes.map((shape) => shape.key);
        expect(new Set(drawn).size, name).toBe(drawn.length);
      }
    }
  });
});

describe("pictures", () => {
  it("hold only finite numbers, and keep every arrowhead inside, at every setting", () => {
    for (const setting of settings) {
      for (const [name, picture] of picturesOf(twoRopes(setting))) {
        const data = JSON.stringify(picture);
        expect(/NaN|Infinity|undefined|null,null/.test(data), `${name} ${JSON.stringify(setting)}`).toBe(false);
        expect(picture.shapes.filter((shape) => /NaN|Infinity|-0[^.\d]/.test(shape.d))).toEqual([]);
      }
    }
  });

  it("keep the handles apart by the size of their targets, and at least 24 px across on a page of 360 px", () => {
    for (const setting of settings) {
      const picture = situation(twoRopes(setting));
      // The lesson gives a picture 320 px or more there.
      for (const handle of picture.handles)
        expect((2 * handle.radius * 320) / picture.width).toBeGreaterThanOrEqual(24);
      for (const [index, one] of picture.handles.entries()) {
        for (const other of picture.handles.slice(index + 1)) {
          const apart = Math.hypot(one.centre.x - other.centre.x, one.centre.y - other.centre.y);
          expect(apart, JSON.stringify(setting)).toBeGreaterThanOrEqual(one.radius + other.radius);
        }
      }
    }
  });
});
