/** Leaving the test, or emptying everything that is kept of anybody on this device: what goes is named, and asked. */
import { html, nothing, type TemplateResult } from "lit";
import { listOf } from "../../book/list.js";
import type { Counts } from "../../book/shelf.js";
import { say } from "../../text/say.js";
import type { FairActions, FairState } from "../state.js";

export const forgetView = ({ forgetting }: FairState, actions: FairActions): TemplateResult => html`
  <details class="fair-forget no-print">
    <summary>${say("forget-title")}</summary>
    <div class="buttons">
      <button type="button" @click=${actions.pause}>${say("forget-leave")}</button>
      <button type="button" @click=${actions.exportCsv}>${say("save-shots")}</button>
      <button type="button" @click=${actions.askToForget}>${say("forget-everything")}</button>
    </div>
    ${forgetting ? asked(forgetting, actions.forget) : nothing}
  </details>`;

const asked = (counts: Counts, forget: () => void): TemplateResult => html`
  <div class="notice trouble" role="alert">
    <p><strong>${say("forget-all", { all: listOf(counts) })}</strong></p>
    <p>${say("forget-help")}</p>
    <div class="buttons"><button type="button" class="danger" @click=${forget}>${say("forget-yes")}</button></div>
  </div>`;
