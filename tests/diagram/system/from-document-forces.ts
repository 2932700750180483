/**
 * The forces on a body of a problem document, with their sizes where the oracle knows them; and the letters of both.
 */
import { letter, words, type Run, type SystemForce, type SystemScene } from "../../../src/diagram/index.ts";
import type { OracleAnswer } from "../../crosscheck/fixture.ts";
import { printed } from "../two-ropes.ts";

const rad = Math.PI / 180;

/** A letter with digits behind it lowered. */
export function named(id: string, otherwise = "T"): Run[] {
  const match = /^([A-Za-z])(\d*)$/.exec(id);
  const [first, sub] = match === null ? [otherwise, id] : [match[1] ?? otherwise, match[2] ?? ""];
  return [letter(first), ...(sub === "" ? [] : [{ text: sub, face: "word", level: "sub" } as const])];
}

/** The acute angle with the level line, printed, and a letter for each size of it. */
export class Angles {
  readonly #letters = new Map<string, string>();

  of(degrees: number): { degreesText: string | null; angleLetter: string } {
    const acute = Math.abs(Math.asin(Math.min(1, Math.abs(Math.sin(degrees * rad)))) / rad);
    if (acute < 1e-9 || acute > 90 - 1e-5) return { degreesText: null, angleLetter: "" };
    const text = `${printed(Number(acute.toFixed(6)))}°`;
    const known = this.#letters.get(text) ?? ["α", "β", "γ", "δ", "θ", "φ"][this.#letters.size] ?? "φ";
    this.#letters.set(text, known);
    return { degreesText: text, angleLetter: known };
  }
}

/** An answer's value. */
export function sizeOf(answer: OracleAnswer, id: string): number | null {
  const value = answer.answers[id];
  return value !== undefined && "decimal" in value ? Number(value.decimal) : null;
}

const frictionOf = (id: string): string => (/^N\d*$/.test(id) ? `f${id.slice(1)}` : `${id}f`);

/** A scene without its bodies. */
export type Rest = Pick<SystemScene, "ropes" | "surfaces" | "pushes" | "frame">;

/** With the angle that its lines would speak of: a tension's from the level line, the weight's from the axis across a slope. */
export function withAngle(force: SystemForce, axis: number, angles: Angles): SystemForce {
  if (axis !== 0 && force.kind === "weight") {
    const { degreesText, angleLetter } = angles.of(axis);
    const from = Math.sin((axis + 90) * rad) > 0 ? axis - 90 : axis + 90;
    return { ...force, angle: { from, label: [letter(angleLetter), words(` = ${degreesText ?? ""}`)], ref: "theta" } };
  }
  const { degreesText, angleLetter } = angles.of(force.degrees);
  if (axis !== 0 || degreesText === null || (force.kind !== "tension" && force.kind !== "push")) return force;
  const from = Math.cos(force.degrees * rad) > 0 ? 0 : 180;
  return { ...force, angle: { from, label: [letter(angleLetter), words(` = ${degreesText}`)], ref: angleLetter } };
}

/** What forces come to together. */
export function sumOf(forces: readonly SystemForce[]): { x: number; y: number } {
  return forces.reduce(
    (sum, { size, degrees }) => ({
      x: sum.x + (size ?? 0) * Math.cos(degrees * rad),
      y: sum.y + (size ?? 0) * Math.sin(degrees * rad),
    }),
    { x: 0, y: 0 },
  );
}

/** Tensions, normal forces, friction and pushes on a body. */
export function forcesOn(
  id: string,
  { ropes, surfaces, pushes }: Rest,
  answer: OracleAnswer,
  unit: string,
): SystemForce[] {
  const sized = (size: number | null): Pick<SystemForce, "size" | "text" | "given"> => ({
    size,
    text: size === null ? null : `${printed(size)} ${unit}`,
    given: false,
  });
  const tensions = ropes.flatMap(
    (rope) =>
    rope.pulls
      .filter((pull) => pull.on === id)
      .map(({ degrees }): SystemForce => ({ ref: rope.id, kind: "tension", label: rope.label, degrees, ...sized(sizeOf(answer, rope.id)) })), // prettier-ignore
  );
  const contacts = surfaces.flatMap((surface) => {
    const sense = surface.on === id ? 0 : surface.of === id ? 180 : null;
    if (sense === null || !surface.touching) return [];
    const normal: SystemForce = { ref: surface.id, kind: "normal", label: named(surface.id, "N"), degrees: surface.normal + sense, ...sized(sizeOf(answer, surface.id)) }; // prettier-ignore
    if (!surface.rough) return [normal];
    const along = sizeOf(answer, frictionOf(surface.id));
    const friction: SystemForce = {
      ref: frictionOf(surface.id),
      kind: "friction",
      label: named(frictionOf(surface.id), "f"),
      degrees: surface.degrees + sense + ((along ?? -1) < 0 ? 180 : 0),
      ...sized(along === null ? null : Math.abs(along)),
    };
    return [normal, friction];
  });
  const byHand = pushes
    .filter((push) => push.on === id)
    .map((push): SystemForce => ({
      ref: push.id,
      kind: "push",
      label: push.label,
      degrees: push.degrees,
      ...(push.text === null
        ? sized(sizeOf(answer, push.id))
        : { size: parseFloat(push.text.replace("−", "-")), text: push.text, given: true }),
    }));
  return [...tensions, ...contacts, ...byHand];
}
