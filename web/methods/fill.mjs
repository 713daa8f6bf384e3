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
  const full = content.sections.join("\n");
  return frame
    .replace(/%([\w-]+)%/g, (_, id) => frameText(id, content, tell))
    .replace("<!-- contents -->", () => (content.part === "full" ? contents(full, tell) : ""))
    .replace("<!-- sections -->", () => (content.part === "full" ? full : content.first))
    .replace("<!-- full-contents -->", () => fullContents(full, content))
    .replace("<!-- margins -->", () => margins(content.measures, tell))
    .replace("<!-- measured-summary -->", () => summary(content.rows, tell))
    .replace("<!-- rivals -->", () => compared(content.rivals, tell))
    .replace(/<!-- measured ([\d ]+) -->/g, (_, targets) =>
      measured(content.rows, targets.split(" ").map(Number), tell),
    )
    .replace(/<!-- (in100|range|value) (\d+) (.*?) -->/g, (_, form, target, what) =>
      said(form, content.rows, Number(target), what, tell),
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

/** What stands in the frame: its language, where that language's page is, or a text of this part. */
function frameText(id, { language, other, part, fullPage, firstPage }, { say }) {
  const known = {
    language,
    page: language === "en" ? "./" : `./?lang=${language}`,
    other: otherLanguage(other),
    beside: part === "full" ? firstPage : fullPage,
    back: say("back"),
  };
  return known[id] ?? say(`${part}-${id}`);
}

const otherLanguage = ({ language, name, file }) =>
  `<a href="./${file}" lang="${language}" hreflang="${language}">${name}</a>`;

const headingsOf = (text) => [...text.matchAll(/<section id="([\w-]+)">\s*<h2>(.*?)<\/h2>/g)];

/** On the first page every section of the full one by its name, so that an old link to it leads on. */
const fullContents = (text, { fullPage }) =>
  `<ul class="contents">${headingsOf(text)
    .map(([, id, heading]) => `<li id="${id}"><a href="./${fullPage}#${id}">${heading}</a></li>`)
    .join("")}</ul>`;

/** Links to every section, by its heading. */
function contents(text, { say }) {
  const items = headingsOf(text).map(([, id, heading]) => `<li><a href="#${id}">${heading}</a></li>`);
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

/** How much of what was promised was kept, and by how much not. */
function summary(rows, { say, number, fixed, counted }) {
  if (!rows) return unmeasured(say("not-yet-measured"));
  const wrong = rows.filter(promisesLittleError);
  const found = rows.filter(promisesToFind);
  const worst = wrong.reduce((most, row) => (row.measured > most.measured ? row : most), wrong[0]);
  const told = {
    sessions: number(rows.reduce((sum, row) => sum + row.sessions, 0)),
    rates: wrong.length,
    above: wrong.filter(isWorse).length,
    most: worst ? fixed(worst.measured * 100, 1) : "",
    where: worst ? escaped(counted(worst.what)) : "",
    found: found.length,
    below: found.filter(isWorse).length,
    points: fixed(Math.max(0, ...found.map((row) => row.promised_at_least - row.measured)) * 100, 1),
  };
  return `<p>${say("kept", told)}</p><p>${say("guarded")}</p>`;
}

const promisesLittleError = (row) => typeof row.promised_at_most === "number";
const promisesToFind = (row) => typeof row.promised_at_least === "number";

/** Worse than promised. What is to be found is promised in whole percent and read so. */
const isWorse = (row) =>
  promisesLittleError(row)
    ? row.measured > row.promised_at_most
    : promisesToFind(row) && Math.round(row.measured * 100) < Math.round(row.promised_at_least * 100);

function measured(rows, targets, tell) {
  const shown = (rows ?? []).filter((row) => targets.includes(row.target));
  const { say, counted } = tell;
  if (shown.length === 0) return unmeasured(say("not-yet-measured-here"));
  const lines = shown.map(
    (row) => `<tr><th scope="row">${escaped(counted(row.what))}</th><td>${value(row, row.measured, tell)}</td>
      <td>${value(row, row.se, tell)}</td><td>${promised(row, tell)}</td><td>${mark(row, tell)}</td></tr>`,
  );
  const headings = ["figure", "measured", "standard-error", "promised", "against-promise"];
  return `<details class="measured"><summary>${ranges(shown, tell)}</summary>
    ${table(headings.map(say), lines)}</details>`;
}

/** A section's figures in a line: from the least to the most of each kind, and how many are worse than promised. */
function ranges(rows, { say, fixed }) {
  const part = (id, of) => {
    if (of.length === 0) return [];
    const rates = of.map((row) => row.measured * 100);
    const [least, most] = [Math.min(...rates), Math.max(...rates)].map((rate) => fixed(rate, 1));
    return [say(id, { least, most, count: of.length, worse: of.filter(isWorse).length })];
  };
  const others = rows.filter((row) => !promisesLittleError(row) && !promisesToFind(row)).length;
  return [
    ...part("range-wrong", rows.filter(promisesLittleError)),
    ...part("range-found", rows.filter(promisesToFind)),
    ...(others ? [say("range-others", { count: others })] : []),
  ].join(" ");
}

const promised = (row, tell) => {
  if (promisesLittleError(row)) return tell.say("at-most", { most: value(row, row.promised_at_most, tell, 0) });
  return promisesToFind(row) ? value(row, row.promised_at_least, tell, 0) : tell.say("no-promise");
};

const mark = (row, { say }) => {
  if (!isWorse(row)) return promisesLittleError(row) || promisesToFind(row) ? say("kept-mark") : "";
  return `<strong>${say(promisesToFind(row) ? "below-mark" : "above-mark")}</strong>`;
};

/** A counted figure within a sentence: in 100, in its unit, or the least and the most of all that fit. */
function said(form, rows, target, what, { say, fixed }) {
  const fitting = (rows ?? []).filter(
    (row) => row.target === target && what.split(" + ").every((part) => row.what.includes(part)),
  );
  if (rows && fitting.length === 0) throw new Error(`nothing was counted of ${target}: ${what}`);
  if (!rows) return say("not-counted");
  const figures = fitting.map((row) => row.measured);
  if (form === "value") return `${fixed(figures[0], 1)}\u00a0${fitting[0].unit}`;
  if (form === "in100") return fixed(figures[0] * 100, 0);
  const [least, most] = [Math.min(...figures), Math.max(...figures)].map((figure) => fixed(figure * 100, 1));
  const text = say("from-to", { least, most });
  return fitting.some(isWorse) ? `${text} <strong>${say("above-mark")}</strong>` : text;
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

/** Shares as percent; what is no share carries its unit. */
const value = (row, figure, { fixed }, digits = 2) =>
  row.unit ? `${fixed(figure, digits)}\u00a0${row.unit}` : `${fixed(figure * 100, digits)}\u00a0%`;

const unmeasured = (said) => `<p class="unmeasured">${said}</p>`;

const table = (headings, rows) => `<div class="scroll" tabindex="0" role="group" aria-label="${headings[0]}"><table>
  <thead><tr>${headings.map((heading) => `<th scope="col">${heading}</th>`).join("")}</tr></thead>
  <tbody>${rows.join("")}</tbody></table></div>`;

const escaped = (text) =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
