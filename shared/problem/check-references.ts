import { quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { joinedBody, pullsOf } from "./rope.ts";
import type { Problem, Rope } from "./types.ts";

/** Every body that is named is there, and is another one where it has to be. */
export function checkReferences(problem: Problem): Fault[] {
  const ids = problem.bodies.map((body) => body.id);
  const known = (path: string, id: string): Fault[] => {
    if (ids.includes(id)) return [];
    return [{ path, found: quote(id), accepted: idOf(ids) }];
  };
  const another = (path: string, id: string, self: string): Fault[] => {
    const others = ids.filter((other) => other !== self);
    if (others.includes(id)) return [];
    const found = id === self ? `${quote(id)}, the body itself` : quote(id);
    const accepted = others.length === 0 ? "the id of another body, of which there is none" : idOf(others);
    return [{ path, found, accepted }];
  };
  return [
    ...problem.ropes.flatMap((rope, index) =>
      ownersOf(rope).flatMap(({ key, on }) => known(`/ropes/${index}/${key}`, on)),
    ),
    ...problem.surfaces.flatMap(({ on, of }, index) => [
      ...known(`/surfaces/${index}/on`, on),
      ...(of === null ? [] : another(`/surfaces/${index}/of`, of, on)),
    ]),
    ...problem.pushes.flatMap(({ on }, index) => known(`/pushes/${index}/on`, on)),
    ...problem.bodies.flatMap(({ id, motion }, index) =>
      motion.kind !== "line" || motion.seenFrom === null
        ? []
        : another(`/bodies/${index}/motion/seenFrom`, motion.seenFrom, id),
    ),
    ...checkSeenInTurn(problem),
  ];
}

function idOf(ids: readonly string[]): string {
  return `the id of a body: ${ids.map(quote).join(", ")}`;
}

/** Where a rope's document names a body: "on" and "to", or "pulls/0/on" and so on. */
function ownersOf(rope: Rope): readonly { readonly key: string; readonly on: string }[] {
  const to = joinedBody(rope);
  const first = { key: "on", on: rope.on };
  if (rope.further.length === 0) return [first];
  if (to !== null) return [first, { key: "to", on: to }];
  return pullsOf(rope).map(({ on }, index) => ({ key: `pulls/${index}/on`, on }));
}

/** No body is seen from one that is, in the end, seen from itself. */
function checkSeenInTurn({ bodies }: Problem): Fault[] {
  const from = new Map(bodies.map(({ id, motion }) => [id, motion.kind === "line" ? motion.seenFrom : null] as const));
  return bodies.flatMap(({ id }, index) => {
    const seen = new Set<string>();
    let next = from.get(id) ?? null;
    while (next !== null && next !== id && !seen.has(next)) {
      seen.add(next);
      next = from.get(next) ?? null;
    }
    if (next !== id || seen.size === 0) return [];
    const found = `${quote([...seen][0] ?? "")}, which is itself seen from ${quote(id)}`;
    return [{ path: `/bodies/${index}/motion/seenFrom`, found, accepted: "a body that is not seen from this one" }];
  });
}
