/** Types of `bundled.mjs`. */
import type { Plugin } from "vite";

export function bundled(build: string): Plugin;
