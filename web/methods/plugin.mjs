/** Reads what the methods page is made of and fills it in while the site is built; the page itself needs no script. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { initSync, measures } from "../pkg/straight_answer.js";
import { fill } from "./fill.mjs";

/** The languages; the core is handed the words of all but its own. */
const LANGUAGES = [
  { language: "en", name: "English", ending: ".html", table: null },
  { language: "es", name: "Español", ending: ".es.html", table: "../pkg/straight_answer_es.txt" },
];
/** What a golfer reads in two minutes, and everything else. */
const PARTS = { first: "methods", full: "methods-full" };
const fileOf = (part, { ending }) => `${PARTS[part]}${ending}`;

const here = new URL("./", import.meta.url);
const text = (name) => readFileSync(new URL(name, here), "utf8");

/** @returns {import("vite").Plugin} */
export const methodsPage = () => ({
  name: "methods-page",
  transformIndexHtml: {
    order: "pre",
    handler: (html, { path }) => {
      for (const language of LANGUAGES)
        for (const part of Object.keys(PARTS))
          if (path.endsWith(`/${fileOf(part, language)}`)) return fill(text("frame.html"), contentOf(part, language));
      return html;
    },
  },
});

function contentOf(part, own) {
  const { language, table } = own;
  const sections = readdirSync(new URL(`${language}/`, here))
    .filter((name) => /^\d.*\.html$/.test(name))
    .sort();
  const other = LANGUAGES.find((one) => one.language !== language);
  return {
    part,
    language,
    other: { language: other.language, name: other.name, file: fileOf(part, other) },
    firstPage: fileOf("first", own),
    fullPage: fileOf("full", own),
    first: text(`${language}/first.html`),
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
