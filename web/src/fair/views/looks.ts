/** What each look that a plan holds costs: the level of its interval. */
import { html, type TemplateResult } from "lit";
import type { Plan } from "../../core/planner.js";
import { levelOf } from "../../format/values.js";
import { say } from "../../text/say.js";

export const looksView = ({ looks }: Plan): TemplateResult => html`
  <details class="fair-looks">
    <summary>${say("fair-looks")}</summary>
    <p class="hint">${say("fair-looks-help")}</p>
    <div class="scroll"><table>
      <thead><tr><th scope="col">${say("fair-after-round")}</th><th scope="col">${say("fair-how-sure")}</th></tr></thead>
      <tbody>
        ${looks.map(
          ({ after_round, level }) => html`
            <tr><th scope="row">${after_round}</th><td>${levelOf(level)}</td></tr>`,
        )}
      </tbody>
    </table></div>
  </details>`;
