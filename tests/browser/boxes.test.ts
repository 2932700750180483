import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { boxesOf, overlap, sceneOf, situation } from "../../src/diagram/index.ts";
import type { NamedBox } from "../../src/diagram/index.ts";
import { siteTest } from "../support/site-test.ts";
import { LESSON, derivedFor, openAll, ready } from "./lesson-page.ts";

const ANGLES = [
  [175, 5],
  [168, 33],
  [135, 45],
  [115, 40],
  [95, 85],
  [90, 40],
  [120, 90],
  [160, 140],
  [20, 40],
  [180, 40],
] as const;
const MOTIONS = ["", "&ax=12", "&ay=3", "&ax=-4&ay=-2"];
const SETTINGS = ANGLES.flatMap(([a, b]) => MOTIONS.map((motion) => `?T1=${a}&T2=${b}${motion}`));

interface Real {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Real boxes of the elements that carry one, in the picture's own units, and how many pixels a unit has. */
const realBoxes = (page: Page, picture: string): Promise<{ boxes: Real[]; scale: number }> =>
  page
    .locator(picture)
    .first()
    .evaluate((svg: SVGSVGElement) => {
      const matrix = svg.getScreenCTM();
      if (matrix === null) throw new Error("the picture is not drawn");
      const boxes = [...svg.querySelectorAll("[data-box]")].map((e) => {
        const r = e.getBoundingClientRect();
        return {
          key: e.getAttribute("data-box") ?? "",
          x: (r.x - matrix.e) / matrix.a,
          y: (r.y - matrix.f) / matrix.d,
          width: r.width / matrix.a,
          height: r.height / matrix.d,
        };
      });
      return { boxes, scale: matrix.a };
    });

function differences(computed: readonly NamedBox[], real: readonly Real[], scale: number): string[] {
  const byKey = new Map(real.map((r) => [r.key, r]));
  return computed.flatMap(({ key, box }) => {
    const r = byKey.get(key);
    if (r === undefined) return [`${key} is not drawn`];
    const edges = [r.x - box.x, r.y - box.y, r.x + r.width - box.x - box.width, r.y + r.height - box.y - box.height];
    const worst = Math.max(...edges.map(Math.abs)) * scale;
    return worst <= 2 ? [] : [`${key}: ${worst.toFixed(2)} px off`];
  });
}

describe("the situation's real boxes", () => {
  siteTest(
    `agree with the computed ones within 2 px at ${SETTINGS.length} settings: labels, arrowheads, handles`,
    async ({ open }) => {
      const faults: string[] = [];
      for (const query of SETTINGS) {
        const page = await open(LESSON + query, { viewport: { width: 1280, height: 900 } });
        await ready(page);
        const computed = boxesOf(situation(sceneOf(derivedFor(query))));
        await expect
          .poll(async () => {
            const { boxes } = await realBoxes(page, ".stage svg");
            return boxes
              .map((b) => b.key)
              .sort()
              .join();
          })
          .toBe(
            computed
              .map((b) => b.key)
              .sort()
              .join(),
          );
        await page.evaluate(() => document.fonts.ready);
        const { boxes, scale } = await realBoxes(page, ".stage svg");
        faults.push(...differences(computed, boxes, scale).map((f) => `${query} ${f}`));
        await page.context().close();
      }
      expect(faults).toEqual([]);
    },
  );
});

describe("every picture of the page", () => {
  siteTest.for(["", "?T1=175&T2=5", "?T1=95&T2=85", "?T1=160&T2=140", "?ax=12", "?T2=-20", "?T1=135&T2=45"])(
    "at “%s” has no label over another and none cut off",
    async (query, { open }) => {
      const page = await open(LESSON + query, { viewport: { width: 768, height: 900 } });
      await ready(page);
      await openAll(page);
      await page.evaluate(() => {
        for (const e of document.querySelectorAll<HTMLElement>(".paragraph, .drawn"))
          e.style.contentVisibility = "visible";
      });
      const pictures = await page.locator("svg.picture").count();
      expect(pictures).toBeGreaterThan(4);
      for (let i = 0; i < pictures; i++) {
        const labels = await page
          .locator("svg.picture")
          .nth(i)
          .evaluate((svg) => {
            const frame = svg.getBoundingClientRect();
            return [...svg.querySelectorAll("g.label")].map((g) => {
              const r = g.getBoundingClientRect();
              return {
                text: g.textContent,
                box: { x: r.x - frame.x, y: r.y - frame.y, width: r.width, height: r.height },
                frame: { width: frame.width, height: frame.height },
              };
            });
          });
        labels.forEach((a, k) => {
          expect(
            a.box.x >= -1 &&
              a.box.y >= -1 &&
              a.box.x + a.box.width <= a.frame.width + 1 &&
              a.box.y + a.box.height <= a.frame.height + 1,
            `${a.text} cut off`,
          ).toBe(true);
          for (const b of labels.slice(k + 1))
            expect(overlap(a.box, b.box) > 1, `${a.text} over ${b.text}`).toBe(false);
        });
      }
    },
  );
});
