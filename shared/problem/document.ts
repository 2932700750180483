/**
 * The public document, format 1, as it is written in a JSON file. `schema.ts` checks it and `problemFromDocument`
 * makes a `Problem` of it. A key that is absent is the same as one that is undefined.
 */

/** A number as a JSON number of at most 15 significant digits, or as text ("4.2", "-3/4", "1e-3"). */
export type WrittenNumber = number | string;

/** A whole problem; `units` defaults to SI, `frame` to no acceleration, and the lists to nothing. */
export type ProblemDocument = {
  readonly format: 1;
  readonly units?: "SI" | "lbf-ft" | undefined;
  readonly gravity: WrittenNumber;
  readonly frame?: AccelerationDocument | undefined;
  readonly bodies: readonly BodyDocument[];
  readonly ropes?: readonly RopeDocument[] | undefined;
  readonly surfaces?: readonly SurfaceDocument[] | undefined;
  readonly pushes?: readonly PushDocument[] | undefined;
};

/** Two parts of an acceleration, m/s² or ft/s², each 0 unless given. */
export type AccelerationDocument = {
  readonly x?: WrittenNumber | undefined;
  readonly y?: WrittenNumber | undefined;
};

/** A place, m or ft: so far to the right and so far up from a point that all places of the document share. */
export type PlaceDocument = { readonly x: WrittenNumber; readonly y: WrittenNumber };

/**
 * A body. A load has exactly one of `mass` (kg or slug) and `weight` (N or lbf), a pulley at most one, a knot none.
 * `name` defaults to the id. At most one of `acceleration` and `motion` is there.
 */
export type BodyDocument = {
  readonly id: string;
  readonly name?: string | undefined;
  readonly kind?: "load" | "knot" | "pulley" | undefined;
  readonly mass?: WrittenNumber | undefined;
  readonly weight?: WrittenNumber | undefined;
  readonly at?: PlaceDocument | undefined;
  readonly acceleration?: AccelerationDocument | undefined;
  readonly motion?: MotionDocument | undefined;
};

/** Nothing known of the motion, or a line along which the body moves. */
export type MotionDocument =
  | "free"
  | {
      readonly along: DirectionDocument;
      /** Along the line, m/s² or ft/s²; to be found unless given. */
      readonly acceleration?: WrittenNumber | undefined;
      readonly going?: "forwards" | "backwards" | undefined;
      readonly seenFrom?: string | undefined;
    };

/** A rope, by the direction in which it goes off, by the place where it is tied, or by all its pulls. */
export type RopeDocument = StraightRopeDocument | TiedRopeDocument | LongRopeDocument;

/** From the body `on` straight to a support, or to the body `to`; the direction may be left out where both have places. */
export type StraightRopeDocument = {
  readonly id: string;
  readonly on: string;
  readonly direction?: DirectionDocument | undefined;
  readonly to?: string | undefined;
};

/** From the body `on` to a place of a support; with a `length` (m or ft) the body hangs where its ropes let it. */
export type TiedRopeDocument = {
  readonly id: string;
  readonly on: string;
  readonly anchor: PlaceDocument;
  readonly length?: WrittenNumber | undefined;
};

/** Over fixed pulleys and round movable ones: every place where it pulls, in the order along the rope. */
export type LongRopeDocument = {
  readonly id: string;
  readonly pulls: readonly { readonly on: string; readonly direction: DirectionDocument }[];
};

/** A surface that `on` touches, of a support or of the body `of`; exactly one of `slope` and `normal` is there. */
export type SurfaceDocument = {
  readonly id: string;
  readonly on: string;
  readonly of?: string | undefined;
  readonly slope?: DirectionDocument | undefined;
  readonly normal?: DirectionDocument | undefined;
  readonly friction?:
    { readonly static?: WrittenNumber | undefined; readonly kinetic?: WrittenNumber | undefined } | undefined;
};

/** A push or a pull by hand, N or lbf; of a size to be found unless given. */
export type PushDocument = {
  readonly id: string;
  readonly on: string;
  readonly direction: DirectionDocument;
  readonly size?: WrittenNumber | undefined;
};

/** An angle from the positive x axis, an angle from straight up towards a side, or a run and a rise. */
export type DirectionDocument =
  | { readonly angle: WrittenNumber }
  | { readonly angle: WrittenNumber; readonly from: "vertical"; readonly side: "left" | "right" }
  | { readonly run: WrittenNumber; readonly rise: WrittenNumber };
