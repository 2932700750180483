// npm run bench: each time beside a named peer in the same run. Nothing here passes or fails. The page's part needs a built site.
import { existsSync } from "node:fs";
import { benchBatch } from "./batch.ts";
import { benchPage } from "./page.ts";
import { benchSetUps } from "./set-ups.ts";
import { benchSolver } from "./solver.ts";

benchSolver();
benchSetUps();
await benchBatch();
if (existsSync("dist/index.html")) await benchPage();
else console.log("\nThe page is not built: npm run build, then again for the page's part.");
