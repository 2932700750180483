import type { Problem } from "../problem/index.ts";

/** How many significant figures answers can have. */
export type Figures = 2 | 3 | 4 | 5 | 6;
/** The axis along which the law is written first. */
export type FirstAxis = "vertical" | "horizontal";

/** All of a page that its address keeps. */
export type PageState = {
  readonly problem: Problem;
  readonly settings: { readonly figures: Figures; readonly firstAxis: FirstAxis };
  /** Show lines up to the one with this id ("eliminate.divide"); null shows all. */
  readonly upTo: string | null;
};

/** One parameter of an address that was not taken; the start value stands in its place. */
export type LinkFault = {
  /** Its name, cut short; "" for the address as a whole. */
  readonly parameter: string;
  /** What stands there, in words, on one line and cut short. */
  readonly found: string;
  /** What the parameter accepts. */
  readonly accepted: string;
};
