// The page in Chromium: a drag step from pointer event to painted frame, and what a first visit transfers.
import { gzipSync } from "node:zlib";
import type { Browser, Page, Response } from "playwright-core";
import { openBrowser } from "../support/browser.ts";
import { openSite } from "../support/site.ts";
import { printTable } from "./table.ts";
import { summary } from "./timing.ts";
import type { Timing } from "./timing.ts";

const LESSON = "lessons/two-ropes/";
const LEAST = 20;
const MOST = 85;

/** Runs in the page: times each pointer move from its event to the task after the frame that shows it. */
function watchMoves(): void {
  const times: number[] = [];
  Object.assign(globalThis, { moveTimes: times });
  window.addEventListener(
    "pointermove",
    () => {
      const from = performance.now();
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => times.push(performance.now() - from);
        channel.port2.postMessage(0);
      });
    },
    true,
  );
}

/** One frame of the page. */
const frame = (page: Page): Promise<void> =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

const cotangent = (degrees: number): number => 1 / Math.tan((degrees * Math.PI) / 180);

/** Drags rope 1's end through all whole degrees up and down again; gives the angles seen. */
async function sweep(page: Page, place: (degrees: number) => number, y: number): Promise<Set<string>> {
  const seen = new Set<string>();
  const up = Array.from({ length: MOST - LEAST + 1 }, (_, i) => LEAST + i);
  for (const degrees of [...up, ...up.toReversed()]) {
    await page.mouse.move(place(degrees), y);
    await frame(page);
    seen.add(await page.inputValue("#field-T1"));
  }
  return seen;
}

async function dragStep(
  browser: Browser,
  origin: string,
  slowdown: number,
): Promise<{ timing: Timing; angles: number }> {
  const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await page.goto(`${origin}/${LESSON}?T1=${180 - LEAST}&T2=45`, { waitUntil: "networkidle" });
  await page.click("[data-open-all]");
  const cdp = await page.context().newCDPSession(page);
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
  await page.evaluate(watchMoves);
  const box = await page.locator('[data-handle="T1"]').boundingBox();
  if (box === null) throw new Error("rope 1 has no handle");
  const start = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  const end = await reachOf(page, start);
  // The end slides along the beam by the cotangent of the angle.
  const scale = (end - start.x) / (cotangent(LEAST) - cotangent(MOST));
  const place = (degrees: number): number => start.x + scale * (cotangent(LEAST) - cotangent(degrees));
  await sweep(page, place, start.y);
  await page.evaluate("moveTimes.length = 0");
  const seen = await sweep(page, place, start.y);
  const times = await page.evaluate<number[]>("moveTimes");
  await page.mouse.up();
  await page.context().close();
  return { timing: summary(times), angles: seen.size };
}

/** How far to the right the end has to go for 85°. */
async function reachOf(page: Page, start: { x: number; y: number }): Promise<number> {
  let x = start.x;
  while (Number(await page.inputValue("#field-T1")) < MOST && x < start.x + 900) {
    x += 6;
    await page.mouse.move(x, start.y);
    await frame(page);
  }
  return x;
}

const KINDS: readonly (readonly [string, RegExp])[] = [
  ["fonts", /woff2$/],
  ["scripts", /\.js$/],
  ["styles", /\.css$/],
  ["pictures", /\.svg$/],
  ["page", /.*/],
];

/** Bytes by kind of all requests until the page is idle: gzip −9, fonts as they are. */
async function transfer(browser: Browser, origin: string, touch: boolean): Promise<Map<string, number>> {
  const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  const sizes = new Map<string, number>();
  const responses: Response[] = [];
  page.on("response", (response) => responses.push(response));
  await page.goto(`${origin}/${LESSON}`, { waitUntil: "networkidle" });
  if (touch) {
    await page.focus("#field-T1");
    await page.fill("#field-T1", "45");
    await page.waitForLoadState("networkidle");
  }
  for (const response of responses) {
    const path = new URL(response.url()).pathname;
    const [kind] = KINDS.find(([, pattern]) => pattern.test(path)) ?? ["other"];
    const body = await response.body();
    sizes.set(kind, (sizes.get(kind) ?? 0) + (kind === "fonts" ? body.length : gzipSync(body, { level: 9 }).length));
  }
  await page.context().close();
  return sizes;
}

const kB = (bytes: number): string => (bytes / 1000).toFixed(1);

/** Measures the page and prints its tables. */
export async function benchPage(): Promise<void> {
  const site = await openSite();
  const browser = await openBrowser();
  try {
    const rows: string[][] = [];
    for (const slowdown of [1, 4]) {
      const { timing, angles } = await dragStep(browser, site.origin, slowdown);
      rows.push([
        slowdown === 1 ? "plain" : `CPU ${slowdown} × slower`,
        timing.median.toFixed(1),
        timing.p95.toFixed(1),
        String(angles),
      ]);
    }
    printTable(
      "Drag step, pointer event to painted frame, all parts open (milliseconds)",
      ["machine", "median", "p95", "angles seen"],
      rows,
    );
    const first = await transfer(browser, site.origin, false);
    const touched = await transfer(browser, site.origin, true);
    const kinds = [...KINDS.map(([kind]) => kind)];
    const total = (sizes: Map<string, number>): number => [...sizes.values()].reduce((a, b) => a + b, 0);
    printTable(
      "Transfer of the lesson page (kB)",
      ["", ...kinds, "all"],
      [
        ["first view, nothing touched", ...kinds.map((k) => kB(first.get(k) ?? 0)), kB(total(first))],
        ["after the first change of form", ...kinds.map((k) => kB(touched.get(k) ?? 0)), kB(total(touched))],
      ],
    );
  } finally {
    await browser.close();
    await site.close();
  }
}
