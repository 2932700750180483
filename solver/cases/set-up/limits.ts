// How large or small a push may be before static friction gives way: the same equations with the friction at its largest and the push to be found.
import type { SetUpForce } from "../../2-forces/index.ts";
import { writeEquations } from "../../3-equations/index.ts";
import type { FrictionLaw } from "../../3-equations/index.ts";
import { setUpValues, writeSetUpAttempt } from "../../4-steps/index.ts";
import type { SetUpAttempt } from "../../4-steps/index.ts";
import { symbol } from "../../algebra/expr.ts";
import type { SetUpChoices } from "./index.ts";
import { inequalitiesOf } from "./checks.ts";
import type { Judged } from "./judge.ts";
import { rowsOf } from "./rows.ts";
import { solveRows } from "./solve-rows.ts";

/** The limits of every push of given size, where exactly one contact sticks. */
export function limitsOf(judged: Judged, choices: SetUpChoices): SetUpAttempt[] {
  const { setUp, hypothesis } = judged;
  const sticking = setUp.contacts.filter((c) => hypothesis.contacts[c.id]?.grip === "sticks");
  const [contact] = sticking;
  const given = setUp.pushes.filter((p) => p.size !== null);
  if (contact === undefined || sticking.length > 1) return [];
  return given.flatMap((push) =>
    ([1, -1] as const).flatMap((sense) => limitAttempt(judged, choices, push.id, contact.id, sense)),
  );
}

function limitAttempt(
  judged: Judged,
  choices: SetUpChoices,
  push: string,
  contactId: string,
  sense: 1 | -1,
): SetUpAttempt[] {
  const { setUp } = judged;
  const contact = setUp.contacts.find((c) => c.id === contactId);
  const push0 = setUp.pushes.find((p) => p.id === push)?.size?.decimal;
  const state = judged.hypothesis.contacts[contactId];
  if (contact === undefined || push0 === undefined || state === undefined) return [];
  const hypothesis = {
    ...judged.hypothesis,
    id: `${push}-limit${sense > 0 ? "" : "-back"}`,
    contacts: { ...judged.hypothesis.contacts, [contactId]: { ...state, sense } },
  };
  const forces = judged.forces.map((f) => asUnknown(turned(f, contact.friction, state.sense !== sense), push));
  const law: FrictionLaw = {
    kind: "friction",
    id: `friction.${contactId}`,
    contact: contactId,
    friction: contact.friction,
    normal: contactId,
    coefficient: contact.coefficients.static,
  };
  const made = writeEquations(setUp, hypothesis, forces, choices.axes);
  const equations = { ...made, equations: [...made.equations, law] };
  const values = setUpValues(setUp);
  const solution = solveRows(rowsOf(equations.equations, values));
  if (solution.kind !== "one") return [];
  const at = (id: string): number => solution.values.get(id) ?? values.symbols.get(id)?.decimal ?? 0;
  const size = at(push);
  const rest = inequalitiesOf(setUp, hypothesis, equations, values);
  const edge = 1e-9 * Math.max(...solution.values.values(), 1e-300);
  if (size < 0 || rest.some((q) => q.of === "force" && q.margin(at) < -edge)) return [];
  return [
    writeSetUpAttempt({
      setUp,
      hypothesis,
      forces,
      equations,
      point: solution.values,
      loose: new Set(),
      settled: new Set(),
      breaches: [],
      excluded: [],
      firstAxis: choices.firstAxis,
      prefix: `limit.${push}${sense > 0 ? "" : ".back"}.`,
      limit: { push, contact: contactId, end: size >= push0 ? "largest" : "smallest" },
    }),
  ];
}

const asUnknown = (f: SetUpForce, push: string): SetUpForce =>
  f.ref === push ? { ...f, unknown: push, size: symbol(push) } : f;

function turned(f: SetUpForce, friction: string, turn: boolean): SetUpForce {
  if (!turn || f.ref !== friction) return f;
  const { heading, quarters } = f.toward;
  return { ...f, toward: { heading, quarters: ((quarters + 2) % 4) as 0 | 1 | 2 | 3 } };
}
