import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { choose, documentOn, enter, expectDerivationOf, expectSaid, openProblem, press } from "./problem-page.ts";

/** A sign on a level stay and a sloping rope, as every first textbook has it. */
const SIGN = {
  format: 1,
  gravity: 9.8,
  bodies: [{ id: "shopsign", name: "shop sign", mass: 12 }],
  ropes: [
    { id: "T1", on: "shopsign", direction: { angle: 180 } },
    { id: "T2", on: "shopsign", direction: { angle: 35 } },
  ],
};

describe("the form", () => {
  siteTest("takes a book's problem in words, and the page works it out", async ({ open }) => {
    const page = await openProblem(open);
    await press(page, "Start empty");
    await expectSaid(page, /Begin with a body/);
    await press(page, "Add a load");
    await enter(page, "Name of body 1", "shop sign");
    await enter(page, "shop sign, mass, kg", "12");
    await press(page, "Add a rope");
    await choose(page, "Rope T1, direction", "level to the left");
    await press(page, "Add a rope");
    await choose(page, "Rope T2, direction", "up to the right");
    await enter(page, "Rope T2, angle, °", "35");
    expect(await documentOn(page)).toEqual(SIGN);
    await expectDerivationOf(page, SIGN);
    // W = 12·9.8; the rope's upright part carries it all, and the stay holds against its level part.
    const weight = 12 * 9.8;
    const slope = (35 * Math.PI) / 180;
    const [stay, rope] = [weight / Math.tan(slope), weight / Math.sin(slope)].map((x) => x.toPrecision(3));
    await expectSaid(page, new RegExp(`${stay ?? ""}.N.*${rope ?? ""}.N`, "s"));
    await expect.poll(() => page.url()).toContain("name:%27shop+sign%27,mass:12");
  });

  siteTest("takes a crate on a rough slope and a bucket over a pulley, with axes either way", async ({ open }) => {
    const page = await openProblem(open);
    await press(page, "Start empty");
    await press(page, "Add a load");
    await enter(page, "Name of body 1", "tea crate");
    await enter(page, "tea crate, mass, kg", "10");
    await press(page, "Add a load");
    await enter(page, "Name of body 2", "bucket");
    await choose(page, "bucket, by mass or weight", "weight");
    await enter(page, "bucket, weight, N", "78,4");
    await press(page, "Add a surface");
    await choose(page, "Surface N1, touched by", "tea crate");
    await choose(page, "Surface N1, how it lies", "a slope that rises to the right");
    await choose(page, "Surface N1, friction", "rough");
    await enter(page, "Surface N1, coefficient of static friction", "0.2");
    await enter(page, "Surface N1, coefficient of kinetic friction", "0.15");
    await press(page, "Add a rope");
    await choose(page, "Rope T1, on", "tea crate");
    await choose(page, "Rope T1, direction", "up along the slope");
    await choose(page, "Rope T1, how it is tied", "over a fixed pulley to another body");
    const pair = {
      format: 1,
      gravity: 9.8,
      bodies: [
        { id: "crate", name: "tea crate", mass: 10 },
        { id: "bucket", name: "bucket", weight: 78.4, motion: { along: { angle: 90 } } },
      ],
      ropes: [
        {
          id: "T1",
          pulls: [
            { on: "crate", direction: { angle: 30 } },
            { on: "bucket", direction: { angle: 90 } },
          ],
        },
      ],
      surfaces: [{ id: "N1", on: "crate", slope: { angle: 30 }, friction: { static: 0.2, kinetic: 0.15 } }],
    };
    expect(await documentOn(page)).toEqual(pair);
    await expectDerivationOf(page, pair);
    // a = (m₂g − m₁g sin 30° − μₖ m₁g cos 30°)/(m₁ + m₂), m₂ = 8 kg.
    const a = (78.4 - 10 * 9.8 * Math.sin(Math.PI / 6) - 0.15 * 10 * 9.8 * Math.cos(Math.PI / 6)) / 18;
    await expectSaid(page, new RegExp(`crate accelerates at ${a.toPrecision(3)}.m/s² up the slope`));
    await page.click("summary:has-text('How it is written')");
    await choose(page, "Axes", "level and upright for every body");
    await expectDerivationOf(page, pair, { axes: "level" });
    // The slope is turned, and what is along it turns with it.
    await enter(page, "Surface N1, angle, °", "20");
    expect(await documentOn(page)).toMatchObject({ ropes: [{ pulls: [{ direction: { angle: 20 } }, {}] }] });
  });

  siteTest("keeps what is no number in its box, says so, and leaves the document alone", async ({ open }) => {
    const page = await openProblem(open);
    const before = await documentOn(page);
    const field = page.getByLabel("Rope T2, angle, °", { exact: true });
    await field.fill("steep");
    await field.press("Tab");
    expect(await field.inputValue()).toBe("steep");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(await page.textContent(`#${(await field.getAttribute("aria-describedby")) ?? ""}`)).toMatch(
      /“steep” is not/,
    );
    await expectSaid(page, /left out: Rope T2, angle: “steep” is not a number/);
    expect(await documentOn(page)).toEqual(before);
    await field.fill("120");
    await field.press("Tab");
    expect(await page.textContent(".row-fault")).toMatch(/from 0 to 90/);
    await field.fill("27,5");
    await field.press("Tab");
    expect(await field.getAttribute("aria-invalid")).toBe("false");
    expect(await documentOn(page)).toMatchObject({ ropes: [{}, { direction: { angle: 27.5 } }] });
  });

  siteTest("names a value that is out of its limits at its row, and keeps it", async ({ open }) => {
    const page = await openProblem(open);
    const field = page.getByLabel(/, mass, kg$/);
    await field.fill("-3");
    await field.press("Tab");
    await expect.poll(() => page.textContent(".row-fault")).toMatch(/mass: found -3; accepted: .*number from/);
    expect(await field.inputValue()).toBe("-3");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    await expectSaid(page, /One thing is not accepted; the last derivation is still shown/);
    expect(await page.locator(".stale-note").isVisible()).toBe(true);
  });

  siteTest("keeps an angle's own words while it is typed, through 0 and from the vertical", async ({ open }) => {
    const page = await openProblem(open);
    const field = page.getByLabel("Rope T2, angle, °", { exact: true });
    await field.fill("");
    await field.pressSequentially("0.5");
    expect(await field.inputValue()).toBe("0.5");
    expect(await documentOn(page)).toMatchObject({ ropes: [{}, { direction: { angle: 0.5 } }] });
    await choose(page, "Rope T2, angle measured from", "the vertical");
    expect(await documentOn(page)).toMatchObject({
      ropes: [{}, { direction: { angle: 0.5, from: "vertical", side: "right" } }],
    });
    await choose(page, "Rope T2, direction", "up to the left");
    expect(await documentOn(page)).toMatchObject({
      ropes: [{}, { direction: { angle: 0.5, from: "vertical", side: "left" } }],
    });
  });

  siteTest("takes a thing away and brings it back", async ({ open }) => {
    const page = await openProblem(open);
    const before = await documentOn(page);
    await press(page, "Remove rope T1");
    await expectSaid(page, /T1 removed/);
    expect(await documentOn(page)).toMatchObject({ ropes: [{ id: "T2" }] });
    await press(page, "Undo");
    expect(await documentOn(page)).toEqual(before);
    await press(page, "Redo");
    expect(await documentOn(page)).toMatchObject({ ropes: [{ id: "T2" }] });
    await press(page, "Add a rope");
    expect(await page.getByRole("group", { name: "Rope T1" }).count()).toBe(1);
  });

  siteTest("turns a rope that is dragged in the picture, and the field follows", async ({ open }) => {
    const page = await openProblem(open, "", { viewport: { width: 1440, height: 900 } });
    const box = await page.locator('[data-handle="T2"]').boundingBox();
    if (box === null) throw new Error("the picture has no handle");
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 1; i <= 8; i++) await page.mouse.move(x - 10 * i, y);
    await page.mouse.up();
    const angle = Number(await page.getByLabel("Rope T2, angle, °", { exact: true }).inputValue());
    expect(angle).toBeGreaterThan(52);
    expect(await documentOn(page)).toMatchObject({ ropes: [{}, { direction: { angle } }] });
    await expectDerivationOf(page, (await documentOn(page)) as object);
    await press(page, "Undo");
    await expect.poll(() => page.getByLabel("Rope T2, angle, °", { exact: true }).inputValue()).toBe("50");
  });
});

describe("the settings", () => {
  siteTest("change how it is written, and stand in the address", async ({ open }) => {
    const page = await openProblem(open);
    const document = (await documentOn(page)) as object;
    await page.click("summary:has-text('How it is written')");
    await page.selectOption("#set-figures", "5");
    await page.selectOption("#set-first", "horizontal");
    await page.selectOption("#set-mark", "comma");
    await expectDerivationOf(page, document, { figures: 5, firstAxis: "horizontal", mark: "," });
    await expect.poll(() => new URL(page.url()).search).toBe("?figures=5&first=horizontal&mark=comma");
  });
});
