import type * as z from "zod/mini";
import { describe, onOneLine, quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { directionMeant } from "./schema-document.ts";

/** So many faults are told at once; more would help nobody. */
const MOST_FAULTS = 20;
const LONGEST_KEY = 40;

type Issue = z.core.$ZodIssue;

/** The schema library's complaints as faults: one for each place, with what stands there. */
export function faultsOf(issues: readonly Issue[], document: unknown): readonly Fault[] {
  const faults = new Map<string, Fault>();
  for (const fault of issues.flatMap((issue) => readTop(issue, document))) {
    // Several rules can fail at one place; they all accept the same thing.
    const key = `${fault.path} ${fault.accepted}`;
    if (!faults.has(key)) faults.set(key, fault);
  }
  return [...faults.values()].slice(0, MOST_FAULTS);
}

function readTop(issue: Issue, document: unknown): Fault[] {
  const [list, index, key] = issue.path;
  const again =
    list === "ropes" && index !== undefined && key === "direction" ? readDirection(document, [list, index, key]) : null;
  return again ?? read(issue, document, []);
}

/** A direction is a choice of three; its faults are asked again of the one that it means. */
function readDirection(document: unknown, path: readonly PropertyKey[]): Fault[] | null {
  const value = valueAt(document, path);
  if (typeof value !== "object" || value === null) return null;
  const checked = directionMeant(value)?.safeParse(value);
  if (checked === undefined || checked.success) return null;
  return checked.error.issues.flatMap((issue) => read(issue, document, path));
}

function read(issue: Issue, document: unknown, above: readonly PropertyKey[]): Fault[] {
  const path = [...above, ...issue.path];
  const value = valueAt(document, path);
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => ({
      path: pointer([...path, key]),
      found: `the unknown key ${quote(key)}`,
      accepted: issue.message,
    }));
  }
  return [{ path: pointer(path), found: describe(value), accepted: issue.message }];
}

/** Own properties only: a document may be named after what every object has. */
function valueAt(document: unknown, path: readonly PropertyKey[]): unknown {
  let value = document;
  for (const key of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return value;
}

/** A JSON pointer (RFC 6901), on one line; a key that is long is cut. */
function pointer(path: readonly PropertyKey[]): string {
  return path
    .map((key) => `/${onOneLine(String(key).slice(0, LONGEST_KEY)).replaceAll("~", "~0").replaceAll("/", "~1")}`)
    .join("");
}
