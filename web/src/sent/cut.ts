/** A link that could not be opened, above all else: why, what helps, and the shots that are left of it. */
import "./sent.css";
import { html, nothing, type TemplateResult } from "lit";
import type { Measure, Session } from "../core/engine.js";
import { engineOfPage } from "../core/remote.js";
import { measureView } from "../format/values.js";
import type { Actions } from "../state/actions.js";
import { shotCount } from "../state/shots.js";
import type { Cut } from "../state/state.js";
import english from "../text/en/sent.ftl?raw";
import { learn, say } from "../text/say.js";

learn(english);

/** What is left of the last of them, once it is known. */
let asked: { of: Cut; left?: Session | undefined } | null = null;

export function cutView(cut: Cut, measures: readonly Measure[], actions: Actions): TemplateResult {
  if (asked?.of !== cut) ask(cut, actions);
  const left = asked?.left;
  return html`
    <section class="card sent cut" id="cut" role="alert" aria-labelledby="cut-title">
      <h2 id="cut-title" tabindex="-1">${cut.refusal.message}</h2>
      <p>${cut.refusal.remedy} ${say("cut-stays")}</p>
      ${left ? html`<p>${say("cut-left", { shots: say("n-shots", { count: shotCount(left) }), measures: names(left, measures) })} ${say("cut-gone")}</p>` : nothing}
      <div class="buttons">
        ${left ? html`<button type="button" @click=${() => open(left, actions)}>${say("cut-open")}</button>` : nothing}
        <button type="button" @click=${actions.dropCut}>${say("cut-close")}</button>
      </div>
    </section>`;
}

/** Nothing is offered where nothing is left, or where it could not be found out. */
function ask(of: Cut, actions: Actions): void {
  const asking: typeof asked = { of };
  asked = asking;
  void engineOfPage()
    .then((engine) => engine.leftOfLink(of.link))
    .then((left) => {
      asking.left = left;
      actions.drawAgain();
    })
    .catch(() => undefined);
}

/** As a text that is read as any other: what cannot be is asked about. */
function open(left: Session, actions: Actions): void {
  void engineOfPage()
    .then((engine) => engine.writeCsv(left))
    .then(actions.giveText);
}

const names = (left: Session, measures: readonly Measure[]): string =>
  left.measures.map((id) => measureView(id, measures, left).name).join(", ");
