/**
 * The one error that the exact core throws: for text that is not a number it reads, for a division by zero, and for
 * sizes beyond its bounds. Text typed by people goes through `parseRational`, which gives null instead.
 */
export class ExactError extends Error {
  override readonly name = "ExactError";
  /** What was handed in, cut short, safe to print. */
  readonly found: string;
  /** What would have been accepted. */
  readonly accepted: string;

  constructor(found: string, accepted: string) {
    super(`${found} is not accepted here; accepted is ${accepted}`);
    this.found = found;
    this.accepted = accepted;
  }
}
