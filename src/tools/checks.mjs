/**
 * The checks that `npm test` makes besides the tests themselves. Each counts as one test in the closing line.
 */

/**
 * @typedef {object} Check
 * @property {string} name
 * @property {string} script a tool's own entry, relative to the top folder
 * @property {string[]} args
 * @property {string} [about] the ending of the files in src that it is about, when the tool refuses to run without any
 */

/** Builds the site; also writes the types of the lessons, which the other checks read. @type {Check} */
export const build = { name: "build", script: "node_modules/astro/bin/astro.mjs", args: ["build"] };

/** Independent of each other; the slowest first, so that two at a time end together. @type {Check[]} */
export const checks = [
  { name: "lint", script: "node_modules/eslint/bin/eslint.js", args: [".", "--max-warnings", "0"] },
  { name: "types of pages", script: "node_modules/astro/bin/astro.mjs", args: ["check"] },
  {
    name: "types of cells",
    script: "node_modules/svelte-check/bin/svelte-check",
    args: ["--tsconfig", "./tsconfig.json", "--fail-on-warnings"],
    about: ".svelte",
  },
  { name: "types", script: "node_modules/typescript/bin/tsc", args: ["--noEmit"] },
  { name: "format", script: "node_modules/prettier/bin/prettier.cjs", args: ["--check", "."] },
];
