// The command line: node solver/cli.ts FILE|- for one document, FOLDER, FILE.jsonl, several files or `- --lines` for a batch.
import { isBatch } from "./batch/index.ts";
import { readArguments } from "./command/arguments.ts";
import { deriveMany } from "./command/many-documents.ts";
import { deriveOne } from "./command/one-document.ts";
import { refuse } from "./command/refuse.ts";

const request = readArguments();
const [file, ...others] = request.files;
if (others.length > 0 || request.lines || (await isBatch(file))) await deriveMany(request);
else if (request.batchOptions.length > 0)
  refuse([
    `${request.batchOptions[0] ?? ""}: found one document, accepted: with a batch (a folder, a .jsonl file, several files, or - --lines)`,
  ]);
else deriveOne(request);
