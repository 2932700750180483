/** Text from outside may hold anything; a line break in it would make two lines of one fault. */
const onOneLine = (text: string): string =>
  text.replace(/\p{Cc}/gu, (c) => `\\u${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`);

/** Ends the program with code 2 and one line a fault on standard error. */
export function refuse(lines: readonly string[]): never {
  process.stderr.write(`${lines.map(onOneLine).join("\n")}\n`);
  process.exit(2);
}

/** The system's word for what went wrong with a file: "ENOENT". */
export const systemCode = (error: unknown): string =>
  error instanceof Error && "code" in error ? String(error.code) : "unknown";
