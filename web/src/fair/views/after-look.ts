/** Outside the log: what was felt beside what was shown, or a test that waits; and the way back into it. */
import { html, nothing, type TemplateResult } from "lit";
import type { Progress } from "../../planner.js";
import { trouble } from "../../views/trouble.js";
import type { FairActions, FairState } from "../state.js";
import { forgetView } from "./forget.js";

export function afterLookView({ mode, plan, feel, refusal, isKept, log }: FairState, progress: Progress, actions: FairActions): TemplateResult {
  return html`
    <div class="card fair-after no-print" data-shots=${progress.hit}>
      <p class="log-place">${progress.words.place}</p>
      ${mode === "paused"
        ? html`<p>The test waits: ${progress.hit} of ${progress.of} shots are in. ${progress.words.look}</p>`
        : html`<p>The answer stands above, from ${progress.hit} of ${progress.of} shots. ${progress.words.stricter}</p>`}
      ${mode === "answer" && feel && (feel.felt.length > 0 || (feel.choose && !plan?.same_club))
        ? html`
            <h3>What you felt, beside it</h3>
            <ul class="fair-felt">${feel.felt.map(({ words }) => html`<li>${words}</li>`)}</ul>
            ${feel.choose && !plan?.same_club ? html`<p>${feel.choose}</p>` : nothing}`
        : nothing}
      ${mode === "answer" && plan?.same_club ? html`<p class="fair-same">${plan.words.same_club}</p>` : nothing}
      ${trouble(refusal)}
      ${isKept === false ? html`<p class="notice trouble">This device does not keep the shots. Save them as a file before you leave.</p>` : nothing}
      <div class="buttons">
        ${progress.turn || mode === "paused" ? html`<button type="button" class="primary" @click=${actions.goOn}>Go on: ${log?.shots.length ?? 0} shots are in</button>` : nothing}
        <button type="button" @click=${actions.exportCsv}>Save the shots as a file</button>
      </div>
      ${forgetView(actions)}
    </div>`;
}
