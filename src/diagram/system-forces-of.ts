// The forces of a set-up's derivation as its pictures show them: letter, direction, size, and the angle that the laws speak of.
import { unitNames } from "../../shared/format/index.ts";
import type { SystemDerivation } from "../../solver/index.ts";
import { turnBetween } from "./direction.ts";
import { letter, symbol, words, type Run } from "./label.ts";
import { angleRuns, type Prints } from "./prints.ts";
import { tensionLabel } from "./scene-of.ts";
import type { ForceAngle, SystemForce } from "./system-scene.ts";

type System = SystemDerivation["system"];
type Body = System["setUp"]["bodies"][number];
type Force = System["inForce"]["forces"][number];
/** A direction of the set-up. */
export type Direction = Force["toward"];

/** Degrees anticlockwise from the x axis, in (-180, 180]. */
export const degreesOf = ({ heading, quarters }: Direction): number =>
  turnBetween(0, heading.degrees + 90 * quarters) + 0;

/** Whether a direction is neither level nor upright. */
export const isOblique = ({ heading }: Direction): boolean => heading.angle !== "";

/** The forces of a derivation, body by body. */
export class SystemForces {
  readonly #d: SystemDerivation;
  readonly #prints: Prints;
  readonly #open: ReadonlySet<string>;

  constructor(d: SystemDerivation, prints: Prints) {
    this.#d = d;
    this.#prints = prints;
    const { inForce } = d.system;
    this.#open = new Set(inForce.open.filter((id) => !inForce.settled.has(id)));
  }

  /** What a letter is worth; null where nothing determines it. */
  size(id: string): number | null {
    const { inForce, kind } = this.#d.system;
    if (kind === "impossible" || this.#open.has(id)) return null;
    return inForce.values.symbols.get(id)?.decimal ?? null;
  }

  /** The forces on a body. */
  on(body: Body): SystemForce[] {
    return this.#d.system.inForce.forces
      .filter((force) => force.on === body.id)
      .map((force) => this.#force(force, body));
  }

  #force(force: Force, body: Body): SystemForce {
    const { ref, kind, toward } = force;
    const unit = unitNames[this.#d.system.setUp.units].force;
    const given = force.unknown === null;
    const size = kind === "weight" ? body.weight.decimal : this.size(ref);
    const stated = this.#d.problem.pushes.find(({ id }) => id === ref)?.size ?? null;
    const text =
      size === null ? null : stated === null ? this.#prints.found(size, unit) : this.#prints.given(stated, unit);
    return {
      ref,
      kind,
      label: kind === "weight" ? weightRuns(body) : symbol(tensionLabel(ref)),
      degrees: degreesOf(toward),
      size,
      text,
      given,
      angle: this.#angle(toward, body),
    };
  }

  /** The angle between a force and the nearest axis, where one letter says it. */
  #angle(toward: Direction, body: Body): ForceAngle | null {
    const axes = this.#d.system.inForce.equations.axes.find((one) => one.body === body.id);
    if (axes === undefined) return null;
    const [own, tilted] = [toward.heading.angle, axes.x.heading.angle];
    // With both oblique the angle is a difference of two letters, or none.
    if ((own === "") === (tilted === "")) return null;
    const name = own === "" ? tilted : own;
    const value = this.#d.system.setUp.angles.get(name);
    if (value === undefined) return null;
    const degrees = degreesOf(toward);
    const size = (value.radians * 180) / Math.PI;
    const from = [axes.x, axes.y]
      .flatMap((axis) => [degreesOf(axis), turnBetween(180, degreesOf(axis))])
      .find((axis) => Math.abs(Math.abs(turnBetween(axis, degrees)) - size) < 1e-6);
    if (from === undefined) return null;
    return { from, label: [...angleRuns(name), words(` = ${this.#prints.angle(value)}`)], ref: name };
  }

  /** The symbol of a body's mass times its acceleration. */
  massTimesAcceleration(body: Body): Run[] {
    return [...massRuns(body), ...symbol(tensionLabel(body.letters.acceleration))];
  }
}

function massRuns({ letters, givenBy }: Body): Run[] {
  if (givenBy === "weight") return [...symbol(tensionLabel(letters.weightId)), words("/"), letter("g")];
  return letters.mass.kind === "symbol" ? symbol(tensionLabel(letters.mass.id)) : [letter("m")];
}

function weightRuns(body: Body): Run[] {
  if (body.givenBy === "weight") return symbol(tensionLabel(body.letters.weightId));
  return [...massRuns(body), letter("g")];
}
