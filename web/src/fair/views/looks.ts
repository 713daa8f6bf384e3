/** What each look that a plan holds costs: how sure the answer must be there. */
import { html, type TemplateResult } from "lit";
import type { Plan } from "../../core/planner.js";
import { number, withUnit } from "../../format/values.js";
import { say } from "../../text/say.js";

/** A look as early as this can only be passed by a difference that nobody hits. */
const SUREST = 0.9999;

export const looksView = ({ looks }: Plan): TemplateResult => html`
  <details class="fair-looks">
    <summary>${say("fair-looks")}</summary>
    <p class="hint">${say("fair-looks-help")}</p>
    <table>
      <thead><tr><th scope="col">${say("fair-after-round")}</th><th scope="col">${say("fair-how-sure")}</th></tr></thead>
      <tbody>
        ${looks.map(
          ({ after_round, level }) => html`
            <tr><th scope="row">${after_round}</th><td>${level > SUREST ? say("fair-surest", { level: number(SUREST * 100, 2) }) : withUnit(number(level * 100, 2), "%")}</td></tr>`,
        )}
      </tbody>
    </table>
  </details>`;
