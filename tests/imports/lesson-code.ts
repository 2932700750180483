/**
 * Finds code in a lesson's text. MDX takes a line that begins with `import` or `export` as JavaScript.
 */

/** The lines of the text that MDX would run as JavaScript. */
export function codeInLesson(text: string): string[] {
  return text.split(/\r?\n/).filter((line) => /^(?:import|export)\s/.test(line));
}
