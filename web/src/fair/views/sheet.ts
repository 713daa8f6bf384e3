/** The plan on one page to fill in by hand: order, a cell for every shot and measure, looks and cautions. Print only. */
import { html, nothing, type TemplateResult } from "lit";
import type { Plan } from "../../core/planner.js";
import { unitName } from "../../format/values.js";
import { say } from "../../text/say.js";
import { shownIn } from "../../text/units.js";
import type { FairState } from "../state.js";
import { club } from "./plan.js";

export function sheetView(plan: Plan, { measures, record }: FairState): TemplateResult {
  const chosen = record.map((id) => measures.find((one) => one.id === id)).filter((one) => one !== undefined);
  const rounds = Array.from({ length: plan.rounds }, (_, index) => index + 1);
  const looks = new Set(plan.looks.map((look) => look.after_round));
  return html`
    <section class="sheet print-only" aria-hidden="true">
      <h2>${say("sheet-title", { clubs: plan.builds.join(` ${say("sheet-against")} `) })}</h2>
      <p>${plan.words.headline} ${plan.words.power} ${plan.words.beside}</p>
      <p>${plan.words.order} ${plan.words.looks}</p>
      <p>${say("sheet-before", { count: plan.warm_up, cautions: plan.cautions.join(" ") })}</p>
      <table>
        <thead>
          <tr><th>${say("sheet-round")}</th><th>${say("sheet-club")}</th>${Array.from({ length: plan.set }, (_, shot) => html`<th>${say("sheet-shot", { number: shot + 1 })}</th>`)}</tr>
        </thead>
        <tbody>
          ${rounds.map((round) =>
            plan.turns
              .filter((turn) => turn.round === round)
              .map(
                (turn, at) => html`
                  <tr class=${at === 0 ? "first" : ""}>
                    <th>${at === 0 ? round : ""}${at === 0 && looks.has(round - 1) ? html`<br /><small>${say("sheet-look")}</small>` : nothing}</th>
                    <th>${club(plan, turn.build)}</th>
                    ${Array.from({ length: turn.shots }, () => html`<td></td>`)}
                  </tr>`,
              ),
          )}
        </tbody>
      </table>
      <p>${say("sheet-cells", { measures: chosen.map(({ name, unit }) => (unit ? `${name} (${unitName(shownIn(unit).unit)})` : name)).join(" / ") })}</p>
      <p>${say("sheet-felt")}</p>
    </section>`;
}
