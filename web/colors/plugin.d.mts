/** Types of `plugin.mjs`. */
import type { Plugin } from "vite";

/** The text with the colors that it names: `{--paper}` is `--paper` in the light scheme, `{--paper dark}` in the dark one. */
export function withColors(text: string, tokens: string): string;
export function colors(): Plugin;
