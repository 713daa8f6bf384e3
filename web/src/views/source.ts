/** The text itself and how it was taken apart, open to correction. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { Hints, ReadResult, RowCounts } from "../engine.js";
import { counted } from "../format.js";
import type { State } from "../state.js";
import { choice, foreign } from "./pieces.js";

/** Longer texts are not shown again: a phone would stop. */
export const SHOWABLE = 200_000;
const DELIMITERS = ["comma", "tab", "semicolon", "pipe", "spaces"];
const MARKS = [
  { value: ".", label: "231.5 (point)" },
  { value: ",", label: "231,5 (comma)" },
];

export const source = (state: State, { reading }: ReadResult, actions: Actions): TemplateResult => html`
  <details class="source">
    <summary>The text and how it was read</summary>
    <p class="hint">${state.source ? foreign(state.source.name) : nothing} ${rowsText(reading.rows)}</p>
    <label class="row">
      <span>Cells are set apart by</span>
      ${choice("How cells are set apart", delimiters(reading.delimiter), reading.delimiter, (value) =>
        actions.hint({ delimiter: value } as Hints),
      )}
    </label>
    <label class="row">
      <span>Decimals are written</span>
      ${choice("How decimals are written", MARKS, reading.decimal_mark, (value) => actions.hint({ decimal_mark: value }))}
    </label>
    ${state.source ? text(state.source.text, actions) : nothing}
  </details>`;

const delimiters = (now: string) =>
  [...new Set([now, ...DELIMITERS])].map((value) => ({ value, label: value.replaceAll("_", " ") }));

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
      <label for="text-again">Your text. Change it and read it again</label>
      <textarea id="text-again" name="text" rows="8" spellcheck="false" wrap="off" .value=${given}></textarea>
      <div class="buttons"><button type="submit">Read it again</button></div>
    </form>`;
}

function submit(event: Event, actions: Actions): void {
  event.preventDefault();
  const changed = new FormData(event.target as HTMLFormElement).get("text");
  if (typeof changed === "string") actions.giveText(changed);
}
