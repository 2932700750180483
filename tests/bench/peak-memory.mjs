// Preloaded into a program: at its end it says on standard error how much memory the whole process held at most.
import { isMainThread } from "node:worker_threads";

if (isMainThread) process.on("exit", () => process.stderr.write(`peak ${process.resourceUsage().maxRSS} kB\n`));
