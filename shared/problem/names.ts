const NUMBERED_NORMAL = /^N(\d*)$/;

/**
 * The id of the friction at a surface, from the surface's own: f for N, f1 for N1, and otherwise the id with f behind
 * it. Different surfaces have different ones.
 */
export function frictionId(surface: string): string {
  const numbered = NUMBERED_NORMAL.exec(surface);
  return numbered === null ? `${surface}f` : `f${numbered[1] ?? ""}`;
}
