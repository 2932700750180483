// How large or small a push or a load may be before static friction gives way: the same equations with the friction at its largest and the push or load to be found.
import type { Contact, SetUp } from "../../1-bodies/index.ts";
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

/** So many limits are worked out; more would bury the answer. */
const MOST_LIMITS = 4;

/** What a limit is looked for: the letter of a push or of a weight, and its size as given. */
interface Sought {
  readonly letter: string;
  readonly given: number;
}

/** The limits of pushes and loads of given size, as long as static friction holds somewhere. */
export function limitsOf(judged: Judged, choices: SetUpChoices): SetUpAttempt[] {
  const sticking = judged.setUp.contacts.filter((c) => judged.hypothesis.contacts[c.id]?.grip === "sticks");
  return soughtIn(judged)
    .flatMap((sought) =>
      sticking.flatMap((contact) =>
        ([1, -1] as const).flatMap((sense) => limitAttempt(judged, choices, sought, contact, sense)),
      ),
    )
    .slice(0, MOST_LIMITS);
}

/** Pushes of given size; and where nothing speeds up, the weights of loads that hang, or else of those that lie on something. */
function soughtIn({ setUp, equations, point, values }: Judged): Sought[] {
  const pushes = setUp.pushes.flatMap(({ id, size }) => (size === null ? [] : [{ letter: id, given: size.decimal }]));
  const isStill = (letter: string): boolean => (point.get(letter) ?? values.symbols.get(letter)?.decimal) === 0;
  const still = equations.motions.every((m) => [...m.own, ...m.carried].every((p) => isStill(p.letter)));
  const heavy = still ? setUp.bodies.filter((b) => b.weight.decimal > 0) : [];
  const hanging = heavy.filter((b) => setUp.contacts.every((c) => c.on !== b.id));
  const loads = hanging.length > 0 ? hanging : heavy;
  return [...pushes, ...loads.map((b) => ({ letter: b.letters.weightId, given: b.weight.decimal }))];
}

function limitAttempt(
  judged: Judged,
  choices: SetUpChoices,
  { letter, given }: Sought,
  contact: Contact,
  sense: 1 | -1,
): SetUpAttempt[] {
  const { setUp } = judged;
  const contactId = contact.id;
  const state = judged.hypothesis.contacts[contactId];
  if (state === undefined) return [];
  const hypothesis = {
    ...judged.hypothesis,
    id: `${letter}-limit.${contactId}${sense > 0 ? "" : "-back"}`,
    contacts: { ...judged.hypothesis.contacts, [contactId]: { ...state, sense } },
  };
  const forces = judged.forces.map((f) => asUnknown(setUp, turned(f, contact.friction, state.sense !== sense), letter));
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
  const size = at(letter);
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
      prefix: `limit.${letter}.${contactId}${sense > 0 ? "" : ".back"}.`,
      limit: { letter, contact: contactId, end: size >= given ? "largest" : "smallest" },
    }),
  ];
}

/** The push, or the weight, as a size to be found. */
function asUnknown(setUp: SetUp, f: SetUpForce, letter: string): SetUpForce {
  const weight = setUp.bodies.find((b) => b.id === f.on)?.letters.weightId;
  const isIt = f.kind === "weight" ? weight === letter : f.kind === "push" && f.ref === letter;
  return isIt ? { ...f, ref: letter, unknown: letter, size: symbol(letter) } : f;
}

function turned(f: SetUpForce, friction: string, turn: boolean): SetUpForce {
  if (!turn || f.ref !== friction) return f;
  const { heading, quarters } = f.toward;
  return { ...f, toward: { heading, quarters: ((quarters + 2) % 4) as 0 | 1 | 2 | 3 } };
}
