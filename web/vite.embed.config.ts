/** How `embed.js` is built: one classic script under a name that stays, so that a host needs no CORS and no update. */
import { defineConfig } from "vite";
import { bundled } from "./bundled.mjs";

export default defineConfig({
  publicDir: false,
  plugins: [bundled("embed")],
  build: {
    outDir: "../dist",
    emptyOutDir: false,
    target: "es2022",
    lib: { entry: "src/embed/embed.ts", formats: ["iife"], name: "straightAnswerEmbed", fileName: () => "embed.js" },
  },
});
