/** Unit tests run in plain Node: what they test is pure. They speak English, as the page does at first, and see style sheets as they are. */
import { defineConfig } from "vitest/config";

export default defineConfig({
  define: { HAS_PHOTOS: "true" },
  test: { include: ["test/**/*.test.ts"], environment: "node", setupFiles: ["test/english.ts"], css: true },
});
