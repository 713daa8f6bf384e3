/** The text itself and how it was taken apart, open to correction. */
import { html, nothing, type TemplateResult } from "lit";
import type { Delimiter, Layout, LineIs, LineReading, ReadResult, RowCounts } from "../core/engine.js";
import { choice, foreign } from "../pieces/pieces.js";
import { whenOpen } from "../pieces/when-open.js";
import { SHOWABLE } from "../start/give.js";
import type { Actions } from "../state/actions.js";
import type { Source } from "../state/texts.js";
import { say, sayAround } from "../text/say.js";

const DELIMITERS = ["comma", "tab", "semicolon", "pipe", "spaces", "lines"] as const satisfies readonly Delimiter[];
const LAYOUTS: readonly Layout[] = [
  "rows",
  "blocks",
  "column_per_build",
  "row_per_build",
  "side_by_side",
  "column_after_column",
  "averages",
  "measures_down",
];
const LINES: readonly LineIs[] = ["shot", "summary", "headings", "units", "build", "text", "problem"];

export const source = (given: Source, { reading }: ReadResult, actions: Actions): TemplateResult => html`
  <details class="source">
    <summary>${say("text-title")}</summary>
    ${whenOpen(
      () => html`
      <p class="hint">${sayAround("text-of", { name: foreign(given.name), rows: rowsText(reading.rows) })}</p>
      <label class="row">
        <span>${say("cells-apart")}</span>
        ${choice(say("cells-apart-how"), delimiters(reading.delimiter), reading.delimiter, (value) =>
          actions.hint({ delimiter: value as Delimiter }),
        )}
      </label>
      <label class="row">
        <span>${say("decimals")}</span>
        ${choice(say("decimals-how"), marks(), reading.decimal_mark, (value) => actions.hint({ decimal_mark: value }))}
      </label>
      <label class="row">
        <span>${say("stand-as")}</span>
        ${choice(
          say("stand-as-how"),
          LAYOUTS.map((value) => ({ value, label: say(`layout-${value}`) })),
          reading.layout,
          (value) => actions.hint({ layout: value as Layout }),
        )}
      </label>
      ${reading.lines.length > 0 ? lines(reading.lines, actions) : nothing}
      ${text(given.text, actions)}`,
    )}
  </details>`;

const delimiters = (now: Delimiter) => [
  ...((DELIMITERS as readonly Delimiter[]).includes(now) ? [] : [{ value: now, label: now }]),
  ...DELIMITERS.map((value) => ({ value, label: say(`cells-${value}`) })),
];

const marks = () => [
  { value: ".", label: say("decimals-point") },
  { value: ",", label: say("decimals-comma") },
];

/** Lines that are no shots, and what each was taken for. */
const lines = (list: readonly LineReading[], actions: Actions): TemplateResult => html`
  <p class="question">${say("lines-no-shots")}</p>
  <ul class="lines">
    ${list.map(
      ({ line, is, text }) => html`
        <li class="row">
          <span class="hint">${line}. ${foreign(text)}</span>
          ${choice(
            say("line-is", { line: String(line) }),
            LINES.map((value) => ({ value, label: say(`line-${value}`) })),
            is,
            (value) => actions.hint({ lines: { [line]: value as LineIs } }),
          )}
        </li>`,
    )}
  </ul>`;

function rowsText({ shots, summaries, headings, problems }: RowCounts): string {
  const parts = [
    say("rows-shots", { count: shots }),
    summaries > 0 ? say("rows-averages", { count: summaries }) : "",
    headings > 0 ? say("rows-headings", { count: headings }) : "",
    problems > 0 ? say("not-understood", { count: problems }) : "",
  ];
  return `${parts.filter(Boolean).join(", ")}.`;
}

function text(given: string, actions: Actions): TemplateResult {
  if (given.length > SHOWABLE) return html`<p class="hint">${say("text-too-long")}</p>`;
  return html`
    <form @submit=${(event: Event) => submit(event, actions)}>
      <label>${say("text-again")}
        <textarea class="text-again" name="text" rows="8" spellcheck="false" wrap="off" .value=${given}></textarea></label>
      <div class="buttons"><button type="submit">${say("read-again")}</button></div>
    </form>`;
}

function submit(event: Event, actions: Actions): void {
  event.preventDefault();
  const changed = new FormData(event.target as HTMLFormElement).get("text");
  if (typeof changed === "string") actions.changeText(0, changed);
}
