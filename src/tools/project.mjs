/**
 * Where the project stands on this machine, and the few facts that more than one script needs.
 * Plain JavaScript without packages: `npm start` runs it before anything is installed, on Node 20.
 */
import { fileURLToPath } from "node:url";

/** The project's top folder, with a closing separator. */
export const root = fileURLToPath(new URL("../../", import.meta.url));

/** The built site's folder, relative to the top folder. */
export const siteFolder = "dist";

/** The page that `npm start` sends a new reader to. */
export const firstLesson = "/lessons/two-ropes/";
