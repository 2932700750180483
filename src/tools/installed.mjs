/**
 * Says whether node_modules holds what the lock file asks for, so that `npm start` and `npm test` install only
 * when something is missing or the lock file changed. npm writes its own record of what it installed, last of all,
 * into node_modules; comparing the two needs no stamp of ours and is right after a hand-made install too.
 */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} LockedPackage
 * @typedef {{ packages: Record<string, LockedPackage> }} LockFile
 */

/**
 * True when every package of `wanted` is in `found` at the same version and hash, and nothing else is.
 * Optional packages may be absent: they belong to other operating systems.
 * @param {LockFile} wanted package-lock.json
 * @param {LockFile} found npm's record in node_modules
 * @returns {boolean}
 */
export function matchesLock(wanted, found) {
  const places = Object.keys(wanted.packages).filter((place) => place !== "");
  const asLocked = places.every((place) => {
    const want = wanted.packages[place] ?? {};
    const have = found.packages[place];
    if (have === undefined) return want.optional === true || want.devOptional === true;
    return have.version === want.version && have.integrity === want.integrity;
  });
  return asLocked && Object.keys(found.packages).every((place) => place in wanted.packages);
}

/**
 * How node_modules stands: "missing" (or an install was cut short), "stale" (the lock file changed since) or "ready".
 * @param {string} folder the project's top folder
 * @returns {"missing" | "stale" | "ready"}
 */
export function installState(folder) {
  const record = join(folder, "node_modules", ".package-lock.json");
  if (!existsSync(record)) return "missing";
  return matchesLock(readLock(join(folder, "package-lock.json")), readLock(record)) ? "ready" : "stale";
}

/**
 * @param {string} path
 * @returns {LockFile}
 */
function readLock(path) {
  /** @type {unknown} */
  const content = JSON.parse(readFileSync(path, "utf8"));
  return /** @type {LockFile} */ (content);
}
