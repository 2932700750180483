// Compares our solver with the oracle's answers, one document after the other, on standard output.
import { readProblem } from "../../shared/problem/schema.ts";
import { exportDerivation } from "../../solver/exports/index.ts";
import { derive } from "../../solver/index.ts";
import { beyondExport, differences } from "./compare.ts";
import type { SetUpData } from "./compare.ts";
import type { FixtureCase } from "./fixture.ts";

function differencesFor(c: FixtureCase): readonly string[] {
  const reading = readProblem(JSON.stringify(c.document));
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  const derivation = derive(reading.problem);
  return differences(c, exportDerivation(derivation) as unknown as SetUpData, beyondExport(derivation));
}

/** Writes every difference, and gives how many documents differ. */
export function compareAll(cases: readonly FixtureCase[]): number {
  let wrong = 0;
  for (const c of cases) {
    const found = faultsOf(c);
    if (found.length === 0) continue;
    wrong++;
    process.stdout.write(`${c.kind}: ${found.join("; ")}\n  ${JSON.stringify(c.document)}\n`);
  }
  process.stdout.write(`${wrong} of ${cases.length} documents differ\n`);
  return wrong;
}

/** An error of our program on one document is a difference too. */
function faultsOf(c: FixtureCase): readonly string[] {
  try {
    return differencesFor(c);
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return [`${error.name}: ${error.message}`];
  }
}
