import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { boxesOf, hasTriangle, sceneOf, situation } from "../../src/diagram/index.ts";
import type { Box, NamedBox, Picture } from "../../src/diagram/index.ts";
import { faults } from "../diagram/collisions.ts";
import { picturesOf, settings } from "../diagram/settings.ts";
import type { Setting } from "../diagram/two-ropes.ts";
import { siteTest } from "../support/site-test.ts";
import { LESSON, openAll, ready, unfold } from "./lesson-page.ts";
import { derivedFor } from "./written.ts";

const COUNT = 40;
/** Settings of the grid that differ in angles and acceleration alone, so that four fields reach them, evenly chosen. */
const reachable = settings.filter((s) => s.g === undefined && s.mass === undefined);
const chosen = Array.from(
  { length: COUNT },
  (_, i) => reachable[Math.floor(((i + 0.5) * reachable.length) / COUNT)],
).filter((s) => s !== undefined);

const fieldsOf = ({ ropes: [one, two], ax = 0, ay = 0 }: Setting): Record<string, number> => ({
  T1: Math.round((180 - one) * 10) / 10,
  T2: two,
  ax,
  ay,
});

/** The pictures of the lesson that the page shows for a setting, by name, as they are computed. */
function computedFor({ ropes: [one, two], ax = 0, ay = 0 }: Setting): Picture[] {
  const scene = sceneOf(derivedFor(`?T1=${one}&T2=${two}&ax=${ax}&ay=${ay}`));
  const onPage = new Set(["situation", "force diagram, given", "components, given", "chain of angles"]);
  if (scene.solved) for (const name of ["force diagram to scale", "polygon"]) onPage.add(name);
  for (const { id } of scene.ropes.filter((rope) => hasTriangle(scene, rope.id, "assumed")))
    onPage.add(`triangle of ${id}, given`);
  return picturesOf(scene).flatMap(([name, picture]) => (onPage.has(name) ? [picture] : []));
}

interface Drawn {
  readonly name: string;
  /** Pixels a unit of the picture. */
  readonly scale: number;
  /** Real boxes by key, in the picture's own units. */
  readonly boxes: Readonly<Record<string, Box>>;
}

/** Every picture of the page with the real boxes of its labels, arrowheads and handles. */
const drawnOn = (page: Page): Promise<Drawn[]> =>
  page.locator("svg.picture").evaluateAll((all) =>
    all.flatMap((svg) => {
      const matrix = svg instanceof SVGSVGElement && svg.checkVisibility() ? svg.getScreenCTM() : null;
      // A part that is empty at these values is hidden with its picture.
      if (matrix === null) return [];
      const boxes = [...svg.querySelectorAll("[data-box]")].map((e): [string, Box] => {
        const r = e.getBoundingClientRect();
        const [x, y] = [(r.x - matrix.e) / matrix.a, (r.y - matrix.f) / matrix.d];
        return [e.getAttribute("data-box") ?? "", { x, y, width: r.width / matrix.a, height: r.height / matrix.d }];
      });
      return [{ name: svg.getAttribute("data-picture") ?? "", scale: matrix.a, boxes: Object.fromEntries(boxes) }];
    }),
  );

/** The computed boxes that Chromium's own are not within 2 px of. */
function misplaced(picture: Picture, drawn: Drawn): string[] {
  const computed = boxesOf(picture);
  const extra = Object.keys(drawn.boxes).filter((key) => !computed.some((one) => one.key === key));
  return computed
    .flatMap(({ key, box }) => {
      const real = drawn.boxes[key];
      if (real === undefined) return [`${key} is not drawn`];
      const edges = [real.x - box.x, real.y - box.y, real.x + real.width - box.x - box.width, real.y + real.height - box.y - box.height]; // prettier-ignore
      const worst = Math.max(...edges.map(Math.abs)) * drawn.scale;
      return worst <= 2 ? [] : [`${key} is ${worst.toFixed(2)} px off`];
    })
    .concat(extra.map((key) => `${key} is drawn, not computed`));
}

/** Real boxes that overlap or are cut off, by more than half a pixel at each edge. */
function colliding(picture: Picture, drawn: Drawn): string[] {
  const half = 0.5 / drawn.scale;
  const real = boxesOf(picture).flatMap(({ key, kind }): NamedBox[] => {
    const box = drawn.boxes[key];
    if (box === undefined) return [];
    const { x, y, width, height } = box;
    return [{ key, kind, box: { x: x + half, y: y + half, width: width - 2 * half, height: height - 2 * half } }];
  });
  return [...faults(real, picture.width, picture.height)];
}

const ALWAYS = ["situation", "force-diagram"];

/** All faults of the pictures that can be seen. Pictures of one name, such as the two triangles, stand in one order on both sides. */
function judge(pictures: readonly Picture[], drawn: readonly Drawn[], wanted: readonly string[] = ALWAYS): string[] {
  const missing = wanted.filter((name) => !drawn.some((d) => d.name === name)).map((name) => `no ${name} is drawn`);
  const found = drawn.flatMap((real, i) => {
    const nth = drawn.slice(0, i).filter((d) => d.name === real.name).length;
    const [picture] = pictures.filter((p) => p.name === real.name).slice(nth);
    if (picture === undefined) return [`a ${real.name} too many is drawn`];
    return [...misplaced(picture, real), ...colliding(picture, real)].map((fault) => `${real.name}: ${fault}`);
  });
  return [...missing, ...found];
}

describe("the real boxes of every picture", () => {
  siteTest(
    `are the computed ones within 2 px, none over another or cut off, at ${chosen.length} settings of the grid`,
    async ({ open }) => {
      // So high that every picture is in view: one that is not is not drawn anew.
      const page = await open(LESSON, { viewport: { width: 1280, height: 16_000 } });
      await ready(page);
      await openAll(page);
      await unfold(page);
      await page.evaluate(() => document.fonts.ready);
      let seen = 0;
      for (const setting of chosen) {
        for (const [field, value] of Object.entries(fieldsOf(setting)))
          await page.fill(`#field-${field}`, String(value));
        const computed = computedFor(setting);
        await expect
          .poll(async () => judge(computed, await drawnOn(page)), { message: JSON.stringify(setting), timeout: 3000 })
          .toEqual([]);
        seen += (await drawnOn(page)).length;
      }
      expect(seen).toBeGreaterThan(5 * chosen.length);
    },
  );

  siteTest("are told apart from others: a seeded overlap and a shifted label are found", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1280, height: 900 } });
    await ready(page);
    const computed = [situation(sceneOf(derivedFor("")))];
    const stage = async (): Promise<Drawn[]> => (await drawnOn(page)).filter((d) => d.name === "situation");
    await expect.poll(async () => judge(computed, await stage(), [])).toEqual([]);
    await page.evaluate(() => {
      const [one, two] = document.querySelectorAll<SVGGElement>(".stage svg g.label");
      if (one === undefined || two === undefined) throw new Error("too few labels");
      const [a, b] = [one.getBBox(), two.getBBox()];
      one.setAttribute("transform", `translate(${b.x - a.x} ${b.y - a.y})`);
    });
    const found = (await stage()).flatMap((d) => judge(computed, [d], [])).join("\n");
    expect(found).toMatch(/px off/);
    expect(found).toMatch(/overlap by/);
  });
});
