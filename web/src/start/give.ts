/** Part 1 before anything is read: paste, type, drop, choose a file, or try an example. */
import { html, nothing, type TemplateResult } from "lit";
import { part } from "../pieces/pieces.js";
import { trouble } from "../pieces/trouble.js";
import type { Actions } from "../state/actions.js";
import { EXAMPLES, type Example } from "../state/examples.js";
import { takesPhotos } from "../state/photos.js";
import type { Source, State } from "../state/state.js";
import { say } from "../text/say.js";
import { lengthUnit } from "../text/units.js";

/** Longer texts are not shown again: a phone would stop. */
export const SHOWABLE = 200_000;
/** What a file may be; the browser offers these first. */
export const FILES = `.csv,.tsv,.txt,.json,.html,.md,.xlsx,.ods,text/*${takesPhotos ? ",image/*" : ""}`;

const sample = (): string =>
  [
    say("sample-columns"),
    `${say("sample-mine")},231`,
    `${say("sample-mine")},226`,
    `${say("sample-new")},238`,
    `${say("sample-new")},229`,
  ].join("\n");

export const give = (state: State, actions: Actions): TemplateResult =>
  part(
    "shots",
    say("your-shots"),
    html`
      <form class="give card" @submit=${(event: Event) => submit(event, actions)}>
        <label for="text" class="question">${say("give-question")}</label>
        <p id="text-help" class="hint">
          ${say("give-help")}
        </p>
        <textarea id="text" name="text" rows="6" spellcheck="false" autocapitalize="off" autocomplete="off"
          aria-describedby="text-help" placeholder=${sample()} .value=${unread(state.given[0]?.source ?? null)}></textarea>
        <div class="buttons">
          <button type="submit" class="primary">${say("give-read")}</button>
          ${actions.canPaste ? html`<button type="button" @click=${actions.pasteFromClipboard}>${say("paste")}</button>` : nothing}
          <label class="button">
            <input type="file" class="visually-hidden" accept=${FILES} multiple
              @change=${(event: Event) => chosen(event, (files) => actions.giveFiles(files))} />
            ${say(takesPhotos ? "choose-file-or-photo" : "choose-file")}
          </label>
        </div>
        ${trouble(state.trouble)}
        ${byHand(actions)}
      </form>
      <div class="try">
        <h3 class="quiet">${say("try-title")}</h3>
        <ul class="examples">
          ${EXAMPLES.map((example) => html`<li>${exampleButton(example, actions)}</li>`)}
        </ul>
      </div>
    `,
  );

const exampleButton = (example: Example, actions: Actions): TemplateResult => html`
  <button type="button" class="example" @click=${() => actions.openExample(example)}>
    <strong>${say(`example-${example.id}`)}</strong>
    <span>${truth(example)}</span>
  </button>`;

/** What is true of it, by how it was made: its yards in the unit shown. */
const truth = ({ id }: Example): string =>
  id === "twelve" ? say("example-twelve-truth", { unit: lengthUnit() }) : say(`example-${id}-truth`);

/** A text that could not be read goes back into the field: nothing is lost. */
const unread = (source: Source | null): string => (source && source.text.length <= SHOWABLE ? source.text : "");

function submit(event: Event, actions: Actions): void {
  event.preventDefault();
  const text = new FormData(event.target as HTMLFormElement).get("text");
  actions.giveText(typeof text === "string" ? text : "");
}

/** Entering what stands on paper, on a screen or in a photo. */
export const byHand = (actions: Actions): TemplateResult => html`
  <div class="by-hand">
    <button type="button" class="plain" @click=${() => actions.enter({ kind: "grid", at: null })}>${say("type-shots")}</button>
    <button type="button" class="plain" @click=${() => actions.enter({ kind: "averages", at: null })}>${say("enter-averages")}</button>
  </div>`;

/** The files that were chosen; the same ones can be chosen again. */
export function chosen(event: Event, give: (files: readonly File[]) => void): void {
  const input = event.target as HTMLInputElement;
  const files = [...(input.files ?? [])];
  if (files.length > 0) give(files);
  input.value = "";
}
