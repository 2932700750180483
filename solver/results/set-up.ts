// The answers of a set-up: tensions, normal forces, frictions, pushes to be found, accelerations.
import { divide, isZero, zero as ZERO } from "../../shared/exact/index.ts";
import type { SetUpResult } from "../cases/index.ts";
import { exactly } from "../algebra/evaluate.ts";
import { symbol } from "../algebra/expr.ts";
import { unitOfLetter } from "../4-steps/index.ts";
import type { Answer } from "./index.ts";

/** Every size asked for, in the order of the set-up. What is slack or does not touch is 0; what is not determined has no decimal. */
export function setUpAnswers(result: SetUpResult): readonly Answer[] {
  const { setUp, inForce } = result;
  const { hypothesis } = inForce;
  const impossible = result.kind === "impossible";
  const heavy = setUp.bodies.filter((b) => !b.massless);
  const weight = heavy.length === 1 ? (heavy[0]?.weight.exact ?? null) : null;
  const open = new Set(inForce.open.filter((id) => !inForce.settled.has(id)));
  const answer = (id: string, zero = false): Answer => {
    const unit = unitOfLetter(setUp, id);
    if (impossible || open.has(id)) return { id, unit, decimal: null, exact: null, letters: null };
    if (zero) return { id, unit, decimal: 0, exact: { newtons: ZERO, perWeight: null }, letters: null };
    const decimal = inForce.values.symbols.get(id)?.decimal ?? null;
    const newtons = exactly(symbol(id), inForce.values);
    const isForce = unit === "N" || unit === "lbf";
    const perWeight =
      newtons === null || weight === null || isZero(weight) || !isForce ? null : divide(newtons, weight);
    return { id, unit, decimal, exact: newtons === null ? null : { newtons, perWeight }, letters: null };
  };
  const ropes = setUp.ropes.map((r) => answer(r.id, hypothesis.ropes[r.id] === "slack"));
  const contacts = setUp.contacts.flatMap((c) => {
    const state = hypothesis.contacts[c.id];
    const lifted = state?.touch === "lifted";
    const rough = c.staticFriction !== null;
    return [answer(c.id, lifted), ...(rough ? [answer(c.friction, lifted)] : [])];
  });
  const pushes = setUp.pushes.filter((p) => p.size === null).map((p) => answer(p.id));
  return [...ropes, ...contacts, ...pushes, ...accelerations(result).map(({ id, still }) => answer(id, still))];
}

/** Letters of accelerations to be found, also of those along a line that the case in force keeps still. */
function accelerations({ setUp, inForce }: SetUpResult): { readonly id: string; readonly still: boolean }[] {
  return setUp.bodies.flatMap((body): { readonly id: string; readonly still: boolean }[] => {
    const own = inForce.equations.motions.find((m) => m.body === body.id)?.own ?? [];
    const unknown = own.filter((p) => p.unknown && p.letter.startsWith(body.letters.acceleration));
    const mine = unknown.filter((p) => /^[xy]?$/.test(p.letter.slice(body.letters.acceleration.length)));
    if (mine.length > 0) return mine.map((p) => ({ id: p.letter, still: false }));
    const { freedom } = body;
    return freedom.kind === "line" && freedom.value === null ? [{ id: body.letters.acceleration, still: true }] : [];
  });
}
