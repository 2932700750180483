/**
 * Ids that a document may not use, because a derivation's machine-readable lines, or a link, already mean something
 * else by them. Only ids matter here; the names that sentences use are free.
 */

/** What an id looks like. */
export const ID_PATTERN = /^[A-Za-z][A-Za-z0-9]{0,15}$/;

const FUNCTIONS =
  "sin cos tan sec csc cot asin acos atan atan2 sinh cosh tanh sqrt cbrt abs min max exp log ln sign floor ceil round";
const CONSTANTS = "pi PI e E i tau phi NaN Infinity true false null undefined";
const EVALUATOR_WORDS = "mod to in and or not xor end";
const UNITS_OF_MECHANICS = "N kN mN kg g mg t m mm cm km s ms h d deg rad mrad Pa J W Hz lb lbf oz ft";
const OWN_SYMBOLS = "m g W a ax ay x y h d L alpha beta gamma delta theta mu";
const LINK_PARAMETERS = "mass weight figures first upto";
// Names that every JavaScript object already has.
const OBJECT_KEYS = "constructor prototype toString valueOf hasOwnProperty isPrototypeOf toLocaleString";

/** Lengths of ropes in a derivation: L1, L2, … */
export const ROPE_LENGTH_PATTERN = /^L\d+$/;

/**
 * What else a derivation of several bodies, of surfaces or of motion means by a name: m1, W2 and a3 with their parts,
 * the acceleration of the supports, coefficients of friction, angles by number and by rise and run, the unit slug.
 */
const SYSTEM_SYMBOLS = [
  /^[maW]\d+[xy]?$/,
  /^(A|W)[xy]?$/,
  /^mu[A-Za-z0-9]*$/,
  /^(alpha|beta|gamma|delta|epsilon|zeta|eta|theta\d*|angle\d+)(rise|run|Vertical)?$/,
  /^(straight|slug)$/,
];

/** Every reserved id but `L1`, `L2`, … (rope lengths), sorted. */
export const RESERVED_IDS: readonly string[] = [
  ...new Set(
    [FUNCTIONS, CONSTANTS, EVALUATOR_WORDS, UNITS_OF_MECHANICS, OWN_SYMBOLS, LINK_PARAMETERS, OBJECT_KEYS]
      .join(" ")
      .split(" "),
  ),
].sort();

/** The same for surfaces: a normal force may be called N, as it mostly is. */
export const RESERVED_SURFACE_IDS: readonly string[] = RESERVED_IDS.filter((id) => id !== "N");

const reserved: ReadonlySet<string> = new Set(RESERVED_IDS);

/** Whether an id is the name of a function, constant, unit or symbol: see `RESERVED_IDS`; also `L` with digits. */
export function isReservedId(id: string): boolean {
  return reserved.has(id) || ROPE_LENGTH_PATTERN.test(id);
}

/** Whether an id means something where a problem is more than one load on one or two ropes: "a1", "muN". */
export function isReservedInSystems(id: string): boolean {
  return SYSTEM_SYMBOLS.some((symbol) => symbol.test(id));
}
