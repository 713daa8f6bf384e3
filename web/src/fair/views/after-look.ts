/** Outside the log: what was felt beside what was shown, or a test that waits; and the way back into it. */
import { html, nothing, type TemplateResult } from "lit";
import type { Progress } from "../../core/planner.js";
import { trouble } from "../../pieces/trouble.js";
import { say } from "../../text/say.js";
import type { FairActions, FairState } from "../state.js";
import { forgetView } from "./forget.js";

export function afterLookView(state: FairState, progress: Progress, actions: FairActions): TemplateResult {
  const { mode, plan, feel, refusal, isKept, log } = state;
  return html`
    <div class="card fair-after no-print" data-shots=${progress.hit}>
      <p class="log-place">${progress.words.place}</p>
      ${
        mode === "paused"
          ? html`<p>${say("after-waits", { hit: progress.hit, of: progress.of, look: progress.words.look })}</p>`
          : html`<p>${say("after-stands", { hit: progress.hit, of: progress.of, stricter: progress.words.stricter })}</p>`
      }
      ${
        mode === "answer" && feel && (feel.felt.length > 0 || (feel.choose && !plan?.same_club))
          ? html`
            <h3>${say("after-felt")}</h3>
            <ul class="fair-felt">${feel.felt.map(({ words }) => html`<li>${words}</li>`)}</ul>
            ${feel.choose && !plan?.same_club ? html`<p>${feel.choose}</p>` : nothing}`
          : nothing
      }
      ${mode === "answer" && plan?.same_club ? html`<p class="fair-same">${plan.words.same_club}</p>` : nothing}
      ${trouble(refusal)}
      ${isKept === false ? html`<p class="notice trouble">${say("after-not-kept")}</p>` : nothing}
      <div class="buttons">
        ${progress.turn || mode === "paused" ? html`<button type="button" class="primary" @click=${actions.goOn}>${say("after-go-on", { count: log?.shots.length ?? 0 })}</button>` : nothing}
        <button type="button" class=${progress.turn ? "" : "primary"} @click=${actions.nextPerson}>${say("after-next-person")}</button>
        <button type="button" @click=${actions.exportCsv}>${say("save-shots")}</button>
      </div>
      ${forgetView(state, actions)}
    </div>`;
}
