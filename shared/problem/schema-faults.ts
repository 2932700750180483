import type * as z from "zod/mini";
import { describe, onOneLine, quote } from "./fault.ts";
import type { Fault } from "./fault.ts";

/** So many faults are told at once; more would help nobody. */
const MOST_FAULTS = 20;
const LONGEST_KEY = 40;

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** The schema library's complaints as faults: one for each place, with what stands there. */
export function faultsOf(issues: readonly Issue[], document: unknown): readonly Fault[] {
  const faults = new Map<string, Fault>();
  for (const fault of issues.flatMap((issue) => read(issue, document, []))) {
    // Several rules can fail at one place; they all accept the same thing.
    const key = `${fault.path} ${fault.accepted}`;
    if (!faults.has(key)) faults.set(key, fault);
  }
  return [...faults.values()].slice(0, MOST_FAULTS);
}

function read(issue: Issue, document: unknown, above: Path): Fault[] {
  const path = [...above, ...issue.path];
  const value = valueAt(document, path);
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => ({
      path: pointer([...path, key]),
      found: `the unknown key ${quote(key)}`,
      accepted: issue.message,
    }));
  }
  const meant = issue.code === "invalid_union" ? meantOf(issue.errors, value) : null;
  return meant === null
    ? [{ path: pointer(path), found: describe(value), accepted: issue.message }]
    : meant.flatMap((one) => read(one, document, path));
}

/**
 * The complaints of the way of writing that a value means: the one with the fewest unknown keys, and of those the one
 * with the fewest complaints. Null where it means none, or where the ways are not told apart by keys.
 */
function meantOf(ways: readonly (readonly Issue[])[], value: unknown): readonly Issue[] | null {
  const keys = typeof value === "object" && value !== null && !Array.isArray(value) ? Object.keys(value).length : 0;
  const known = ways.filter((issues) => isAboutKeys(issues) && unknownKeys(issues) < keys);
  const order = (one: readonly Issue[], other: readonly Issue[]): number =>
    unknownKeys(one) - unknownKeys(other) || one.length - other.length;
  return known.toSorted(order)[0] ?? null;
}

function isAboutKeys(issues: readonly Issue[]): boolean {
  return issues.every(
    (issue) => issue.path.length > 0 || issue.code === "unrecognized_keys" || issue.code === "custom",
  );
}

function unknownKeys(issues: readonly Issue[]): number {
  return issues.reduce(
    (sum, issue) => sum + (issue.code === "unrecognized_keys" && issue.path.length === 0 ? issue.keys.length : 0),
    0,
  );
}

/** Own properties only: a document may be named after what every object has. */
function valueAt(document: unknown, path: Path): unknown {
  let value = document;
  for (const key of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return value;
}

/** A JSON pointer (RFC 6901), on one line; a key that is long is cut. */
function pointer(path: Path): string {
  return path
    .map((key) => `/${onOneLine(String(key).slice(0, LONGEST_KEY)).replaceAll("~", "~0").replaceAll("/", "~1")}`)
    .join("");
}
