// Sums of rational multiples of roots, as the oracle writes them and as we do, in one form to compare them by.

/** The coefficient of each root by its radicand, in lowest terms: {"1": "-49/5", "6": "10/1"}. Nothing for 0. */
export type Roots = Readonly<Record<string, string>>;

const TERM = /^([+-]?)\s*(?:(\d+)\*)?(?:(\d+)|sqrt\((\d+)\))(?:\/(\d+))?$/;

function lowest(n: bigint, d: bigint): string {
  let [a, b] = [n < 0n ? -n : n, d];
  while (b !== 0n) [a, b] = [b, a % b];
  return n === 0n ? "0" : `${n / a}/${d / a}`;
}

/** Reads "-49/5 + 10*sqrt(6)/3". Throws where a term is of another form. */
export function rootsOfText(text: string): Roots {
  const terms = text.replace(/ ([+-]) /g, "\n$1").split("\n");
  const entries = terms.map((term): [string, string] => {
    const match = TERM.exec(term.trim());
    if (match === null) throw new Error(`no rational multiple of a root: ${term} in ${text}`);
    const [, sign = "", times = "1", whole, radicand = "1", under = "1"] = match;
    const n = BigInt(times) * BigInt(whole ?? "1") * (sign === "-" ? -1n : 1n);
    return [radicand, lowest(n, BigInt(under))];
  });
  return sorted(entries);
}

/** The same of our own terms: a rational as text, and a radicand. */
export function rootsOfTerms(terms: readonly (readonly [string, number])[]): Roots {
  return sorted(
    terms.map(([coefficient, radicand]): [string, string] => {
      const [n = "0", d = "1"] = coefficient.split("/");
      return [String(radicand), lowest(BigInt(n), BigInt(d))];
    }),
  );
}

function sorted(entries: readonly (readonly [string, string])[]): Roots {
  const kept = entries.filter(([, value]) => value !== "0");
  return Object.fromEntries(kept.toSorted(([a], [b]) => Number(a) - Number(b)));
}

/** Each coefficient with the other sign. */
export const negated = (roots: Roots): Roots =>
  Object.fromEntries(Object.entries(roots).map(([k, v]) => [k, v.startsWith("-") ? v.slice(1) : `-${v}`]));
