/**
 * Puts the methods page of a language together: its frame and written sections, the table of margins from the core's
 * own list, and the measured error rates. Pure; `plugin.mjs` reads the files. Without measured rates the page says so.
 */

import { FluentBundle, FluentResource } from "@fluent/bundle";
import { describedBy } from "./figures.mjs";

/** @import { Content } from "./fill.mjs" */

/** @param {string} frame the page with its marks  @param {Content} content */
export function fill(frame, content) {
  const tell = teller(content);
  const text = content.sections.join("\n");
  return frame
    .replace(/%([\w-]+)%/g, (_, id) => frameText(id, content, tell))
    .replace("<!-- contents -->", () => contents(text, tell))
    .replace("<!-- sections -->", () => text)
    .replace("<!-- margins -->", () => margins(content.measures, tell))
    .replace("<!-- measured-summary -->", () => summary(content.rows, tell))
    .replace("<!-- rivals -->", () => compared(content.rivals, tell))
    .replace(/<!-- measured ([\d ]+) -->/g, (_, targets) =>
      measured(content.rows, targets.split(" ").map(Number), tell),
    );
}

/** How a language says things: its words, its numbers, and what was counted. */
function teller({ language, words, figures }) {
  const bundle = new FluentBundle(language, { useIsolating: false });
  bundle.addResource(new FluentResource(words));
  const say = (id, told) => {
    const pattern = bundle.getMessage(id)?.value;
    if (!pattern) throw new Error(`${language}: nothing is said by ${id}`);
    return bundle.formatPattern(pattern, told);
  };
  const number = (value, digits) => new Intl.NumberFormat(language, digits).format(value).replace("-", "\u2212");
  const fixed = (value, digits) => number(value, { minimumFractionDigits: digits, maximumFractionDigits: digits });
  const counted = figures
    ? describedBy(figures, (figure) => fixed(Number(figure), figure.split(".")[1]?.length ?? 0))
    : (text) => text;
  return { say, number, fixed, counted };
}

/** What stands in the frame: its language, where that language's page is, or a text. */
function frameText(id, { language, other }, { say }) {
  const known = { language, page: language === "en" ? "./" : `./?lang=${language}`, other: otherLanguage(other) };
  return known[id] ?? say(id);
}

const otherLanguage = ({ language, name, file }) =>
  `<a href="./${file}" lang="${language}" hreflang="${language}">${name}</a>`;

/** Links to every section, by its heading. */
function contents(text, { say }) {
  const headings = [...text.matchAll(/<section id="([\w-]+)">\s*<h2>(.*?)<\/h2>/g)];
  const items = headings.map(([, id, heading]) => `<li><a href="#${id}">${heading}</a></li>`);
  return `<nav aria-label="${say("contents")}"><ul class="contents">${items.join("")}</ul></nav>`;
}

function margins(measures, { say, number }) {
  const withUnit = (margin, unit) =>
    unit === "deg" ? `${number(margin)}°` : `${number(margin)}${unit ? `\u00a0${unit}` : ""}`;
  const rows = measures.map(
    ({ name, margin, unit, margin_why }) =>
      `<tr><th scope="row">${escaped(name)}</th><td>${withUnit(margin, unit)}</td><td>${escaped(margin_why)}</td></tr>`,
  );
  return table([say("margin-measure"), say("margin-least"), say("margin-why")], rows);
}

function summary(rows, { say, number }) {
  if (!rows) return unmeasured(say("not-yet-measured"));
  const within = rows.filter((row) => row.pass).length;
  const sessions = rows.reduce((sum, row) => sum + row.sessions, 0);
  return `<p>${say("within-all", { within, all: rows.length, sessions: number(sessions) })}</p>`;
}

function measured(rows, targets, tell) {
  const shown = (rows ?? []).filter((row) => targets.includes(row.target));
  const { say, counted } = tell;
  if (shown.length === 0) return unmeasured(say("not-yet-measured-here"));
  const within = shown.filter((row) => row.pass).length;
  const lines = shown.map(
    (
      row,
    ) => `<tr><th scope="row">${escaped(counted(row.what))}</th><td>${value(row, row.measured, tell)}</td><td>${value(row, row.se, tell)}</td>
      <td>${limit(row, tell)}</td><td>${row.pass ? say("yes") : `<strong>${say("no")}</strong>`}</td></tr>`,
  );
  return `<details class="measured"><summary>${say("within", { within, all: shown.length })}</summary>
    ${table([say("figure"), say("measured"), say("standard-error"), say("limit"), say("is-within")], lines)}</details>`;
}

/** The answer's method beside others: a line for each method and number of shots, a column for each kind of session. */
function compared(rivals, { say, number, fixed, counted }) {
  if (!rivals) return unmeasured(say("not-yet-compared"));
  const kinds = [...new Set(rivals.map(({ what }) => what))];
  const nameOf = ({ each, method }) => say("method-shots", { method: counted(method), each });
  const lines = [...new Set(rivals.map(nameOf))].map((name) => [
    name,
    rivals.filter((figure) => nameOf(figure) === name),
  ]);
  const rate = (line, kind) => line.find(({ what }) => what === kind);
  const percent = (figure) => (figure ? `${fixed(figure.rate * 100, 1)}\u00a0%` : "");
  const rows = lines.map(
    ([name, line]) =>
      `<tr><th scope="row">${escaped(name)}</th>${kinds.map((kind) => `<td>${percent(rate(line, kind))}</td>`).join("")}</tr>`,
  );
  const points = fixed(Math.max(...rivals.map(({ se }) => se)) * 100, 1);
  return `<details class="measured"><summary>${say("compared", { sessions: number(rivals[0].sessions), points })}</summary>
    ${table([say("method"), ...kinds.map((kind) => escaped(counted(kind)))], rows)}</details>`;
}

function limit(row, tell) {
  const most = value(row, row.at_most, tell);
  return row.at_least === null
    ? tell.say("at-most", { most })
    : tell.say("from-to", { least: value(row, row.at_least, tell), most });
}

/** Shares as percent; what is measured in yards says so at the end of its description. */
const value = (row, figure, { fixed }) =>
  /\byd$/.test(row.what) ? `${fixed(figure, 2)}\u00a0yd` : `${fixed(figure * 100, 2)}\u00a0%`;

const unmeasured = (said) => `<p class="unmeasured">${said}</p>`;

const table = (headings, rows) => `<div class="scroll" tabindex="0" role="group" aria-label="${headings[0]}"><table>
  <thead><tr>${headings.map((heading) => `<th scope="col">${heading}</th>`).join("")}</tr></thead>
  <tbody>${rows.join("")}</tbody></table></div>`;

const escaped = (text) =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
