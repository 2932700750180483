// What sentences call bodies: "the crate" for a tea crate, "the tea crate" beside a spice crate, "crate 2" for one that is numbered.

const PREPOSITIONS = new Set("of with on in at from for under over to by without".split(" "));

/** The words of a name, an article in front of it left off. */
const wordsOf = (name: string): string[] =>
  name
    .trim()
    .replace(/^(?:the|an?)\s+/i, "")
    .split(/\s+/);

/** Whether a name ends in a number or a single letter, and so goes without an article: crate 2, block A. */
const isLabelled = (name: string): boolean => /\d$|(?:^|\s)\p{Lu}$/u.test(name.trim());

/** The word that says what a thing is: crate of tea crate, and of crate of tea. */
function headOf(name: string): string {
  const words = wordsOf(name);
  const end = words.findIndex((w, i) => i > 0 && PREPOSITIONS.has(w.toLowerCase()));
  return words[(end < 0 ? words.length : end) - 1] ?? name;
}

const alike = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** What a sentence calls the body at `at` of a list of names, with its article. */
export function spokenName(names: readonly string[], at: number): string {
  const name = names[at] ?? "";
  const full = wordsOf(name).join(" ");
  const twins = names.filter((other) => alike(wordsOf(other).join(" "), full));
  if (twins.length > 1)
    return `${full} ${names.slice(0, at + 1).filter((o) => alike(wordsOf(o).join(" "), full)).length}`;
  if (isLabelled(full)) return full;
  const head = headOf(name);
  const isShared = names.filter((other) => alike(headOf(other), head)).length > 1;
  return `the ${isShared ? full : head}`;
}

/** The whole name as something is first spoken of: "A tea crate", "An old bell", "Crate 2". */
export function firstName(names: readonly string[], at: number): string {
  const name = names[at] ?? "";
  const full = wordsOf(name).join(" ");
  const spoken = spokenName(names, at);
  if (!spoken.startsWith("the ")) return spoken.charAt(0).toUpperCase() + spoken.slice(1);
  return `${/^(?!uni|eu|one)[aeiou]/i.test(full) ? "An" : "A"} ${full}`;
}
