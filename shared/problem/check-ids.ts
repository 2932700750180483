import { quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { isPlainHanging } from "./kinds.ts";
import { frictionId } from "./names.ts";
import { isReservedId, isReservedInSystems } from "./reserved-ids.ts";
import type { Problem, Surface } from "./types.ts";

type Entry = {
  readonly id: string;
  readonly path: string;
  /** The surface whose friction has this id; null for an id that the document gives. */
  readonly frictionOf: string | null;
  readonly mayBeN: boolean;
};

/** Ids: none that means something else, none twice, none that is the component of another. */
export function checkIds(problem: Problem): Fault[] {
  const entries = entriesOf(problem);
  const plain = isPlainHanging(problem);
  return entries.flatMap((entry, index) => {
    const wrong = reservedFault(entry, plain) ?? twinFault(entry, entries.slice(0, index)) ?? stemFault(entry, entries);
    return wrong === null ? [] : [{ path: entry.path, ...wrong }];
  });
}

function entriesOf({ bodies, ropes, surfaces, pushes }: Problem): readonly Entry[] {
  const given = (list: string, items: readonly { readonly id: string }[]): Entry[] =>
    items.map(({ id }, index) => ({ id, path: `/${list}/${index}/id`, frictionOf: null, mayBeN: list === "surfaces" }));
  return [
    ...given("bodies", bodies),
    ...given("ropes", ropes),
    ...given("surfaces", surfaces),
    ...given("pushes", pushes),
    ...surfaces.flatMap(frictionEntry),
  ];
}

function frictionEntry({ id, friction }: Surface, index: number): Entry[] {
  if (friction.static === null && friction.kinetic === null) return [];
  return [{ id: frictionId(id), path: `/surfaces/${index}/id`, frictionOf: id, mayBeN: false }];
}

type Wrong = Omit<Fault, "path"> | null;

function reservedFault({ id, mayBeN }: Entry, plain: boolean): Wrong {
  const reserved = isReservedId(id) && !(mayBeN && id === "N");
  if (!reserved && (plain || !isReservedInSystems(id))) return null;
  return {
    found: quote(id),
    accepted: "an id that is not the name of a function, unit, constant or symbol of a derivation",
  };
}

function twinFault({ id, frictionOf }: Entry, before: readonly Entry[]): Wrong {
  const twin = before.find((other) => other.id === id);
  if (twin === undefined) return null;
  if (frictionOf === null)
    return { found: `${quote(id)}, which ${twin.path} is already`, accepted: "an id of its own" };
  const found = `${quote(frictionOf)}, whose friction is called ${quote(id)}, which ${twin.path} is already`;
  return { found, accepted: "an id whose friction has an id of its own" };
}

function stemFault({ id, frictionOf }: Entry, all: readonly Entry[]): Wrong {
  const stem = all.find((other) => id === `${other.id}x` || id === `${other.id}y`);
  if (stem === undefined || frictionOf !== null) return null;
  const found = `${quote(id)}, which means a component of ${quote(stem.id)}`;
  return { found, accepted: "an id that is not another id with x or y behind it" };
}
