/** Shots of another club, or more of the same, beside those that are there. */
import { html, nothing, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { trouble } from "../pieces/trouble.js";
import type { Actions } from "../state/actions.js";
import { takesPhotos } from "../state/photos.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";
import { byHand, chosen, FILES } from "./give.js";

/** Closed and empty again once something was added; open from the start while there is one club only. */
export const add = (state: State, clubs: number, actions: Actions): TemplateResult =>
  html`${keyed(
    state.read?.texts ?? 0,
    html`
      <details class="add" ?open=${clubs < 2 || state.notAdded !== null}>
        <summary>${clubs < 2 ? say("add-other") : say("add-more")}</summary>
        <form class="more" @submit=${(event: Event) => submit(event, actions)}>
          <label for="more" class="visually-hidden">${say("add-label")}</label>
          <textarea id="more" name="text" rows="4" spellcheck="false" autocapitalize="off" autocomplete="off"
            placeholder=${say("add-placeholder")}></textarea>
          <div class="buttons">
            <button type="submit">${say("add-these")}</button>
            ${actions.canPaste ? html`<button type="button" @click=${() => actions.pasteFromClipboard(true)}>${say("paste")}</button>` : nothing}
            <label class="button">
              <input type="file" class="visually-hidden" accept=${FILES} multiple
                @change=${(event: Event) => chosen(event, (files) => actions.giveFiles(files, true))} />
              ${say(takesPhotos ? "choose-file-or-photo" : "add-file")}
            </label>
          </div>
          ${trouble(state.notAdded)}
          ${byHand(actions)}
        </form>
      </details>`,
  )}`;

function submit(event: Event, actions: Actions): void {
  event.preventDefault();
  const text = new FormData(event.target as HTMLFormElement).get("text");
  actions.giveText(typeof text === "string" ? text : "", true);
}
