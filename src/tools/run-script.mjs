/**
 * Runs a tool's own JavaScript entry under the modern Node. No shell and no .cmd wrapper is involved, so it is the
 * same on every operating system.
 */
import { spawn } from "node:child_process";
import { environmentFor, modernNode } from "./modern-node.mjs";
import { root } from "./project.mjs";

/**
 * @typedef {{ code: number, output: string, seconds: number }} Run
 *   exit code (1 when ended by a signal), what it printed when captured (else ""), and how long it took
 */

/**
 * Runs a script of an installed package, or one of ours, and waits for its end.
 * @param {string} script path relative to the top folder, such as "node_modules/astro/bin/astro.mjs"
 * @param {string[]} args
 * @param {{ capture?: boolean }} [options] capture: collect the output instead of showing it
 * @returns {Promise<Run>}
 */
export function runScript(script, args, options = {}) {
  const capture = options.capture ?? false;
  const node = modernNode();
  const began = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(node, [script, ...args], {
      cwd: root,
      env: environmentFor(node),
      stdio: capture ? ["ignore", "pipe", "pipe"] : "inherit",
    });
    let output = "";
    const collect = (/** @type {Buffer} */ chunk) => (output += chunk.toString());
    child.stdout?.on("data", collect);
    child.stderr?.on("data", collect);
    child.on("error", reject);
    child.on("close", (code) => {
      resolve({ code: code ?? 1, output, seconds: (performance.now() - began) / 1000 });
    });
  });
}
