// From a derivation to the scene that pictures are drawn from: a change of form, nothing is worked out.
import type { Derivation, HangingDerivation } from "../../solver/index.ts";
import { angleLetter, Prints } from "./prints.ts";
import type { DiagramScene, QuantityLabel, SceneRope } from "./scene.ts";

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
  const prints = new Prints(d.settings);
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
      angleLetter: angleLetter(rope.angle),
      degrees,
      degreesText: prints.angle(rope.acute),
      side: rope.side,
      rise: rope.rise,
      anchor: rope.anchor,
      length: rope.length,
      state: !free ? "taut" : d.slack.includes(rope.id) ? "slack" : "free",
      tension,
      tensionText: tension === null ? null : prints.found(tension, "N"),
    };
  });
  return {
    bodyName: body.name,
    weight: body.weight.decimal,
    weightLabel: body.givenBy === "mass" ? "mg" : "W",
    weightText: prints.found(body.weight.decimal, "N"),
    netForce: { x: mass * acceleration.x, y: mass * acceleration.y },
    acceleration,
    ropes,
    position: d.result.position,
    theta: free ? thetaOf(d, prints) : null,
    solved: d.kind === "taut" || d.kind === "slack",
  };
}

function thetaOf(d: HangingDerivation, prints: Prints): DiagramScene["theta"] {
  const radians = d.result.attempts.at(-1)?.values.symbols.get("theta")?.decimal;
  if (radians === undefined) return null;
  const degrees = (radians * 180) / Math.PI;
  return { degrees, text: prints.found(degrees, "°") };
}
