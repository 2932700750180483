// From a derivation to the scene that pictures are drawn from: a change of form, nothing is worked out.
import { toFigures, withUnit } from "../../shared/format/index.ts";
import type { Derivation, HangingDerivation } from "../../solver/index.ts";
import type { DiagramScene, QuantityLabel, SceneRope } from "./scene.ts";

const ANGLE_LETTERS: Readonly<Record<string, string>> = { alpha: "α", beta: "β", gamma: "γ", delta: "δ" };

/** The symbol of a tension: T1 is T with subscript 1, left is T with that word below. */
export function tensionLabel(id: string): QuantityLabel {
  const match = /^([A-Za-z])(\d*)$/.exec(id);
  return match === null ? { letter: "T", sub: id } : { letter: match[1] ?? "T", sub: match[2] ?? "" };
}

/** The scene of one load on ropes. Throws for a set-up of another kind, which has pictures of its own. */
export function sceneOf(d: Derivation): DiagramScene {
  if (d.model !== "hanging") throw new Error("these pictures are of one load on ropes");
  return hangingScene(d);
}

/** The scene, numbers to the derivation's own figures. */
function hangingScene(d: HangingDerivation): DiagramScene {
  const { body } = d.world;
  const { figures, mark } = d.settings;
  const print = (x: number, unit: string): string => withUnit(toFigures(x, figures, { mark }), unit);
  const mass = body.mass?.decimal ?? 0;
  const acceleration = { x: body.acceleration.x.decimal, y: body.acceleration.y.decimal };
  const free = d.kind === "slack" && d.slack.length < d.world.ropes.length;
  const ropes = d.world.ropes.map((rope): SceneRope => {
    const tension = d.answers.find((a) => a.id === rope.id)?.decimal ?? null;
    const degrees = (rope.acute.radians * 180) / Math.PI;
    return {
      id: rope.id,
      label: tensionLabel(rope.id),
      number: rope.number,
      angleLetter: ANGLE_LETTERS[rope.angle] ?? rope.angle,
      degrees,
      degreesText:
        rope.acute.degrees === null
          ? print(degrees, "°")
          : `${String(rope.acute.degrees.valueOf()).replace(".", mark)}°`,
      side: rope.side,
      rise: rope.rise,
      anchor: rope.anchor,
      length: rope.length,
      state: !free ? "taut" : d.slack.includes(rope.id) ? "slack" : "free",
      tension,
      tensionText: tension === null ? null : print(tension, "N"),
    };
  });
  return {
    bodyName: body.name,
    weight: body.weight.decimal,
    weightLabel: body.givenBy === "mass" ? "mg" : "W",
    weightText: print(body.weight.decimal, "N"),
    netForce: { x: mass * acceleration.x, y: mass * acceleration.y },
    acceleration,
    ropes,
    position: d.result.position,
    theta: free ? thetaOf(d, print) : null,
    solved: d.kind === "taut" || d.kind === "slack",
  };
}

function thetaOf(d: HangingDerivation, print: (x: number, unit: string) => string): DiagramScene["theta"] {
  const radians = d.result.attempts.at(-1)?.values.symbols.get("theta")?.decimal;
  if (radians === undefined) return null;
  const degrees = (radians * 180) / Math.PI;
  return { degrees, text: print(degrees, "°") };
}
