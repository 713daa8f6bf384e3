/** One step back, and one of those again, each named by what was done. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../state/actions.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";

export const undo = ({ past, ahead }: State, actions: Actions): TemplateResult | typeof nothing =>
  past.length + ahead.length === 0
    ? nothing
    : html`
        <p class="undo">
          ${past.length > 0 ? html`<button type="button" class="plain" @click=${actions.undo}>${say("undo-done", { done: past.at(-1)!.done })}</button>` : nothing}
          ${ahead.length > 0 ? html`<button type="button" class="plain" @click=${actions.redo}>${say("redo-done", { done: ahead.at(-1)!.done })}</button>` : nothing}
        </p>`;
