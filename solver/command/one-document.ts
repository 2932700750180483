// One document: the whole derivation, to be read by a person or a program.
import { readFileSync } from "node:fs";
import { readProblem } from "../../shared/problem/schema.ts";
import { exportDerivation, texDerivation, textDerivation } from "../exports/index.ts";
import { derive } from "../index.ts";
import { refuse, systemCode } from "./refuse.ts";
import type { Request } from "./arguments.ts";

/** Derives the one document that was asked for and writes it to standard output. */
export function deriveOne({ files: [file], as, settings }: Request): void {
  const reading = readProblem(readText(file));
  if (!reading.ok)
    refuse(reading.faults.map((f) => `${f.path === "" ? "/" : f.path}: found ${f.found}, accepted: ${f.accepted}`));
  const derivation = derive(reading.problem, settings);
  const text =
    as === "json"
      ? JSON.stringify(exportDerivation(derivation), null, 1)
      : as === "tex"
        ? texDerivation(derivation)
        : textDerivation(derivation);
  process.stdout.write(`${text}\n`);
}

function readText(file: string): string {
  try {
    // Some editors put a byte-order mark first; it is no part of the document.
    return readFileSync(file === "-" ? 0 : file, "utf8").replace(/^\uFEFF/, "");
  } catch (error) {
    return refuse([
      `${file}: found no file that can be read (${systemCode(error)}), accepted: a problem document, or - for standard input`,
    ]);
  }
}
