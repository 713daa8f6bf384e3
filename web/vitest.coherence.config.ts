/** Draws the page for `cargo xtask test coherence`: no test of its own, so `npm test` leaves it out. */
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["coherence/**/*.test.mjs"],
    environment: "node",
    setupFiles: ["test/english.ts"],
    css: true,
    testTimeout: 300_000,
  },
});
