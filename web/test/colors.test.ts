/** Colors stand in `styles/tokens.css` alone: everything else names them. */
import { expect, test } from "vitest";
import { withColors } from "../colors/plugin.mjs";
import tokens from "../src/styles/tokens.css?raw";

const files = {
  ...import.meta.glob<string>("../src/**/*.{css,ts}", { query: "?raw", import: "default", eager: true }),
  ...import.meta.glob<string>("../{methods,public}/**/*.{html,mjs,json,webmanifest}", {
    query: "?raw",
    import: "default",
    eager: true,
  }),
  ...import.meta.glob<string>("../*.html", { query: "?raw", import: "default", eager: true }),
};

/** `#` and digits that are no color's would have to be an id: an id of the page has a letter beyond f. */
const WRITTEN = /#(?:[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})\b|\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch)\(/gi;
/** In style sheets names count too, where a value stands. */
const NAMED =
  /:[^;{}]*[\s:,(](?:white|black|red|green|blue|yellow|orange|purple|pink|brown|gr[ae]y|silver|navy|teal|gold)\b(?!-)[^;{}]*;/gi;

const literals = (path: string, text: string): string[] => [
  ...(text.match(WRITTEN) ?? []),
  ...(path.endsWith(".css") ? (text.replace(/\/\*.*?\*\//gs, "").match(NAMED) ?? []) : []),
];

test("no color is written outside of the tokens", () => {
  const found = Object.entries(files)
    .map(([path, text]) => [path, literals(path, text)] as const)
    .filter(([, all]) => all.length > 0);
  expect(found.map(([path]) => path)).toEqual(["../src/styles/tokens.css"]);
});

test("colors are found in every way of writing them", () => {
  for (const color of [
    "#fff",
    "#FFFFFF",
    "#00000080",
    "rgb(0 0 0 / 0.3)",
    "hsl(1 2% 3%)",
    "oklch(1 0 0)",
    "white",
    "1px solid gray",
  ]) {
    expect(literals("a.css", `a { border: ${color}; }`), color).toHaveLength(1);
  }
  expect(
    literals(
      "a.css",
      "a { white-space: normal; color: var(--ink); background: color-mix(in srgb, var(--ink) 12%, CanvasText); }",
    ),
  ).toEqual([]);
});

test("what cannot read a style sheet is given the colors of either scheme", () => {
  const [paper, dark] = [...tokens.matchAll(/--paper: (#\w+);/g)].map(([, color]) => color!);
  expect(withColors("{--paper} {--paper dark}", tokens)).toBe(`${paper} ${dark}`);
  expect(paper).not.toBe(dark);
  expect(() => withColors("{--nothing}", tokens)).toThrow("--nothing");
});
