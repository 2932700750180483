/**
 * KaTeX's style sheet names each font in three formats; every browser that runs the site takes the first. Without the
 * others the build does not carry 800 kB that nobody fetches.
 */
export const woff2Only = {
  name: "woff2-only",
  enforce: /** @type {const} */ ("pre"),
  /** @param {string} code @param {string} id */
  transform(code, id) {
    if (!/katex[^/]*\.css/.test(id) && !code.includes("KaTeX_Main")) return null;
    return code.replace(/,url\([^)]*\.(?:woff|ttf)\)\s*format\("[^"]*"\)/g, "");
  },
};
