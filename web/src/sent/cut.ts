/** A link that could not be opened, above all else: why, what helps, and the shots that are left of it. */
import "./sent.css";
import { html, nothing, type TemplateResult } from "lit";
import type { Measure, Session } from "../core/engine.js";
import { measureView } from "../format/values.js";
import type { Actions } from "../state/actions.js";
import { shotCount } from "../state/shots.js";
import type { Cut } from "../state/state.js";
import english from "../text/en/sent.ftl?raw";
import { learn, say } from "../text/say.js";

learn(english);

export const cutView = ({ refusal, left }: Cut, measures: readonly Measure[], actions: Actions): TemplateResult => html`
  <section class="card sent cut" id="cut" role="alert" aria-labelledby="cut-title">
    <h2 id="cut-title" tabindex="-1">${refusal.message}</h2>
    <p>${refusal.remedy} ${say("cut-stays")}</p>
    ${left ? html`<p>${say("cut-left", { shots: say("n-shots", { count: shotCount(left) }), measures: names(left, measures) })} ${say("cut-gone")}</p>` : nothing}
    <div class="buttons">
      ${left ? html`<button type="button" @click=${() => actions.openLeft(left)}>${say("cut-open")}</button>` : nothing}
      <button type="button" @click=${actions.dropCut}>${say("cut-close")}</button>
    </div>
  </section>`;

const names = (left: Session, measures: readonly Measure[]): string =>
  left.measures.map((id) => measureView(id, measures, left).name).join(", ");
