/**
 * Who may import what: the one table behind the lint rule (eslint.config.mjs), the test that seeds violations, and the
 * guide. A folder may always import itself; whatever is not listed is an error, and so is a file without a row.
 */

/**
 * @typedef {object} Row
 * @property {string} name a word for the row, used by other rows
 * @property {string | string[]} files which files the row is about (globs from the top folder)
 * @property {string[]} [faces] its public face besides index.ts and types.ts
 * @property {string[]} [may] the rows whose public face it may import
 * @property {string[]} [types] the rows of whose types.ts alone it may import
 * @property {string[]} [typesOnly] the rows that it may import by `import type` alone
 * @property {string[]} [all] the rows of which it may import every file
 * @property {string[]} [libraries] packages, with a path inside one after the name when only that is meant
 * @property {boolean} [node] whether it may import Node's own modules
 */

const exact = "shared/exact";
const shared = [exact, "shared/format", "shared/problem", "shared/link"];
const phases = ["solver/1-bodies", "solver/2-forces", "solver/3-equations", "solver/4-steps", "solver/5-words"];
/** Expressions and their parts: small files, each used for itself. */
const algebra = "solver/algebra";
const before = (/** @type {number} */ phase) => phases.slice(0, phase - 1);
const solver = "solver/index.ts";
const site = ["src/diagram", "src/lesson", "src/problem", "src/typeset", "src/widgets"];
const astro = ["astro", "astro/*", "astro:*"];

/** @type {Row[]} */
export const importTable = [
  { name: exact, files: "shared/exact/**", libraries: ["fraction.js"] },
  {
    name: "shared/format",
    files: "shared/format/**",
    // Apart from index.ts, so that a page in SI units goes without the units library.
    faces: ["shared/format/units.ts"],
    may: [exact],
    libraries: ["safe-units/dist/src/measure/*"],
  },
  {
    name: "shared/problem",
    files: "shared/problem/**",
    // Apart from index.ts, so that a page that reads no document goes without the schema library.
    faces: ["shared/problem/schema.ts"],
    may: [exact],
    libraries: ["zod/mini"],
  },
  {
    name: "shared/link",
    files: "shared/link/**",
    // Apart from index.ts, so that a lesson's page goes without the codec of whole documents.
    faces: ["shared/link/document-link.ts"],
    may: [exact, "shared/problem"],
    libraries: ["rison2"],
  },

  { name: algebra, files: "solver/algebra/**", may: [exact] },
  { name: phases[0] ?? "", files: "solver/1-bodies/**", may: [exact, "shared/problem"], all: [algebra] },
  { name: phases[1] ?? "", files: "solver/2-forces/**", may: [exact], all: [algebra], types: before(2) },
  { name: phases[2] ?? "", files: "solver/3-equations/**", may: [exact], all: [algebra], types: before(3) },
  { name: phases[3] ?? "", files: "solver/4-steps/**", may: [exact], all: [algebra], types: before(4) },
  {
    name: phases[4] ?? "",
    files: "solver/5-words/**",
    may: [exact, "shared/format"],
    all: [algebra],
    types: [...before(5), "solver/cases"],
  },
  {
    name: "solver/cases",
    files: "solver/cases/**",
    may: [exact, "shared/problem", ...phases.slice(0, 4)],
    all: [algebra],
  },
  {
    name: "solver/results",
    files: "solver/results/**",
    may: [exact, "solver/cases", "solver/4-steps"],
    all: [algebra],
  },
  { name: solver, files: "solver/index.ts", may: ["shared/problem", ...phases, "solver/cases", "solver/results"] },
  // The derivation as data for files and other programs.
  {
    name: "solver/exports",
    files: "solver/exports/**",
    may: ["solver/5-words", "solver/results"],
    all: [algebra],
    typesOnly: [solver],
  },
  // A learner's slip is one row of the rules replaced.
  { name: "solver/slips", files: "solver/slips/**", may: ["solver/2-forces"], all: [algebra] },
  {
    name: "solver/batch",
    files: "solver/batch/**",
    may: ["shared/problem", solver, "solver/exports", "solver/results"],
    libraries: ["p-map", "piscina"],
    node: true,
  },
  {
    name: "solver/command",
    files: ["solver/cli.ts", "solver/command/**"],
    may: [...shared, solver, "solver/exports", "solver/batch"],
    node: true,
  },

  { name: "src/diagram", files: "src/diagram/**", may: ["shared/format"], typesOnly: [solver] },
  { name: "src/lesson", files: "src/lesson/**", may: [...shared, solver], libraries: ["svelte", "svelte/*"] },
  // The page of any problem: its state, the form as functions on the document.
  {
    name: "src/problem",
    files: "src/problem/**",
    may: [...shared, solver],
    all: ["src/diagram", "src/lesson", "src/typeset"],
    libraries: ["svelte", "svelte/*"],
  },
  { name: "src/typeset", files: "src/typeset/**", typesOnly: [solver], libraries: ["katex", "katex/*"] },
  {
    name: "src/widgets",
    files: "src/widgets/**",
    may: ["shared/format", "shared/link", "shared/problem", solver],
    all: ["src/diagram", "src/lesson", "src/problem", "src/typeset"],
    libraries: ["svelte", "svelte/*"],
  },
  { name: "src/public", files: "src/public/**" },
  { name: "src/styles", files: "src/styles/**", libraries: ["katex/dist/*.css"] },
  {
    name: "src/blocks",
    files: "src/blocks/**",
    may: ["shared/problem"],
    all: ["src/diagram", "src/lesson", "src/problem", "src/typeset", "src/widgets", "src/styles"],
    libraries: astro,
  },
  {
    name: "src/layouts",
    files: "src/layouts/**",
    may: ["shared/problem"],
    all: ["src/blocks", "src/lesson", "src/widgets", "src/styles"],
    libraries: [...astro, "katex/dist/**", "@fontsource/**"],
  },
  {
    name: "src/pages",
    files: "src/pages/**",
    // Pages run at build alone.
    node: true,
    may: ["shared/problem"],
    all: ["src/lesson", "src/problem", "src/widgets", "src/blocks", "src/layouts", "src/styles"],
    libraries: astro,
  },
  { name: "src", files: "src/*.ts", may: ["shared/problem"], all: ["src/lesson"], libraries: astro },
  {
    name: "src/tools",
    files: "src/tools/**",
    may: [...shared, solver],
    libraries: ["eslint-plugin-boundaries", "sirv"],
    node: true,
  },

  { name: "lessons", files: "lessons/**" },
  {
    name: "tests",
    files: "tests/**",
    may: [...shared, ...phases, "solver/cases", "solver/exports", "solver/batch", "solver/slips", solver, ...site],
    all: ["src/tools", "configuration", "lessons", algebra],
    libraries: ["**"],
    node: true,
  },
  {
    name: "configuration",
    files: "*.config.{ts,mjs}",
    may: ["src/typeset"],
    all: ["src/tools"],
    libraries: ["**"],
    node: true,
  },
];
