/** How the page is built: relative paths, so that `dist` works under any sub-path of any host. */
import { defineConfig, type Plugin } from "vite";
import { bundled } from "./bundled.mjs";
import { bareCatalogues } from "./catalogues.mjs";
import { colors } from "./colors/plugin.mjs";
import { methodsPage } from "./methods/plugin.mjs";
import { offline } from "./offline/plugin.mjs";
import manifest from "./package.json" with { type: "json" };
import { hasPhotos } from "./photos.mjs";
import { siteAddress } from "./preview/address.mjs";

/** The build server injects styles and a socket that the page's own policy forbids; the built page keeps the policy. */
const policyOnlyWhenBuilt: Plugin = {
  name: "policy-only-when-built",
  apply: "serve",
  transformIndexHtml: (html) => html.replace(/<meta http-equiv="content-security-policy"[^>]*>/i, ""),
};

/**
 * The policy of every page with a script: nothing but the site's own files, and no text that becomes a script.
 * lit makes its templates under the first name, `src/core/trusted.ts` starts workers under the second, `public/needs.js`
 * takes the page as one plain script under the third.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types lit-html straight-answer straight-answer-plain",
].join("; ");

/** Puts a text in the place of its mark in every page. */
const filledIn = (name: string, text: string): Plugin => ({
  name,
  transformIndexHtml: (html) => html.replace(`%${name.toUpperCase()}%`, () => text),
});

/** A style sheet needs no CORS: asked for with it, a frame without an origin of its own would get none. */
const sheetsOfAnyOrigin: Plugin = {
  name: "sheets-of-any-origin",
  transformIndexHtml: {
    order: "post",
    handler: (html) => html.replace(/(<link rel="stylesheet") crossorigin/g, "$1"),
  },
};

/** All that the first answer needs is one file: on a slow network every request costs more than its bytes. */
const firstAnswer = { name: "page", test: /\/web\/src\/page\/page\.ts$/, includeDependenciesRecursively: true };

/** What is behind a door is called after its folder: `landing/part.ts` is `landing-part`. */
const afterItsFolder = ({ facadeModuleId }: { facadeModuleId?: string | null }): string => {
  const folder = facadeModuleId?.match(/\/(\w+)\/part\.ts$/)?.[1];
  return folder ? `assets/${folder}-part-[hash].js` : "assets/[name]-[hash].js";
};

export default defineConfig({
  base: "./",
  plugins: [
    bareCatalogues(),
    filledIn("policy", POLICY),
    sheetsOfAnyOrigin,
    // A preview of a link takes its picture from a whole address.
    filledIn("site", siteAddress()),
    policyOnlyWhenBuilt,
    methodsPage(),
    colors(),
    bundled("page"),
    offline(),
  ],
  define: { APP_VERSION: JSON.stringify(manifest.version), HAS_PHOTOS: JSON.stringify(hasPhotos()) },
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    // What `cargo xtask sizes` counts by.
    manifest: true,
    rolldownOptions: {
      input: [
        "index.html",
        "methods.html",
        "methods.es.html",
        "methods-full.html",
        "methods-full.es.html",
        "embed.html",
      ],
      output: { codeSplitting: { groups: [firstAnswer] }, chunkFileNames: afterItsFolder },
    },
    modulePreload: { polyfill: false },
  },
  worker: { format: "es", plugins: () => [bundled("page")] },
  server: { fs: { allow: [".."] } },
});
