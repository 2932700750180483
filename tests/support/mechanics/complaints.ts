// Everything that is wrong with a derivation of a system, judged by the independent formulation; nothing if all is well.
import { all, create, lusolve } from "mathjs";
import type { BigNumber } from "mathjs";
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { termsOf } from "./terms.ts";
import type { SystemDerivation } from "../../../solver/index.ts";
import { newtonOf, unknownsOf } from "./equations.ts";
import { at, sizeAt } from "./linear.ts";
import { modelOf } from "./read.ts";
import type { Model } from "./read.ts";
import { reportedBy } from "./reported.ts";
import type { Reported } from "./reported.ts";
import { accelerationScale, forceScale, heldIn } from "./states.ts";
import type { Held } from "./states.ts";

/** Of the sizes of an equation's terms, or of the forces about a force. */
const RELATIVE = 1e-9;
/** Of the largest force or acceleration: what doubles leave of a zero. */
const ROUNDING = 1e-13;
/** What is open by more than this is said to be open; what is open by less than rounding is not; between, either will do. */
const OPEN = 1e-7;
const CORNER = 1e-11;

const long = create(all ?? {}, { number: "BigNumber", precision: 64 });

/** All complaints about one derivation. */
export function complaints(document: ProblemDocument, derivation: SystemDerivation): string[] {
  const model = modelOf(document);
  const held = heldIn(model);
  const clear = held.filter((h) => h.clearly);
  if (derivation.kind === "impossible")
    return clear.slice(0, 1).map((h) => `is said to be impossible, but ${inWords(h)} holds`);
  if (held.length === 0) return [`is said to be ${derivation.kind}, but no states hold`];
  const reported = reportedBy(derivation, model);
  const mine = held.find((h) => [...h.states].every(([id, s]) => reported.states.get(id) === s));
  if (mine === undefined)
    return [`${[...reported.states.values()].join(", ")} does not hold, but ${held.map(inWords).join(" or ")}`];
  return [
    ...ofValues(model, mine, reported, derivation.kind),
    ...ofExactFaces(derivation),
    ...(Object.values(reported.values).includes(null) ? [] : ofResiduals(model, mine, reported)),
    ...ofRivals(model, mine, held, derivation),
  ];
}

const inWords = (h: Held): string => [...h.states.values()].join(", ");

/** How large an unknown is, or what is about it. */
function scaleOf(model: Model, mine: Held, name: string): number {
  const { point } = mine.solved;
  const [kind, id = ""] = name.split(":");
  const newton = newtonOf(model);
  return kind === "x" || kind === "y" ? accelerationScale(model, newton, point) : forceScale(newton, id, point);
}

/** Values against the formulation's own, and, where all is determined, against mathjs lusolve on its matrix. */
function ofValues(model: Model, mine: Held, { values }: Reported, kind: string): string[] {
  const names = unknownsOf(model);
  const judge = mine.solved.steps.length === 0 ? byLusolve(model, mine, names) : null;
  let open = 0;
  const wrong = names.flatMap((name): string[] => {
    const scale = scaleOf(model, mine, name);
    const [least, largest] = mine.range({ [name]: 1 });
    const ours = values[name] ?? null;
    if (largest - least > OPEN * scale) {
      open++;
      return ours === null ? [] : [`${name} is said to be ${ours}, but is open from ${least} to ${largest}`];
    }
    if (ours === null) return largest - least > CORNER * scale ? [] : [`${name} is said to be open, but is ${least}`];
    const tolerance = RELATIVE * scale;
    if (!(ours >= least - tolerance && ours <= largest + tolerance))
      return [`${name} is said to be ${ours}, but is ${least}`];
    if (judge === null || Math.abs(ours - (judge.doubles.get(name) ?? NaN)) <= tolerance) return [];
    // Beside masses that are very far apart, lusolve in doubles has few figures left; with 64 digits it has enough.
    const theirs = judge.digits().get(name) ?? NaN;
    return Math.abs(ours - theirs) <= tolerance ? [] : [`${name} is said to be ${ours}, but ${theirs} by lusolve`];
  });
  if (kind === "determined" && open > 0) return [`is said to be determined, but ${open} unknowns are open`, ...wrong];
  if (kind === "under-determined" && !Object.values(values).includes(null))
    return ["is said to be under-determined, but gives everything", ...wrong];
  return wrong;
}

interface Judge {
  readonly doubles: ReadonlyMap<string, number>;
  readonly digits: () => ReadonlyMap<string, number>;
}

/** mathjs lusolve on the square system of the equations that decide, forces in units of the heaviest body's mass, each row as large as 1. */
function byLusolve(model: Model, { equations, solved }: Held, names: readonly string[]): Judge {
  const heaviest = Math.max(...model.bodies.map((b) => b.mass)) || 1;
  const units = names.map((n) => (/^[xy]:/.test(n) ? 1 : heaviest));
  const rows = solved.used.map((i) => {
    const e = equations[i] ?? {};
    const left = names.map((n, j) => (e[n] ?? 0) * (units[j] ?? 1));
    const scale = Math.max(...left.map(Math.abs));
    return { left: left.map((c) => c / scale), right: [-(e[""] ?? 0) / scale] };
  });
  const named = (values: readonly number[]): ReadonlyMap<string, number> =>
    new Map(names.map((n, i) => [n, (values[i] ?? NaN) * (units[i] ?? 1)]));
  const [left, right] = [rows.map((r) => r.left), rows.map((r) => r.right)];
  return {
    doubles: named((lusolve(left, right) as number[][]).map((row) => row[0] ?? NaN)),
    digits: () => {
      const exact = (m: readonly (readonly number[])[]): BigNumber[][] =>
        m.map((row) => row.map((c) => long.bignumber(c)));
      return named((long.lusolve(exact(left), exact(right)) as BigNumber[][]).map((row) => Number(row[0])));
    },
  };
}

/** Newton's laws and the constraints at the reported values, and the inequalities of the reported states. */
function ofResiduals(model: Model, mine: Held, reported: Reported): string[] {
  const point = reported.values as Readonly<Record<string, number>>;
  const newton = newtonOf(model);
  const most = {
    force: Math.max(...newton.map((e) => sizeAt(e, point))),
    acceleration: accelerationScale(model, newton, point),
  };
  const residuals = mine.equations.flatMap((e, i) => {
    const isForce = Object.keys(e).some((n) => n !== "" && !/^[xy]:/.test(n));
    const scale = isForce ? 1 : Math.max(0, ...Object.entries(e).map(([n, c]) => (n === "" ? 0 : Math.abs(c))));
    const allowed = RELATIVE * sizeAt(e, point) + ROUNDING * scale * most[isForce ? "force" : "acceleration"];
    return Math.abs(at(e, point)) <= allowed ? [] : [`equation ${i} is off by ${at(e, point)} of ${sizeAt(e, point)}`];
  });
  const failing = mine.slackAt(point).filter((q) => q.margin < -RELATIVE);
  return [...residuals, ...failing.map((q) => `${q.what} fails its inequality by ${-q.margin}`)];
}

function ofExactFaces({ answers }: SystemDerivation): string[] {
  return answers.flatMap(({ id, decimal, exact }) => {
    if (exact === null || decimal === null) return [];
    const { total, size } = termsOf(exact.newtons);
    return Math.abs(total - decimal) <= 1e-12 * size ? [] : [`${id} is exactly ${total}, but in decimals ${decimal}`];
  });
}

/**
 * Other states that hold as well with other answers, unless the derivation says that there are such. What rests where it may is no rival of what slips
 * though it need not: that is static friction's own rule; the same goes for ropes that could be slack and surfaces that could be left.
 */
function ofRivals(model: Model, mine: Held, held: readonly Held[], { system }: SystemDerivation): string[] {
  const first = firstsOf(mine);
  const others = held.filter((h) => h !== mine && h.clearly && differ(model, mine, h));
  const rivals = others.filter((h) => ![...firstsOf(h)].every((f) => first.has(f)));
  const better = rivals.find((h) => [...first].every((f) => firstsOf(h).has(f)));
  if (better !== undefined) return [`${inWords(better)} holds, but what need not slip slips in ${inWords(mine)}`];
  if (system.rival !== null)
    return rivals.length > 0 ? [] : [`another case is said to hold, but none does beside ${inWords(mine)}`];
  return rivals
    .slice(0, 1)
    .map((h) => `${inWords(h)} holds as well as ${inWords(mine)}, with other answers, and nothing is said of it`);
}

const firstsOf = ({ states }: Held): ReadonlySet<string> =>
  new Set(
    [...states].flatMap(([id, s]) => [
      ...(s === "slack" || s === "lifted" ? [] : [`${id} holds`]),
      ...(s === "stuck" ? [`${id} sticks`] : []),
    ]),
  );

function differ(model: Model, mine: Held, other: Held): boolean {
  return unknownsOf(model).some((name) => {
    const [a, b] = mine.range({ [name]: 1 });
    const [c, d] = other.range({ [name]: 1 });
    const scale = OPEN * scaleOf(model, mine, name);
    return c < a - scale || d > b + scale;
  });
}
