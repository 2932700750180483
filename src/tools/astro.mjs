/**
 * `npm run build` and `npm run dev`: installs what is missing, then hands over to astro under the modern Node.
 */
import { ensureInstalled } from "./install.mjs";
import { runScript } from "./run-script.mjs";

ensureInstalled();
const { code } = await runScript("node_modules/astro/bin/astro.mjs", process.argv.slice(2));
process.exitCode = code;
