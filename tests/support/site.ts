/**
 * Serves the built site to the tests, at an address of its own.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { root, siteFolder } from "../../src/tools/project.mjs";
import { serveFolder, type Served } from "../../src/tools/serve-folder.mjs";

/**
 * Serves dist/ on a free port. The caller closes it.
 * @throws Error when the site has not been built
 */
export async function openSite(): Promise<Served> {
  const folder = join(root, siteFolder);
  if (!existsSync(join(folder, "index.html"))) {
    throw new Error("There is no built site to test; `npm run build` makes it.");
  }
  return serveFolder(folder, 0);
}
