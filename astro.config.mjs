import { satteri } from "@astrojs/markdown-satteri";
import mdx from "@astrojs/mdx";
import svelte from "@astrojs/svelte";
import { defineConfig } from "astro/config";
import { woff2Only } from "./src/tools/woff2-only.mjs";

export default defineConfig({
  output: "static",
  publicDir: "./src/public",
  trailingSlash: "always",
  // Lossless: the default drops the space between "17.0" and an element on the next source line.
  compressHTML: true,
  prefetch: false,
  devToolbar: { enabled: false },
  integrations: [mdx(), svelte()],
  markdown: {
    // Authors write the quotes and dashes they mean; primes in prose are not to be curled.
    processor: satteri({ features: { smartPunctuation: false } }),
    // Coloured code is coloured by style attributes on blocks of its own, which the policy below is not opened for.
    syntaxHighlight: false,
  },
  build: { inlineStylesheets: "never" },
  vite: {
    build: {
      // Nothing becomes a data: address, so that the policy can stay at 'self'.
      assetsInlineLimit: 0,
      // Pictures do nothing until they are called: a page fetches those it draws and not all that their index lists.
      rolldownOptions: {
        treeshake: {
          moduleSideEffects: [{ test: /\/src\/(?:diagram\/|widgets\/pictures\/.*\.ts$)/, sideEffects: false }],
        },
      },
    },
    plugins: [woff2Only],
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "base-uri 'none'",
        "form-action 'self'",
        "object-src 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "img-src 'self'",
      ],
      styleDirective: {
        // Typeset maths is positioned by style attributes; style elements stay closed.
        resources: [{ resource: "'unsafe-inline'", kind: "attribute" }],
      },
    },
  },
});
