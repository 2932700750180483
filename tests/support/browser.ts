/**
 * Finds a real browser for the tests, wherever they run: the one named by CHROMIUM; a system Chromium or Chrome; the
 * packed one on 64-bit Linux; Chrome or Edge where they are usually installed. The first that starts is taken.
 */
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { chromium, type Browser, type LaunchOptions } from "playwright-core";
import { packedChromium } from "./packed-chromium.ts";

type Candidate = { name: string; options: () => Promise<LaunchOptions> | LaunchOptions };

const systemNames = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** Flags for every browser: nothing but the page under test may use the network or the processor. */
const flags = ["--disable-background-networking", "--font-render-hinting=none"];

/**
 * Starts a headless browser. The caller closes it.
 * @throws Error naming what was tried and how to get a browser, when none starts
 */
export async function openBrowser(): Promise<Browser> {
  const failures: string[] = [];
  for (const candidate of candidates()) {
    try {
      return await chromium.launch({ args: flags, ...(await candidate.options()) });
    } catch (error) {
      failures.push(`${candidate.name}: ${firstLine(error)}`);
    }
  }
  throw new Error(
    `No browser for the tests starts. Install one (on Debian: apt-get install -y chromium), or set CHROMIUM to ` +
      `the path of a Chromium or Chrome.\nTried:\n${failures.map((line) => `  ${line}`).join("\n")}`,
  );
}

/** What to try, in order. A browser that the user named is not replaced by another one. */
function candidates(): Candidate[] {
  const named = process.env.CHROMIUM;
  if (named !== undefined && named !== "") {
    return [{ name: `CHROMIUM=${named}`, options: () => ({ executablePath: named }) }];
  }
  const list: Candidate[] = systemNames
    .flatMap((name) => onPath(name))
    .map((path) => ({ name: path, options: () => ({ executablePath: path }) }));
  if (process.platform === "linux" && process.arch === "x64") {
    list.push({ name: "the packed Chromium", options: packedOptions });
  }
  for (const channel of ["chrome", "msedge"]) list.push({ name: channel, options: () => ({ channel }) });
  return list;
}

async function packedOptions(): Promise<LaunchOptions> {
  const { executablePath, env } = await packedChromium();
  return { executablePath, env: { ...process.env, ...env } };
}

/** The places on the PATH that hold a program of this name. */
function onPath(name: string): string[] {
  const folders = (process.env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  return folders.map((folder) => join(folder, name)).filter(isProgram);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function firstLine(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  return text.split("\n", 1)[0] ?? text;
}
