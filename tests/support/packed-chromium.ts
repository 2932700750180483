/**
 * The Chromium that comes as an npm package, for Linux machines that have none: unpacked once into a cache.
 */
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import packed, { inflate } from "@sparticuz/chromium";

const cache = join(import.meta.dirname, "../../node_modules/.cache/tautline");

/** A browser program and the environment it wants. */
export type PackedChromium = { executablePath: string; env: Record<string, string> };

/**
 * Unpacks the packed Chromium if that has not been done yet.
 * The system may lack the three libraries it needs, and fonts; both come with it and are put in its environment.
 */
export async function packedChromium(): Promise<PackedChromium> {
  const folder = join(cache, `chromium-${packedVersion()}`);
  if (!existsSync(folder)) await unpackInto(folder);
  const env = {
    LD_LIBRARY_PATH: [process.env.LD_LIBRARY_PATH, join(folder, "al2023", "lib")].filter(Boolean).join(":"),
    ...(existsSync("/etc/fonts") ? {} : { FONTCONFIG_PATH: join(folder, "fonts") }),
  };
  return { executablePath: join(folder, "chromium"), env };
}

function packageFolder(): string {
  return dirname(dirname(createRequire(import.meta.url).resolve("@sparticuz/chromium")));
}

function packedVersion(): string {
  const about: unknown = JSON.parse(readFileSync(join(packageFolder(), "package.json"), "utf8"));
  if (typeof about === "object" && about !== null && "version" in about) return String(about.version);
  throw new Error("The packed Chromium's package names no version.");
}

/**
 * Unpacks beside the place and moves the whole there at the end, so that a half-unpacked browser is never found,
 * by a later run or by one going on at the same time. The package unpacks where TMPDIR points.
 */
async function unpackInto(folder: string): Promise<void> {
  mkdirSync(cache, { recursive: true });
  const work = mkdtempSync(join(cache, "unpacking-"));
  const before = process.env.TMPDIR;
  process.env.TMPDIR = work;
  try {
    await packed.executablePath();
    await inflate(join(packageFolder(), "bin", "al2023.tar.br"));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
  if (!existsSync(folder)) renameSync(work, folder);
}
