/**
 * The public document, format 1, as it is written in a JSON file. `schema.ts` checks it and `problemFromDocument`
 * makes a `Problem` of it.
 */

/** A number as a JSON number of at most 15 significant digits, or as text ("4.2", "-3/4", "1e-3"). */
export type WrittenNumber = number | string;

/** A whole problem. */
export type ProblemDocument = {
  readonly format: 1;
  readonly gravity: WrittenNumber;
  readonly bodies: readonly BodyDocument[];
  readonly ropes: readonly RopeDocument[];
};

/** A body; exactly one of `mass` (kg) and `weight` (N) is there. `name` defaults to the id, `acceleration` to 0. */
export type BodyDocument = {
  readonly id: string;
  readonly name?: string | undefined;
  readonly mass?: WrittenNumber | undefined;
  readonly weight?: WrittenNumber | undefined;
  readonly acceleration?:
    { readonly x?: WrittenNumber | undefined; readonly y?: WrittenNumber | undefined } | undefined;
};

/** A rope; `on` is the id of a body. */
export type RopeDocument = {
  readonly id: string;
  readonly on: string;
  readonly direction: DirectionDocument;
};

/** An angle from the positive x axis, an angle from straight up towards a side, or a run and a rise. */
export type DirectionDocument =
  | { readonly angle: WrittenNumber }
  | { readonly angle: WrittenNumber; readonly from: "vertical"; readonly side: "left" | "right" }
  | { readonly run: WrittenNumber; readonly rise: WrittenNumber };
