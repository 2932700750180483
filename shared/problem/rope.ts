import { equalDirections, opposite } from "./direction.ts";
import type { Body, Direction, Pull, Rope } from "./types.ts";

/** All places where a rope pulls, in the order along it. */
export function pullsOf(rope: Rope): readonly Pull[] {
  return [{ on: rope.on, direction: rope.direction }, ...rope.further];
}

/** The other pull of a rope that goes straight to the body `on` in this direction. */
export function straightTo(on: string, direction: Direction): Pull {
  return { on, direction: opposite(direction) };
}

/** The id of the body to which a rope goes straight from its first one; null where it ends at a support or goes over a pulley. */
export function joinedBody(rope: Rope): string | null {
  const [other, ...rest] = rope.further;
  if (other === undefined || rest.length > 0) return null;
  return equalDirections(other.direction, opposite(rope.direction)) ? other.on : null;
}

/** Whether places give a rope's direction: it is tied to a support at a place, or joins two bodies that both have one. */
export function isPlaced(rope: Rope, bodies: readonly Body[]): boolean {
  const to = joinedBody(rope);
  const hasPlace = (id: string): boolean => bodies.some((body) => body.id === id && body.at !== null);
  return rope.anchor !== null || (to !== null && hasPlace(rope.on) && hasPlace(to));
}
