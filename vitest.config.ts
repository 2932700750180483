import { svelte } from "@sveltejs/vite-plugin-svelte";
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    allowOnly: false,
    // Both cores of a small machine; left to itself the runner keeps one for its own.
    maxWorkers: 2,
    projects: [
      {
        // Cells are compiled for the browser here, so that tests can mount them.
        plugins: [svelte({ configFile: false })],
        resolve: { conditions: ["browser"] },
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          setupFiles: ["tests/support/no-console.ts"],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          // One browser at a time: two would slow each other below what a reader's machine does.
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
