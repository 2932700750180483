/**
 * `npm start`: installs what is missing, builds the site, serves it, and prints the address of the first lesson.
 */
import { join } from "node:path";
import { ensureInstalled } from "./install.mjs";
import { wantedPort } from "./port.mjs";
import { firstLesson, root, siteFolder } from "./project.mjs";
import { runScript } from "./run-script.mjs";

/** @returns {Promise<void>} */
async function start() {
  const port = wantedPort(process.argv.slice(2), process.env.PORT);
  ensureInstalled();
  console.log("Building the site ...");
  const build = await runScript("node_modules/astro/bin/astro.mjs", ["build"], { capture: true });
  if (build.code !== 0) throw new Error(`The site does not build:\n${build.output}`);
  // Only now: before the install the package that it stands on may not be there.
  const { serveFolder } = await import("./serve-folder.mjs");
  const site = await serveFolder(join(root, siteFolder), port);
  console.log(`The first lesson is at ${site.origin}${firstLesson}  (Ctrl+C stops the server)`);
}

start().catch((/** @type {unknown} */ error) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
