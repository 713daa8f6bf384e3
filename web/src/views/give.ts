/** Part 1 before anything is read: paste, type, drop, choose a file, or try an example. */
import { html, nothing, type TemplateResult } from "lit";
import { EXAMPLES, type Example } from "../examples.js";
import type { Actions } from "../actions.js";
import { part } from "./pieces.js";
import { trouble } from "./trouble.js";
import { SHOWABLE } from "./source.js";
import type { Source, State } from "../state.js";

/** What a file may be; the browser offers these first. */
export const FILES = ".csv,.tsv,.txt,.json,.html,.md,.xlsx,.ods,text/*";

const SAMPLE = "club,carry\nMine,231\nMine,226\nNew,238\nNew,229";

export const give = (state: State, actions: Actions): TemplateResult =>
  part(
    "shots",
    "Your shots",
    html`
      <form class="give card" @submit=${(event: Event) => submit(event, actions)}>
        <label for="text" class="question">Paste or type your shots</label>
        <p id="text-help" class="hint">
          One row for each shot, and a column that says which club. A copied table works, headings too.
        </p>
        <textarea id="text" name="text" rows="6" spellcheck="false" autocapitalize="off" autocomplete="off"
          aria-describedby="text-help" placeholder=${SAMPLE} .value=${unread(state.given[0]?.source ?? null)}></textarea>
        <div class="buttons">
          <button type="submit" class="primary">Read these shots</button>
          ${actions.canPaste ? html`<button type="button" @click=${actions.pasteFromClipboard}>Paste</button>` : nothing}
          <label class="button">
            <input type="file" class="visually-hidden" accept=${FILES} multiple
              @change=${(event: Event) => chosen(event, (files) => actions.giveFiles(files))} />
            Choose a file
          </label>
        </div>
        ${trouble(state.trouble)}
        ${byHand(actions)}
      </form>
      <div class="try">
        <h3 class="quiet">No shots at hand? Try an invented session</h3>
        <ul class="examples">
          ${EXAMPLES.map((example) => html`<li>${exampleButton(example, actions)}</li>`)}
        </ul>
      </div>
    `,
  );

const exampleButton = (example: Example, actions: Actions): TemplateResult => html`
  <button type="button" class="example" @click=${() => actions.openExample(example)}>
    <strong>${example.title}</strong>
    <span>${example.truth}</span>
  </button>`;

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
    <button type="button" class="plain" @click=${() => actions.enter({ kind: "grid", at: null })}>Type shots one by one</button>
    <button type="button" class="plain" @click=${() => actions.enter({ kind: "averages", at: null })}>Only averages? Enter them</button>
  </div>`;

/** The files that were chosen; the same ones can be chosen again. */
export function chosen(event: Event, give: (files: readonly File[]) => void): void {
  const input = event.target as HTMLInputElement;
  const files = [...(input.files ?? [])];
  if (files.length > 0) give(files);
  input.value = "";
}
