/**
 * Turns the import table into the lint rules that enforce it.
 */
import boundaries from "eslint-plugin-boundaries";
import { importTable } from "./import-table.mjs";

/** @typedef {import("./import-table.mjs").Row} Row */

const types = ["**/types.ts"];
const face = ["**/index.ts", ...types, ...importTable.flatMap((row) => row.faces ?? [])];

/**
 * The files of the rows with these names, or those among them at these places.
 * @param {string[]} names
 * @param {string[]} [places] globs
 */
const filesOf = (names, places = ["**"]) => names.map((name) => ({ file: { categories: name, path: places } }));

/**
 * A package by the import's own words: "zod/mini" is that part of it alone, "svelte/*" every part, "svelte" its main one.
 * @param {string} library
 */
const packageAs = (library) => ({ to: { module: { origin: "external" } }, dependency: { source: library } });

/**
 * What the row's files may import.
 * @param {Row} row
 */
function policyOf(row) {
  const values = [
    ...filesOf([row.name, ...(row.all ?? [])]),
    ...filesOf(row.may ?? [], face),
    ...filesOf(row.types ?? [], types),
  ];
  const typesOnly = filesOf(row.typesOnly ?? [], face);
  return {
    from: { file: { categories: row.name } },
    allow: [
      { to: values },
      ...(typesOnly.length > 0 ? [{ to: typesOnly, dependency: { kind: "type" } }] : []),
      ...(row.libraries ?? []).map(packageAs),
      ...(row.node ? [{ to: { module: { origin: "core" } } }] : []),
    ],
  };
}

/** A test may look into one private file: the one with its own name (surd.test.ts into surd.ts). */
const ownTest = {
  from: { file: { categories: "tests", captured: { tested: "*" } } },
  allow: { to: { file: { path: "{shared,solver,src}/**/{{ from.file.captured.tested }}.ts" } } },
};

/**
 * The lint rules for a project in the given folder.
 * @param {string} folder the top folder, to which the table's globs belong
 * @returns {import("eslint").Linter.Config[]}
 */
export const importRulesIn = (folder) => [
  {
    files: ["**/*.{ts,mjs,svelte,astro}"],
    plugins: { boundaries },
    settings: {
      "boundaries/root-path": folder,
      "boundaries/files": [
        { category: "tests", pattern: "tests/**/*.test.ts", capture: ["folder", "tested"] },
        ...importTable.map((row) => ({ category: row.name, pattern: row.files })),
      ],
      "boundaries/files-single-match": true,
      "boundaries/legacy-templates": false,
      "import/resolver": { node: { extensions: [".ts", ".mjs", ".js", ".svelte", ".astro", ".json"] } },
    },
    rules: {
      "boundaries/no-unknown-files": "error",
      "boundaries/dependencies": [
        "error",
        {
          default: "disallow",
          checkAllOrigins: true,
          checkUnknownLocals: true,
          checkInternals: true,
          message:
            "{{ from.file.path }} may not import {{ dependency.source }}: see the table in src/tools/import-table.mjs.",
          policies: [...importTable.map(policyOf), ownTest],
        },
      ],
    },
  },
];
