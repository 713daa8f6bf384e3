/** The text itself and how it was taken apart, open to correction. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { Delimiter, Layout, LineIs, LineReading, ReadResult, RowCounts } from "../engine.js";
import { counted } from "../format.js";
import type { Source } from "../texts.js";
import { choice, foreign } from "./pieces.js";

/** Longer texts are not shown again: a phone would stop. */
export const SHOWABLE = 200_000;
const DELIMITERS: readonly Delimiter[] = ["comma", "tab", "semicolon", "pipe", "spaces", "lines"];
const LAYOUTS: Record<Layout, string> = {
  rows: "one row for each shot",
  blocks: "blocks, each under its club’s name",
  column_per_build: "one column for each club",
  side_by_side: "clubs side by side",
  column_after_column: "columns one below the other",
  averages: "averages, one row for each club",
  measures_down: "averages, measures down",
};
const LINES: Record<LineIs, string> = {
  shot: "a shot",
  summary: "averages and the like",
  headings: "headings",
  units: "units",
  build: "a club’s name",
  text: "text",
  problem: "not understood",
};
const MARKS = [
  { value: ".", label: "231.5 (point)" },
  { value: ",", label: "231,5 (comma)" },
];

export const source = (given: Source, { reading }: ReadResult, actions: Actions): TemplateResult => html`
  <details class="source">
    <summary>The text and how it was read</summary>
    <p class="hint">${foreign(given.name)}: ${rowsText(reading.rows)}</p>
    <label class="row">
      <span>Cells are set apart by</span>
      ${choice("How cells are set apart", delimiters(reading.delimiter), reading.delimiter, (value) =>
        actions.hint({ delimiter: value as Delimiter }),
      )}
    </label>
    <label class="row">
      <span>Decimals are written</span>
      ${choice("How decimals are written", MARKS, reading.decimal_mark, (value) => actions.hint({ decimal_mark: value }))}
    </label>
    <label class="row">
      <span>Shots stand as</span>
      ${choice("How shots stand in the text", entries(LAYOUTS), reading.layout, (value) => actions.hint({ layout: value as Layout }))}
    </label>
    ${reading.lines.length > 0 ? lines(reading.lines, actions) : nothing}
    ${text(given.text, actions)}
  </details>`;

const delimiters = (now: Delimiter) => [...new Set([now, ...DELIMITERS])].map((value) => ({ value, label: value }));

const entries = (names: Record<string, string>) => Object.entries(names).map(([value, label]) => ({ value, label }));

/** Lines that are no shots, and what each was taken for. */
const lines = (list: readonly LineReading[], actions: Actions): TemplateResult => html`
  <p class="question">Lines that are no shots</p>
  <ul class="lines">
    ${list.map(
      ({ line, is, text }) => html`
        <li class="row">
          <span class="hint">${line}. ${foreign(text)}</span>
          ${choice(`What line ${line} is`, entries(LINES), is, (value) => actions.hint({ lines: { [line]: value as LineIs } }))}
        </li>`,
    )}
  </ul>`;

function rowsText({ shots, summaries, headings, problems }: RowCounts): string {
  const parts = [
    counted(shots, "row with shots", "rows with shots"),
    summaries > 0 ? counted(summaries, "row of averages", "rows of averages") : "",
    headings > 0 ? counted(headings, "heading or text", "headings or texts") : "",
    problems > 0 ? `${counted(problems, "row")} not understood` : "",
  ];
  return `${parts.filter(Boolean).join(", ")}.`;
}

function text(given: string, actions: Actions): TemplateResult {
  if (given.length > SHOWABLE) return html`<p class="hint">The text is too long to be shown here.</p>`;
  return html`
    <form @submit=${(event: Event) => submit(event, actions)}>
      <label>Your text. Change it and read it again
        <textarea class="text-again" name="text" rows="8" spellcheck="false" wrap="off" .value=${given}></textarea></label>
      <div class="buttons"><button type="submit">Read it again</button></div>
    </form>`;
}

function submit(event: Event, actions: Actions): void {
  event.preventDefault();
  const changed = new FormData(event.target as HTMLFormElement).get("text");
  if (typeof changed === "string") actions.changeText(0, changed);
}
