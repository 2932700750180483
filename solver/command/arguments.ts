// What was asked for on the command line, or a refusal.
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { defaultSettings } from "../index.ts";
import type { Settings } from "../index.ts";
import { refuse } from "./refuse.ts";

const ONE =
  "derive FILE|- [--as json|text|tex] [--figures 2..6] [--axis vertical|horizontal] [--axes along|level] [--route components]";
const MANY =
  "derive FOLDER|FILE.jsonl|FILE FILE …|- --lines [--whole] [--workers 1..256] [--progress] and the same settings";
const USAGE = `${ONE}; a batch: ${MANY}`;
const MOST_WORKERS = 256;

const OPTIONS = {
  as: { type: "string" },
  figures: { type: "string", default: "3" },
  axis: { type: "string", default: "vertical" },
  axes: { type: "string", default: "along" },
  route: { type: "string", default: "components" },
  lines: { type: "boolean", default: false },
  whole: { type: "boolean", default: false },
  workers: { type: "string" },
  progress: { type: "boolean", default: false },
} as const;

/** What was asked for. */
export interface Request {
  /** Files and folders; "-" is standard input. At least one. */
  readonly files: readonly [string, ...string[]];
  /** Null where nothing was said. */
  readonly as: "json" | "text" | "tex" | null;
  readonly settings: Settings;
  /** Whether standard input holds a document a line. */
  readonly lines: boolean;
  /** Whether each document of a batch gives its whole derivation. */
  readonly whole: boolean;
  /** How many threads derive a batch. */
  readonly workers: number;
  readonly progress: boolean;
  /** The options given that only a batch has. */
  readonly batchOptions: readonly string[];
}

/** Reads the program's arguments; refuses what is none of theirs. */
export function readArguments(): Request {
  const { values, positionals } = parse();
  const [first, ...rest] = positionals;
  if (first === undefined)
    refuse([`arguments: found no file, accepted: a file, a folder, or - for standard input. ${USAGE}`]);
  if (positionals.filter((f) => f === "-").length > 1)
    refuse([
      `arguments: found standard input ${positionals.filter((f) => f === "-").length} times, accepted: once. ${USAGE}`,
    ]);
  const { as = null, figures, axis, axes } = values;
  if (as !== null && as !== "json" && as !== "text" && as !== "tex")
    refuse([`--as: found ${as}, accepted: json, text, tex`]);
  if (!/^[2-6]$/.test(figures)) refuse([`--figures: found ${figures}, accepted: 2, 3, 4, 5, 6`]);
  if (axis !== "vertical" && axis !== "horizontal") refuse([`--axis: found ${axis}, accepted: vertical, horizontal`]);
  if (axes !== "along" && axes !== "level") refuse([`--axes: found ${axes}, accepted: along, level`]);
  if (values.route !== "components") refuse([`--route: found ${values.route}, accepted: components`]);
  return {
    files: [first, ...rest],
    as,
    settings: { ...defaultSettings, figures: Number(figures), firstAxis: axis, axes },
    lines: values.lines,
    whole: values.whole,
    workers: readWorkers(values.workers),
    progress: values.progress,
    batchOptions: [
      ...(values.whole ? ["--whole"] : []),
      ...(values.workers === undefined ? [] : ["--workers"]),
      ...(values.progress ? ["--progress"] : []),
    ],
  };
}

function parse(): ReturnType<typeof parseArgs<{ options: typeof OPTIONS; allowPositionals: true }>> {
  try {
    return parseArgs({ options: OPTIONS, allowPositionals: true });
  } catch (error) {
    if (error instanceof TypeError) return refuse([`arguments: ${error.message}. accepted: ${USAGE}`]);
    throw error;
  }
}

function readWorkers(written: string | undefined): number {
  if (written === undefined) return Math.min(availableParallelism(), MOST_WORKERS);
  const workers = /^\d{1,3}$/.test(written) ? Number(written) : 0;
  if (workers < 1 || workers > MOST_WORKERS)
    refuse([`--workers: found ${written}, accepted: a whole number from 1 to ${MOST_WORKERS}`]);
  return workers;
}
