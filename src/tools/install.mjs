/**
 * Installs the packages when they are missing or the lock file changed; otherwise does nothing, at once.
 */
import { spawnSync } from "node:child_process";
import { basename } from "node:path";
import { installState } from "./installed.mjs";
import { root } from "./project.mjs";

/**
 * Brings node_modules to what package-lock.json says.
 * An install that exists is brought up to date in place, not wiped: on Windows the running Node may lie in it.
 * @throws {Error} when npm fails; npm has then printed why
 */
export function ensureInstalled() {
  const state = installState(root);
  if (state === "ready") return;
  console.log(
    state === "missing"
      ? "Installing the packages; the first time this takes about a minute ..."
      : "The lock file has changed; bringing the packages up to date ...",
  );
  const command = state === "missing" ? ["ci"] : ["install", "--no-save"];
  // Both kinds are needed whatever NODE_ENV or the user's npm settings say: the optional ones bring Node 24.
  const flags = ["--include=dev", "--include=optional", "--no-audit", "--no-fund", "--loglevel=error"];
  const code = runNpm([...command, ...flags]);
  if (code !== 0) throw new Error(`npm ${command.join(" ")} failed with exit code ${String(code)}`);
}

/**
 * Runs npm: the very one that started us, or else the one on the PATH.
 * @param {string[]} args
 * @returns {number | null} npm's exit code
 */
function runNpm(args) {
  const started = process.env.npm_execpath ?? "";
  const options = /** @type {const} */ ({ cwd: root, stdio: "inherit" });
  const result = /^npm-cli\.c?js$/.test(basename(started))
    ? spawnSync(process.execPath, [started, ...args], options)
    : // On Windows npm is a .cmd file, which only a shell can start; the arguments are fixed words of ours.
      spawnSync("npm", args, { ...options, shell: process.platform === "win32" });
  if (result.error) throw result.error;
  return result.status;
}
