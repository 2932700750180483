// How large or small a push or a load may be before static friction gives way: the same equations with the friction at its largest and the push or load to be found.
import type { SetUp } from "../../1-bodies/index.ts";
import type { SetUpForce } from "../../2-forces/index.ts";
import { writeEquations } from "../../3-equations/index.ts";
import type { FrictionLaw } from "../../3-equations/index.ts";
import { setUpValues, writeSetUpAttempt } from "../../4-steps/index.ts";
import type { Limit, SetUpAttempt } from "../../4-steps/index.ts";
import { symbol } from "../../algebra/expr.ts";
import type { SetUpChoices } from "./index.ts";
import { inequalitiesOf } from "./checks.ts";
import type { Judged } from "./judge.ts";
import { rowsOf } from "./rows.ts";
import type { Row } from "./rows.ts";
import { solveRows } from "./solve-rows.ts";
import type { Failure } from "./types.ts";

/** So many limits are worked out; more would bury the answer. */
const MOST_LIMITS = 4;

/** What a limit is looked for: the letter of a push or of a weight, and its size as given. */
interface Sought {
  readonly letter: string;
  readonly given: number;
}

/** The limits of pushes and loads of given size, where static friction is what gives way first. */
export function limitsOf(judged: Judged, choices: SetUpChoices): SetUpAttempt[] {
  return soughtIn(judged)
    .flatMap((sought) => endsOf(judged, sought).flatMap((end) => limitAttempt(judged, choices, sought.letter, end)))
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

/** An end of the case: the contact whose friction is at its largest there, and the way it then acts along the tangent. */
interface End {
  readonly contact: string;
  readonly sense: 1 | -1;
  readonly end: Limit["end"];
}

/**
 * How far a size may go up and down before an inequality of the case fails, and which does. All margins are straight lines
 * in the size, so two points tell all. Only an end at which static friction fails is a limit to be worked out.
 */
function endsOf(judged: Judged, { letter, given }: Sought): End[] {
  const step = given === 0 ? 1 : given / 2;
  const here = marginsAt(judged, letter, given);
  const there = marginsAt(judged, letter, given + step);
  if (here === null || there === null) return [];
  const reach = (up: boolean): End[] => {
    const falling = here.flatMap(({ failure, margin, scale }, i) => {
      const slope = (there[i]?.margin ?? margin) - margin;
      return (up ? -slope : slope) <= EDGE * scale ? [] : [{ failure, steps: Math.max(0, margin / Math.abs(slope)) }];
    });
    const nearest = Math.min(...falling.map((f) => f.steps));
    const first = falling.find((f) => f.steps <= nearest * (1 + EDGE));
    const size = given + (up ? nearest : -nearest) * step;
    if (first?.failure.kind !== "too-rough" || size <= EDGE * given) return [];
    return [{ contact: first.failure.id, sense: first.failure.sense, end: up ? "largest" : "smallest" }];
  };
  return [...reach(false), ...reach(true)];
}

const EDGE = 1e-9;

/** Every margin of the case with the size at a value; null where the equations do not settle it. */
function marginsAt(
  { setUp, hypothesis, forces, equations }: Judged,
  letter: string,
  value: number,
): { readonly failure: Failure; readonly margin: number; readonly scale: number }[] | null {
  const values = setUpValues(setUp);
  const sought = forces.map((f) => asUnknown(setUp, f, letter));
  const laws = writeEquations(setUp, hypothesis, sought, "along").equations;
  const fixed: Row = { id: letter, coefficients: new Map([[letter, 1]]), constant: value };
  const solution = solveRows([...rowsOf(laws, values), fixed]);
  if (solution.kind !== "one") return null;
  const at = (id: string): number => solution.values.get(id) ?? values.symbols.get(id)?.decimal ?? 0;
  const scale = Math.max(...sought.map((f) => (f.unknown === null ? 0 : Math.abs(at(f.unknown)))), 0);
  return inequalitiesOf(setUp, hypothesis, equations, values).map((q) => ({
    failure: q.failure,
    margin: q.margin(at),
    scale: q.of === "force" ? scale : setUp.gravity.decimal,
  }));
}

function limitAttempt(
  judged: Judged,
  choices: SetUpChoices,
  letter: string,
  { contact: id, sense, end }: End,
): SetUpAttempt[] {
  const { setUp } = judged;
  const contact = setUp.contacts.find((c) => c.id === id);
  const state = judged.hypothesis.contacts[id];
  if (contact === undefined || state === undefined) return [];
  const name = `${letter}-limit.${id}${end === "largest" ? "" : ".least"}`;
  const hypothesis = {
    ...judged.hypothesis,
    id: name,
    contacts: { ...judged.hypothesis.contacts, [id]: { ...state, sense } },
  };
  const forces = judged.forces.map((f) => asUnknown(setUp, turned(f, contact.friction, state.sense !== sense), letter));
  const law: FrictionLaw = {
    kind: "friction",
    id: `friction.${id}`,
    contact: id,
    friction: contact.friction,
    normal: id,
    coefficient: contact.coefficients.static,
  };
  const made = writeEquations(setUp, hypothesis, forces, choices.axes);
  const equations = { ...made, equations: [...made.equations, law] };
  const solution = solveRows(rowsOf(equations.equations, setUpValues(setUp)));
  if (solution.kind !== "one") return [];
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
      prefix: `limit.${letter}.${id}${end === "largest" ? "" : ".least"}.`,
      limit: { letter, contact: id, end },
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
