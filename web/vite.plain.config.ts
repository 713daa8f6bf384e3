/** How `plain.js` is built: the whole page as one classic script, beside the page's own (see `plain/plugin.mjs`). */
import { defineConfig } from "vite";
import { bareCatalogues } from "./catalogues.mjs";
import manifest from "./package.json" with { type: "json" };
import { plain } from "./plain/plugin.mjs";

export default defineConfig({
  publicDir: false,
  plugins: [bareCatalogues(), plain()],
  define: { APP_VERSION: JSON.stringify(manifest.version), HAS_PHOTOS: "false" },
  build: {
    outDir: "../dist",
    emptyOutDir: false,
    target: "es2022",
    cssCodeSplit: false,
    lib: {
      entry: "plain/main.ts",
      formats: ["iife"],
      name: "straightAnswerPlain",
      fileName: () => "plain.js",
      cssFileName: "plain",
    },
  },
});
