// 100,000 variants of the two-rope problem in one run of the command line, on one thread and on all, beside mathjs lusolve.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { lusolve } from "mathjs";
import { modernNode } from "../../src/tools/modern-node.mjs";
import { documentOf, opposite } from "../solver/set-ups.ts";
import { printTable } from "./table.ts";

const VARIANTS = 100_000;
/** Whole derivations are some 60 kB each: fewer of them say as much. */
const WHOLE = 10_000;
const CLI = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));
const PEAK = new URL("./peak-memory.mjs", import.meta.url).href;

interface Variant {
  readonly left: number;
  readonly right: number;
  readonly mass: number;
}

/** Variant i: angles of 10.0° to 79.9° in tenths, masses of 0.50 kg to 50.49 kg. */
const variant = (i: number): Variant => ({
  left: Math.round(100 + ((i * 37) % 700)) / 10,
  right: Math.round(100 + ((i * 101) % 700)) / 10,
  mass: Math.round(50 + ((i * 59) % 5000)) / 100,
});

const textOf = ({ left, right, mass }: Variant): string =>
  JSON.stringify(documentOf({ ropes: opposite(left, right), mass }));

interface Measured {
  readonly seconds: number;
  readonly megabytes: number;
  readonly lines: number;
}

/** Runs the command line as a person would, its start included, and reads what it writes. */
async function run(args: readonly string[]): Promise<Measured> {
  const from = performance.now();
  const child = spawn(modernNode(), ["--import", PEAK, CLI, ...args], { stdio: ["ignore", "pipe", "pipe"] });
  let lines = 0;
  let said = "";
  child.stdout.on("data", (bytes: Buffer) => {
    for (const byte of bytes) if (byte === 10) lines++;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => (said += text));
  const [code] = (await once(child, "close")) as [number | null];
  const seconds = (performance.now() - from) / 1000;
  const peak = /^peak (\d+) kB$/m.exec(said)?.[1];
  if (code !== 0 || peak === undefined) throw new Error(`derive ended with ${String(code)}: ${said}`);
  return { seconds, megabytes: Number(peak) / 1000, lines };
}

/** Seconds for lusolve alone on the same systems: no document, no exact number, no case, nothing written. */
function peer(): number {
  const radians = (degrees: number): number => (degrees * Math.PI) / 180;
  const from = performance.now();
  for (let i = 0; i < VARIANTS; i++) {
    const { left, right, mass } = variant(i);
    lusolve(
      [
        [-Math.cos(radians(left)), Math.cos(radians(right))],
        [Math.sin(radians(left)), Math.sin(radians(right))],
      ],
      [[0], [mass * 9.8]],
    );
  }
  return (performance.now() - from) / 1000;
}

/** Times batches and prints their table. */
export async function benchBatch(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "bench-batch-"));
  try {
    const texts = Array.from({ length: VARIANTS }, (_, i) => textOf(variant(i)));
    const files = {
      all: join(folder, "all.jsonl"),
      quarter: join(folder, "quarter.jsonl"),
      some: join(folder, "some.jsonl"),
    };
    writeFileSync(files.all, texts.join("\n"));
    writeFileSync(files.quarter, texts.slice(0, VARIANTS / 4).join("\n"));
    writeFileSync(files.some, texts.slice(0, WHOLE).join("\n"));
    const each = join(folder, "each");
    mkdirSync(each);
    texts.forEach((text, i) => writeFileSync(join(each, `${String(i).padStart(6, "0")}.json`), text));
    const lusolveAlone = peer();
    const cores = availableParallelism();
    const one = await run([files.all, "--workers", "1"]);
    const row = (name: string, m: Measured, count: number): string[] => {
      if (m.lines !== count) throw new Error(`${name}: ${m.lines} lines`);
      const share = lusolveAlone * (count / VARIANTS);
      return [name, m.seconds.toFixed(2), m.megabytes.toFixed(0), `${(m.seconds / share).toPrecision(2)} × lusolve`];
    };
    const all = await run([files.all]);
    printTable(
      `Batches of two-rope variants, the program's start included; ${cores} threads can run at once`,
      ["what", "seconds", "peak MB", "ratio"],
      [
        row(`${VARIANTS} lines, 1 thread`, one, VARIANTS),
        [
          ...row(`${VARIANTS} lines, ${cores} threads`, all, VARIANTS).slice(0, 3),
          `${(one.seconds / all.seconds).toFixed(2)} times as fast as 1 thread`,
        ],
        row(`${VARIANTS / 4} lines, ${cores} threads`, await run([files.quarter]), VARIANTS / 4),
        row(`${VARIANTS} files of a folder, ${cores} threads`, await run([each]), VARIANTS),
        row(`${WHOLE} lines, whole derivations, ${cores} threads`, await run([files.some, "--whole"]), WHOLE),
        [`peer: mathjs lusolve, decimals alone, ${VARIANTS} systems, 1 thread`, lusolveAlone.toFixed(2), "", ""],
      ],
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}
