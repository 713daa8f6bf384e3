/** Gives the colors of `styles/tokens.css` to what cannot read a style sheet: the pages' metadata and the manifest. */
import { readFileSync, writeFileSync } from "node:fs";

const TOKENS = new URL("../src/styles/tokens.css", import.meta.url);
const MANIFEST = new URL("../../dist/app.webmanifest", import.meta.url);

/** @returns {import("vite").Plugin} */
export const colors = () => {
  let isBuild = false;
  return {
    name: "colors",
    configResolved: ({ command }) => {
      isBuild = command === "build";
    },
    transformIndexHtml: (html) => withColors(html, readFileSync(TOKENS, "utf8")),
    closeBundle() {
      if (isBuild) writeFileSync(MANIFEST, withColors(readFileSync(MANIFEST, "utf8"), readFileSync(TOKENS, "utf8")));
    },
  };
};

/** The text with the colors that it names: `{--paper}` is `--paper` in the light scheme, `{--paper dark}` in the dark one. */
export function withColors(text, tokens) {
  const [light, dark] = tokens.split("@media (prefers-color-scheme: dark)");
  return text.replace(/\{--([\w-]+)( dark)?\}/g, (_, name, isDark) => {
    const color = new RegExp(`--${name}: ([^;]+);`).exec(isDark ? dark : light)?.[1];
    if (!color) throw new Error(`tokens.css has no color --${name}${isDark ? " for the dark scheme" : ""}`);
    return color;
  });
}
