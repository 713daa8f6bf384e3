/** Reads what the methods page is made of and fills it in while the site is built; the page itself needs no script. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { initSync, measures } from "../pkg/straight_answer.js";
import { fill } from "./fill.mjs";

/** The page of each language; the core is handed the words of all but its own. */
const PAGES = [
  { language: "en", name: "English", file: "methods.html", table: null },
  { language: "es", name: "Español", file: "methods.es.html", table: "../pkg/straight_answer_es.txt" },
];

const here = new URL("./", import.meta.url);
const text = (name) => readFileSync(new URL(name, here), "utf8");

/** @returns {import("vite").Plugin} */
export const methodsPage = () => ({
  name: "methods-page",
  transformIndexHtml: {
    order: "pre",
    handler: (html, { path }) => {
      const page = PAGES.find(({ file }) => path.endsWith(`/${file}`));
      return page ? fill(text("frame.html"), contentOf(page)) : html;
    },
  },
});

function contentOf({ language, table }) {
  const sections = readdirSync(new URL(`${language}/`, here))
    .filter((name) => name.endsWith(".html"))
    .sort();
  return {
    language,
    other: PAGES.find((page) => page.language !== language),
    words: text(`${language}/words.ftl`),
    // The tests write down in English what they count.
    figures: language === "en" ? null : JSON.parse(text(`${language}/figures.json`)),
    sections: sections.map((name) => text(`${language}/${name}`)),
    measures: measuresIn(table),
    rows: measured("calibration"),
    rivals: measured("rivals"),
  };
}

function measuresIn(table) {
  initSync({ module: readFileSync(new URL("../pkg/straight_answer_bg.wasm", here)) });
  return measures({ table: table ? text(table) : null });
}

function measured(name) {
  const file = new URL(`../../tests/${name}.json`, here);
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;
}
