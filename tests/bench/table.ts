// A table for the terminal: columns as wide as their widest cell.

/** Prints rows under headings. */
export function printTable(title: string, headings: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = headings.map((h, i) => Math.max(h.length, ...rows.map((r) => (r[i] ?? "").length)));
  const line = (cells: readonly string[]): string =>
    cells
      .map((c, i) => c.padEnd(widths[i] ?? 0))
      .join("  ")
      .trimEnd();
  console.log(`\n${title}\n${line(headings)}\n${widths.map((w) => "-".repeat(w)).join("  ")}`);
  for (const row of rows) console.log(line(row));
}

/** Milliseconds for a table. */
export const ms = (x: number): string => (x < 0.1 ? x.toFixed(4) : x < 10 ? x.toFixed(3) : x.toFixed(1));
