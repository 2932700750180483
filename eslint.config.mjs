import js from "@eslint/js";
import astro from "eslint-plugin-astro";
import svelte from "eslint-plugin-svelte";
import { defineConfig } from "eslint/config";
import globals from "globals";
import tseslint from "typescript-eslint";
import { importRulesIn } from "./src/tools/import-rules.mjs";

const typed = ["**/*.{ts,mjs,svelte}"];

export default defineConfig(
  { ignores: ["dist/", ".astro/", "node_modules/"] },
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: "error" } },
  js.configs.recommended,
  { files: typed, extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked] },
  {
    files: typed,
    rules: {
      // The compiler knows which names there are, in the plain scripts too.
      "no-undef": "off",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      // An interface says as much as a type.
      "@typescript-eslint/consistent-type-definitions": "off",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
    },
  },
  { files: ["**/*.astro"], extends: [tseslint.configs.strict] },
  ...svelte.configs.recommended,
  ...astro.configs.recommended,
  {
    files: typed,
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: [".svelte"],
      },
    },
  },
  {
    files: ["**/*.svelte", "**/*.svelte.ts"],
    languageOptions: {
      globals: globals.browser,
      parserOptions: { parser: tseslint.parser },
    },
  },
  {
    rules: {
      "no-console": "error",
      "max-lines": ["error", { max: 250 }],
      "max-lines-per-function": ["error", { max: 80 }],
      // `== null` asks for null and undefined at once.
      eqeqeq: ["error", "always", { null: "ignore" }],
      "no-empty-pattern": ["error", { allowObjectPatternsAsParameters: true }],
    },
  },
  {
    // A plain script that the page runs before anything else.
    files: ["src/public/**"],
    languageOptions: { globals: globals.browser, sourceType: "script" },
  },
  {
    // These talk to a person at a terminal.
    files: ["src/tools/**", "solver/cli.ts", "tests/bench/**"],
    rules: { "no-console": "off" },
  },
  {
    // These are about the console itself.
    files: ["tests/support/no-console.ts", "tests/browser/watch-page.test.ts"],
    rules: { "no-console": "off" },
  },
  {
    // A describe block is one function to the linter, but not one idea to a reader.
    files: ["tests/**/*.test.ts"],
    rules: { "max-lines-per-function": "off" },
  },
  ...importRulesIn(import.meta.dirname),
);
