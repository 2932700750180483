// Every kind of set-up: the whole derivation beside the bare exact solve of the same equations by a general-purpose symbolic library.
import { ComputeEngine } from "@cortex-js/compute-engine";
import { readFileSync } from "node:fs";
import { readProblem } from "../../shared/problem/schema.ts";
import { derive, solve } from "../../solver/index.ts";
import { peerSystem } from "./peer-system.ts";
import { ms, printTable } from "./table.ts";
import { time } from "./timing.ts";

const FOLDER = new URL("../../shared/problem/examples/", import.meta.url);

interface Example {
  readonly id: string;
}

function examples(): string[] {
  const list = JSON.parse(readFileSync(new URL("index.json", FOLDER), "utf8")) as readonly Example[];
  return list.map((e) => e.id);
}

/** Times every example document and prints its table. */
export function benchSetUps(): void {
  const engine = new ComputeEngine();
  const rows = examples().flatMap((id): string[][] => {
    const reading = readProblem(readFileSync(new URL(`${id}.json`, FOLDER), "utf8"));
    if (!reading.ok) throw new Error(`the example ${id} has faults`);
    const { problem } = reading;
    const whole = time([problem], (p) => derive(p), 40, 15);
    const answers = time([problem], (p) => solve(p), 40, 15);
    const peer = peerSystem(problem);
    const system = peer === null ? null : engine.parse(peer.tex);
    const solved = peer === null || system === null ? null : system.solve([...peer.letters]);
    const library =
      peer === null || system === null || solved === null
        ? null
        : time([system], (s) => s.solve([...peer.letters]), 3, 1);
    const beside =
      library === null
        ? peer === null
          ? "no single solution to compare"
          : "the library gives no answer"
        : `${ms(library.median)}, ${(whole.median / library.median).toPrecision(2)} ×`;
    return [[id, ms(whole.median), ms(whole.p95), ms(answers.median), beside]];
  });
  rows.sort((a, b) => Number(b[1]) - Number(a[1]));
  printTable(
    "Each example document, warm (milliseconds), slowest first; the peer is compute-engine's solve of the same equations",
    ["document", "derivation, median", "p95", "answers alone", "peer, and derivation ÷ peer"],
    rows,
  );
}
