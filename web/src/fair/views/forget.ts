/** Emptying everything that is kept of the golfer on this device, asked twice. */
import { html, type TemplateResult } from "lit";
import type { FairActions } from "../state.js";

export const forgetView = (actions: FairActions): TemplateResult => html`
  <details class="fair-forget no-print">
    <summary>Leave, keep or forget</summary>
    <div class="buttons">
      <button type="button" @click=${actions.pause}>Leave the test for now</button>
      <button type="button" @click=${actions.exportCsv}>Save the shots as a file</button>
      <button type="button" class="danger" @click=${actions.forget}>Forget everything on this device</button>
    </div>
    <p class="hint">Forgetting ends the test and empties what this page has kept. It cannot be undone.</p>
  </details>`;
