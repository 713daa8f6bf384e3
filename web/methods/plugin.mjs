/** Reads what the methods page is made of and fills it in while the site is built; the page itself needs no script. */
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { initSync, measures } from "../pkg/straight_answer.js";
import { fill } from "./fill.mjs";

const here = new URL("./", import.meta.url);
const measured = (name) => {
  const file = new URL(`../../tests/${name}.json`, here);
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;
};

/** @returns {import("vite").Plugin} */
export const methodsPage = () => ({
  name: "methods-page",
  transformIndexHtml: {
    order: "pre",
    handler: (html, { path }) => (path.endsWith("/methods.html") ? fill(html, content()) : html),
  },
});

function content() {
  const text = (name) => readFileSync(new URL(name, here), "utf8");
  const sections = readdirSync(here).filter((name) => name.endsWith(".html")).sort().map(text);
  initSync({ module: readFileSync(new URL("../pkg/straight_answer_bg.wasm", here)) });
  return { sections, measures: measures(), rows: measured("calibration"), rivals: measured("rivals") };
}
