// The command line: node solver/cli.ts FILE|- [--as json|text|tex] [--figures N] [--axis vertical|horizontal] [--route components]
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { readProblem } from "../shared/problem/schema.ts";
import { exportDerivation, texDerivation, textDerivation } from "./exports/index.ts";
import { defaultSettings, derive } from "./index.ts";
import type { Settings } from "./index.ts";

const USAGE = "derive FILE|- [--as json|text|tex] [--figures 2..6] [--axis vertical|horizontal] [--route components]";

/** Text from outside may hold anything; a line break in it would make two lines of one fault. */
const onOneLine = (text: string): string =>
  text.replace(/\p{Cc}/gu, (c) => `\\u${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`);

/** Ends the program with code 2 and one line a fault on standard error. */
function refuse(lines: readonly string[]): never {
  process.stderr.write(`${lines.map(onOneLine).join("\n")}\n`);
  process.exit(2);
}

function readArguments(): { file: string; as: string; settings: Settings } {
  const options = {
    as: { type: "string", default: "text" },
    figures: { type: "string", default: "3" },
    axis: { type: "string", default: "vertical" },
    route: { type: "string", default: "components" },
  } as const;
  try {
    const { values, positionals } = parseArgs({ options, allowPositionals: true });
    const [file, ...rest] = positionals;
    if (file === undefined || rest.length > 0)
      refuse([`arguments: found ${positionals.length} files, accepted: one file, or - for standard input. ${USAGE}`]);
    if (!["json", "text", "tex"].includes(values.as)) refuse([`--as: found ${values.as}, accepted: json, text, tex`]);
    if (!/^[2-6]$/.test(values.figures)) refuse([`--figures: found ${values.figures}, accepted: 2, 3, 4, 5, 6`]);
    if (values.axis !== "vertical" && values.axis !== "horizontal")
      refuse([`--axis: found ${values.axis}, accepted: vertical, horizontal`]);
    if (values.route !== "components") refuse([`--route: found ${values.route}, accepted: components`]);
    return {
      file,
      as: values.as,
      settings: { ...defaultSettings, figures: Number(values.figures), firstAxis: values.axis },
    };
  } catch (error) {
    if (error instanceof TypeError) refuse([`arguments: ${error.message}. accepted: ${USAGE}`]);
    throw error;
  }
}

function readText(file: string): string {
  try {
    // Some editors put a byte-order mark first; it is no part of the document.
    return readFileSync(file === "-" ? 0 : file, "utf8").replace(/^\uFEFF/, "");
  } catch (error) {
    return refuse([
      `${file}: found no file that can be read (${error instanceof Error && "code" in error ? String(error.code) : "unknown"}), accepted: a problem document, or - for standard input`,
    ]);
  }
}

const { file, as, settings } = readArguments();
const reading = readProblem(readText(file));
if (!reading.ok)
  refuse(reading.faults.map((f) => `${f.path === "" ? "/" : f.path}: found ${f.found}, accepted: ${f.accepted}`));
const derivation = derive(reading.problem, settings);
process.stdout.write(
  `${as === "json" ? JSON.stringify(exportDerivation(derivation), null, 1) : as === "tex" ? texDerivation(derivation) : textDerivation(derivation)}\n`,
);
