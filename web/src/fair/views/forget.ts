/** Emptying everything that is kept of the golfer on this device, asked twice. */
import { html, type TemplateResult } from "lit";
import { say } from "../../text/say.js";
import type { FairActions } from "../state.js";

export const forgetView = (actions: FairActions): TemplateResult => html`
  <details class="fair-forget no-print">
    <summary>${say("forget-title")}</summary>
    <div class="buttons">
      <button type="button" @click=${actions.pause}>${say("forget-leave")}</button>
      <button type="button" @click=${actions.exportCsv}>${say("save-shots")}</button>
      <button type="button" class="danger" @click=${actions.forget}>${say("forget-everything")}</button>
    </div>
    <p class="hint">${say("forget-help")}</p>
  </details>`;
