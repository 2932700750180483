/** Writes the JSON Schema of the problem format to the file that is checked in. A test fails while the two differ. */
import { writeFileSync } from "node:fs";
import { problemJsonSchema } from "../../shared/problem/schema.ts";

const file = new URL("../../shared/problem/problem.schema.json", import.meta.url);
writeFileSync(file, `${JSON.stringify(problemJsonSchema(), null, 2)}\n`);
console.log("shared/problem/problem.schema.json is written");
