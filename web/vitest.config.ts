/** Unit tests run in plain Node: what they test is pure. */
import { defineConfig } from "vitest/config";

export default defineConfig({ test: { include: ["test/**/*.test.ts"], environment: "node" } });
