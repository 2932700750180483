// Values for the lines of an attempt that cannot hold, so that each line but the contradiction is true at them.
import type { World } from "../1-bodies/types.ts";
import type { Component } from "../3-equations/types.ts";
import type { AttemptInput } from "./attempt-input.ts";
import type { AttemptValues } from "./values.ts";
import { addComponents } from "./values.ts";

/** Sizes that two straight ropes would need, pushing allowed (Cramer's rule), with their components. Two ropes that are not along one line. */
export function pullValues(world: World, values: AttemptValues, components: readonly Component[]): void {
  const [a, b] = world.ropes;
  if (a === undefined || b === undefined) return;
  const mass = world.body.mass?.decimal ?? 0;
  const fx = mass * world.body.acceleration.x.decimal;
  const fy = upwardNeed(world);
  const [ax, ay] = [a.side * a.acute.cosine.decimal, a.rise * a.acute.sine.decimal];
  const [bx, by] = [b.side * b.acute.cosine.decimal, b.rise * b.acute.sine.decimal];
  const turn = ax * by - ay * bx;
  values.symbols.set(a.id, { decimal: (fx * by - fy * bx) / turn, exact: null });
  values.symbols.set(b.id, { decimal: (ax * fy - ay * fx) / turn, exact: null });
  addComponents(values, components);
}

/** m(g + ay) in newtons, exactly zero in free fall. */
const upwardNeed = (world: World): number =>
  world.body.lift === 0
    ? 0
    : (world.body.mass?.decimal ?? 0) * (world.gravity.decimal + world.body.acceleration.y.decimal);

/** Component sizes for ropes along one line that cannot do it: on each axis the first component takes all that is needed; an axis without any leaves the acceleration it would have. */
export function failedValues(input: AttemptInput, values: AttemptValues): void {
  const mass = input.world.body.mass?.decimal ?? 0;
  for (const law of input.laws) {
    const letter = law.axis === 0 ? "ax" : "ay";
    const a = values.symbols.get(letter)?.decimal ?? 0;
    const pull = law.axis === 1 ? upwardNeed(input.world) : mass * a;
    if (law.components.length === 0)
      values.symbols.set(letter, { decimal: law.axis === 1 ? -input.world.gravity.decimal : 0, exact: null });
    law.components.forEach((c, i) => values.symbols.set(c.id, { decimal: i === 0 ? c.sign * pull : 0, exact: null }));
  }
}
