/**
 * Puts the methods page together: the written sections, the table of margins from the core's own list, and the
 * measured error rates. Pure; `plugin.mjs` reads the files. Without measured rates the page says so.
 */

/** @import { Measure } from "../pkg/straight_answer.js" */
/** @typedef {{ target: number, what: string, measured: number, se: number, sessions: number,
 *    at_least: number | null, at_most: number, pass: boolean }} Row a line of tests/calibration.json */
/** @typedef {{ each: number, method: string, what: string, rate: number, se: number, sessions: number }} Rival a figure
 *    of tests/rivals.json */

/**
 * @param {string} page the page with its marks
 * @param {{ sections: string[], measures: Measure[], rows: Row[] | null, rivals: Rival[] | null }} content
 */
export function fill(page, { sections, measures, rows, rivals }) {
  const text = sections.join("\n");
  return page
    .replace("<!-- contents -->", () => contents(text))
    .replace("<!-- sections -->", () => text)
    .replace("<!-- margins -->", () => margins(measures))
    .replace("<!-- measured-summary -->", () => summary(rows))
    .replace("<!-- rivals -->", () => compared(rivals))
    .replace(/<!-- measured ([\d ]+) -->/g, (_, targets) => measured(rows, targets.split(" ").map(Number)));
}

/** Links to every section, by its heading. */
function contents(text) {
  const headings = [...text.matchAll(/<section id="([\w-]+)">\s*<h2>(.*?)<\/h2>/g)];
  const items = headings.map(([, id, heading]) => `<li><a href="#${id}">${heading}</a></li>`);
  return `<nav aria-label="On this page"><ul class="contents">${items.join("")}</ul></nav>`;
}

function margins(measures) {
  const rows = measures.map(
    ({ name, margin, unit, margin_why }) =>
      `<tr><th scope="row">${escaped(name)}</th><td>${withUnit(margin, unit)}</td><td>${escaped(margin_why)}</td></tr>`,
  );
  return table(["Measure", "At least", "Why"], rows);
}

function summary(rows) {
  if (!rows) return `<p class="unmeasured">The error rates are not yet measured.</p>`;
  const within = rows.filter((row) => row.pass).length;
  const sessions = rows.reduce((sum, row) => sum + row.sessions, 0);
  return `<p><strong>${within} of ${rows.length}</strong> figures lie within their limits, on ${grouped(sessions)} invented sessions. A limit is
    the figure that was measured when the method was chosen, plus about three of its standard errors.</p>`;
}

function measured(rows, targets) {
  if (!rows) return `<p class="unmeasured">Measured: not yet measured.</p>`;
  const shown = rows.filter((row) => targets.includes(row.target));
  if (shown.length === 0) return `<p class="unmeasured">Measured: not yet measured.</p>`;
  const within = shown.filter((row) => row.pass).length;
  const lines = shown.map(
    (row) => `<tr><th scope="row">${escaped(row.what)}</th><td>${value(row, row.measured)}</td><td>${value(row, row.se)}</td>
      <td>${limit(row)}</td><td>${row.pass ? "yes" : "<strong>no</strong>"}</td></tr>`,
  );
  return `<details class="measured"><summary>Measured: ${within} of ${shown.length} within their limits</summary>
    ${table(["Invented sessions, and what was counted", "Measured", "± its standard error", "Limit", "Within"], lines)}</details>`;
}

/** The answer's method beside others: a line for each method and number of shots, a column for each kind of session. */
function compared(rivals) {
  if (!rivals) return `<p class="unmeasured">Not yet measured against other methods.</p>`;
  const kinds = [...new Set(rivals.map(({ what }) => what))];
  const nameOf = ({ each, method }) => `${method}, ${each} shots each`;
  const lines = [...new Set(rivals.map(nameOf))].map((name) => [name, rivals.filter((figure) => nameOf(figure) === name)]);
  const rate = (line, kind) => line.find(({ what }) => what === kind);
  const percent = (figure) => (figure ? `${(figure.rate * 100).toFixed(1)}\u00a0%` : "");
  const rows = lines.map(
    ([name, line]) =>
      `<tr><th scope="row">${escaped(name)}</th>${kinds.map((kind) => `<td>${percent(rate(line, kind))}</td>`).join("")}</tr>`,
  );
  const worst = Math.max(...rivals.map(({ se }) => se)) * 100;
  return `<details class="measured"><summary>Called different, by method, on the same ${grouped(rivals[0].sessions)} invented sessions each
    (standard error at most ${worst.toFixed(1)} points)</summary>${table(["Method", ...kinds.map(escaped)], rows)}</details>`;
}

function limit(row) {
  const most = value(row, row.at_most);
  return row.at_least === null ? `at most ${most}` : `${value(row, row.at_least)} to ${most}`;
}

/** Shares as percent; what is measured in yards says so at the end of its description. */
function value(row, figure) {
  const inYards = /\byd$/.test(row.what);
  const text = inYards ? `${figure.toFixed(2)}\u00a0yd` : `${(figure * 100).toFixed(2)}\u00a0%`;
  return text.replace("-", "\u2212");
}

const table = (headings, rows) => `<div class="scroll" tabindex="0" role="group" aria-label="${headings[0]}"><table>
  <thead><tr>${headings.map((heading) => `<th scope="col">${heading}</th>`).join("")}</tr></thead>
  <tbody>${rows.join("")}</tbody></table></div>`;

const withUnit = (margin, unit) => (unit === "deg" ? `${margin}°` : `${margin}${unit ? `\u00a0${unit}` : ""}`);

const grouped = (n) => new Intl.NumberFormat("en").format(n);

const escaped = (text) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
