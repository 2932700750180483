// A published case of a general set-up: the problem as a document or a few, and what the source prints.
import type { DirectionDocument, ProblemDocument, RopeDocument } from "../../../shared/problem/index.ts";

/**
 * The answers of the documents so far: the decimal of an answer by its id, of the first document unless said otherwise.
 * "largest P" is how large the push P of given size may be before something slides.
 */
export type Answered = (id: string, document?: number) => number;

/** A printed value, and how it comes from the answers. */
export interface Found {
  /** What the source calls it, or the formula by which it follows from the answers. */
  readonly what: string;
  readonly of: (answer: Answered) => number;
  readonly value: number;
  readonly figures: number;
}

/** Whether a value rounds to the printed one: within half a unit of its last significant figure. */
export function agrees(value: number, { value: printed, figures }: Pick<Found, "value" | "figures">): boolean {
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(printed))) + 1 - figures);
  return Math.abs(value - printed) <= unit * 0.5000001;
}

/** A case as the source gives it; a later document may take answers of the ones before. */
export interface SetUpCase {
  readonly id: string;
  readonly source: string;
  readonly grade: "A" | "B";
  /** Where the value was read: repository, commit, file and place in it. */
  readonly locator: string;
  readonly documents: readonly [ProblemDocument, ...(ProblemDocument | ((answer: Answered) => ProblemDocument))[]];
  readonly found: readonly [Found, ...Found[]];
  /** The state that the source says a rope or a surface is in. */
  readonly states?: Readonly<Record<string, string>>;
}

/** An answer as the source prints it: its size, to so many figures. */
export const prints = (id: string, value: number, figures: number, document = 0): Found => ({
  what: id,
  of: (answer) => answer(id, document),
  value,
  figures,
});

/** A value that follows from answers by a formula. */
export const follows = (what: string, of: (answer: Answered) => number, value: number, figures: number): Found => ({
  what,
  of,
  value,
  figures,
});

/** Where numbers of one document go into the next: all their digits. */
export const written = (value: number): string => value.toPrecision(17);

export const RIGHT: DirectionDocument = { angle: 0 };
export const LEFT: DirectionDocument = { angle: 180 };
export const UP: DirectionDocument = { angle: 90 };
export const DOWN: DirectionDocument = { angle: -90 };

/** A rope over fixed pulleys that pulls bodies one after the other. */
export const over = (
  id: string,
  ...pulls: readonly (readonly [on: string, direction: DirectionDocument])[]
): RopeDocument => ({
  id,
  pulls: pulls.map(([on, direction]) => ({ on, direction })),
});

/** The sources that several cases share. */
export const OPENSTAX = "University Physics Volume 1, OpenStax (Ling, Sanny, Moebs), online edition as of 2026";
export const COLLEGE = "College Physics 2e, OpenStax, online edition as of 2026";
export const BANSAL = "R. K. Bansal, A Textbook of Engineering Mechanics (Laxmi Publications)";
export const KHURMI = "R. S. Khurmi, A Textbook of Engineering Mechanics (S. Chand)";
export const TAYAL = "A. K. Tayal, Engineering Mechanics: Statics and Dynamics, 14th ed. (Umesh Publications, 2010)";
export const HIBBELER =
  "R. C. Hibbeler and A. Gupta, Engineering Mechanics: Statics and Dynamics (11th-ed. Indian adaptation, Pearson)";
export const NCERT =
  "NCERT, Physics Textbook for Class XI Part I (National Council of Educational Research and Training, New Delhi)";
export const SCHAUM =
  "E. W. Nelson / W. G. McLean, Engineering Mechanics: Statics and Dynamics, Schaum, 5th ed. (McGraw-Hill, 1997)";
export const HARTOG = "J. P. Den Hartog, Mechanics (McGraw-Hill 1948; Dover reprint)";
export const BUECHE = "F. J. Bueche, Principles of Physics (McGraw-Hill, ISBN 0070088179)";

/** Places in the books' own sources. */
export const openstax = (module: string, item: string): string =>
  `openstax/osbooks-university-physics-bundle @d0ed34a modules/${module} #${item}`;
export const college = (module: string, item: string): string =>
  `openstax/osbooks-college-physics-bundle @fd1b25d modules/${module} #${item}`;
export const companion = (path: string): string => `FOSSEE/Python-Textbook-Companions @d34b2ae ${path}`;
