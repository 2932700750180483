// A derivation with a page's settings.
import type { DocumentSettings } from "../../shared/link/document-link.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import type { Derivation } from "../../solver/index.ts";

/** The settings that a page starts with. */
export const startSettings: DocumentSettings = { figures: 3, firstAxis: "vertical", axes: "along", mark: "point" };

/** Derives a problem, written as the page's settings say. */
export function derivationWith(problem: Problem, { figures, firstAxis, axes, mark }: DocumentSettings): Derivation {
  const written = { figures, firstAxis, axes, mark: mark === "comma" ? "," : "." } as const;
  return derive(problem, { ...defaultSettings, ...written });
}
