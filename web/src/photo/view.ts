/** Photos on the screen: what is being done, why one is refused, and each number beside its cut-out, doubtful ones first. */
import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { Step } from "../core/photo.js";
import { foreign } from "../pieces/pieces.js";
import { trouble } from "../pieces/trouble.js";
import { say } from "../text/say.js";
import { type Checked, cellsOf, doubtful, isOpen, openIn, textAt } from "./checked.js";
import { cutOut } from "./cut-out.js";
import { type Failed, refusalOf } from "./failed.js";

/** Why what was asked for is not done yet. */
export type Held = "open" | "mixed" | null;

export interface Shown {
  /** The photo being read, and how many there are. */
  now: { name: string; at: number; of: number; step: Step } | null;
  failed: readonly Failed[];
  photos: readonly Checked[];
  held: Held;
}

export interface Doing {
  say: (photo: number, cell: number, text: string) => void;
  finish: () => void;
  cancel: () => void;
  another: (files: readonly File[]) => void;
  type: () => void;
}

export function photosView(shown: Shown, doing: Doing): TemplateResult {
  const { now, failed, photos } = shown;
  if (now) return working(now, doing);
  const count = photos.reduce((sum, photo) => sum + openIn(photo), 0);
  return html`
    <div class="card photos">
      ${failed.map((one) => trouble(refusalOf(one)))}
      ${photos.map((photo, at) => checking(photo, at, doing))}
      ${shown.held === "mixed" ? html`<p class="alert" role="alert">${say("photo-mixed")}</p>` : nothing}
      ${shown.held === "open" && count > 0 ? html`<p class="alert" role="alert">${say("photo-still-open", { count })}</p>` : nothing}
      <div class="buttons">
        ${photos.length > 0 ? html`<button type="button" class="primary" @click=${doing.finish}>${say("photo-take")}</button>` : nothing}
        <label class="button">
          <input type="file" class="visually-hidden" accept="image/*" multiple @change=${(event: Event) => chosen(event, doing)} />
          ${photos.length > 0 ? say("photo-one-more") : say("photo-another")}
        </label>
        ${photos.length === 0 ? html`<button type="button" @click=${doing.type}>${say("type-shots")}</button>` : nothing}
        <button type="button" @click=${doing.cancel}>${say("cancel")}</button>
      </div>
    </div>`;
}

function working({ name, at, of, step }: NonNullable<Shown["now"]>, doing: Doing): TemplateResult {
  const percent = step.of > 0 ? Math.floor((100 * step.done) / step.of) : null;
  return html`
    <div class="card photos" aria-busy="true">
      <p class="working" role="status">${of > 1 ? say("photo-which", { number: at + 1, count: of }) : nothing} ${say(`photo-${step.doing}`)}</p>
      <p class="hint">${foreign(name)}</p>
      ${percent === null ? html`<progress></progress>` : html`<progress max="100" value=${percent}></progress>`}
      <p class="hint">${say("photo-stays")}</p>
      <div class="buttons"><button type="button" @click=${doing.cancel}>${say("stop")}</button></div>
    </div>`;
}

function checking(photo: Checked, at: number, doing: Doing): TemplateResult {
  const { reading } = photo;
  const cells = doubtful(photo);
  const numbers = reading.cells.filter(({ cut }) => cut !== null).length;
  const signed = reading.columns.flatMap(({ has_signs }, column) => (has_signs ? [column] : []));
  return html`
    <fieldset class="photo">
      <legend>${foreign(photo.name)}</legend>
      <p>${cells.length > 0 ? say("photo-doubtful", { count: cells.length, all: numbers }) : say("photo-no-doubt", { all: numbers })}</p>
      <ul class="doubtful">${repeat(
        cells,
        (cell) => cell,
        (cell) => html`<li class=${isOpen(photo, cell) ? "open" : "settled"}>${one(photo, at, cell, doing)}</li>`,
      )}</ul>
      ${signed.map(
        (column) => html`
          <div class="signed">
            <p class="hint">${say("photo-signs", { heading: headingOf(photo, column) })}</p>
            ${cutOuts(photo, at, column, doing)}
          </div>`,
      )}
      <details>
        <summary>${say("photo-all")}</summary>
        ${reading.columns.map(({ is_number }, column) =>
          is_number && !signed.includes(column)
            ? html`<p class="hint">${foreign(headingOf(photo, column))}</p>${cutOuts(photo, at, column, doing)}`
            : nothing,
        )}
      </details>
    </fieldset>`;
}

/** The cut-outs of a column with what was read of each. */
const cutOuts = (photo: Checked, at: number, column: number, doing: Doing): TemplateResult => html`
  <ul class="cut-outs">${cellsOf(photo, column).map(
    (cell) => html`<li>${cutOut(photo.reading, cell, label(photo, cell))}${field(photo, at, cell, doing)}</li>`,
  )}</ul>`;

function one(photo: Checked, at: number, cell: number, doing: Doing): TemplateResult {
  const { doubts, other, text } = photo.reading.cells[cell]!;
  const now = textAt(photo, cell);
  const offered = other !== null && other !== now ? other : null;
  return html`
    ${cutOut(photo.reading, cell, label(photo, cell))}
    <span class="where">${foreign(label(photo, cell))}</span>
    ${field(photo, at, cell, doing)}
    <span class="buttons">
      <button type="button" class=${isOpen(photo, cell) ? "primary" : ""} @click=${() => doing.say(at, cell, now)}>
        ${text === "" && now === "" ? say("photo-empty") : isOpen(photo, cell) ? say("photo-right") : say("photo-settled")}
      </button>
      ${offered === null ? nothing : html`<button type="button" @click=${() => doing.say(at, cell, offered)}>${say("photo-rather", { text: offered })}</button>`}
    </span>
    <span class="hint why">${doubts.map((doubt) => say(`photo-doubt-${doubt}`)).join(" ")}</span>`;
}

const field = (photo: Checked, at: number, cell: number, doing: Doing): TemplateResult => html`
  <input class="number" aria-label=${label(photo, cell)} autocomplete="off" spellcheck="false" .value=${textAt(photo, cell)}
    @change=${(event: Event) => doing.say(at, cell, (event.target as HTMLInputElement).value)} />`;

const headingOf = ({ reading }: Checked, column: number): string =>
  reading.columns[column]!.heading || say("photo-column", { number: column + 1 });

function label(photo: Checked, cell: number): string {
  const { row, column } = photo.reading.cells[cell]!;
  const heading = headingOf(photo, column);
  return photo.reading.is_tiles ? heading : say("photo-place", { heading, row: row + 1 });
}

function chosen(event: Event, doing: Doing): void {
  const input = event.target as HTMLInputElement;
  const files = [...(input.files ?? [])];
  if (files.length > 0) doing.another(files);
  input.value = "";
}
