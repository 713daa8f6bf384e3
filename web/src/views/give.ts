/** Part 1 before anything is read: paste, type, drop, choose a file, or try an example. */
import { html, nothing, type TemplateResult } from "lit";
import { EXAMPLES, type Example } from "../examples.js";
import type { Actions } from "../actions.js";
import { part } from "./pieces.js";
import { trouble } from "./trouble.js";
import { SHOWABLE } from "./source.js";
import type { Source, State } from "../state.js";

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
          aria-describedby="text-help" placeholder=${SAMPLE} .value=${unread(state.source)}></textarea>
        <div class="buttons">
          <button type="submit" class="primary">Read these shots</button>
          ${actions.canPaste ? html`<button type="button" @click=${actions.pasteFromClipboard}>Paste</button>` : nothing}
          <label class="button">
            <input type="file" class="visually-hidden" accept=".csv,.tsv,.txt,.json,.html,.md,text/*"
              @change=${(event: Event) => chosen(event, actions)} />
            Choose a file
          </label>
        </div>
        ${trouble(state.trouble)}
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

function chosen(event: Event, actions: Actions): void {
  const input = event.target as HTMLInputElement;
  const file = input.files?.[0];
  if (file) actions.giveFile(file);
  input.value = "";
}
