/**
 * What the answer is an answer to, in a line of facts that are the settings at once: each opens where it stands, one at a
 * time.
 */
import { html, nothing, type TemplateResult } from "lit";
import type { Question, Session } from "../core/engine.js";
import { marginScale } from "../format/margin.js";
import { goalName, type MeasureView, measureView, plain, withUnit } from "../format/values.js";
import { later } from "../pieces/later.js";
import { foreign } from "../pieces/pieces.js";
import { whenOpen } from "../pieces/when-open.js";
import type { Actions } from "../state/actions.js";
import { goalAsked, marginAsked } from "../state/question.js";
import { shotCount } from "../state/shots.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";
import type { Fact } from "./settings.js";

const setting = later(() => withTexts(["settings"], () => import("./settings.js")).then((module) => module.setting));

export function counts(state: State, session: Session, question: Question, actions: Actions): TemplateResult {
  if (state.report) setting.ahead();
  const measure = measureView(question.measure, state.measures, session);
  const fact = (id: Fact, says: unknown): TemplateResult => html`
    <details class="fact" name="fact" id="fact-${id}">
      <summary>${says}</summary>
      ${whenOpen(() => setting(actions.drawAgain, id, state, session, question, actions))}
    </details>`;
  return html`
    <section class="part" id="counts" aria-labelledby="counts-title">
      <h2 id="counts-title" class="visually-hidden" tabindex="-1">${say("counts-title")}</h2>
      <form class="facts" @submit=${(event: Event) => event.preventDefault()}>
        ${fact("compared", compared(state, question, measure))}
        ${fact("margin", matters(state, question, measure))}
        ${shotCount(session) > 0 ? fact("order", say(`fact-order-${session.order}`)) : nothing}
        ${fact("stopping", stopped(question))}
        ${fact("whose", whose(state, session, question))}
      </form>
    </section>`;
}

const compared = ({ report }: State, question: Question, { name }: MeasureView): string => {
  const goal = goalAsked(report, question);
  return goal ? `${name} · ${goalName(goal, question.measure)}` : name;
};

function matters({ report }: State, question: Question, measure: MeasureView): string {
  const scale = marginScale(question, measure);
  const now = question.margin ?? marginAsked(report, measure, question);
  return now === null
    ? say("fact-no-margin")
    : say("fact-margin", { margin: withUnit(plain(scale.shown(now)), scale.unit) });
}

function stopped({ stopping }: Question): string {
  return typeof stopping === "object"
    ? say("fact-planned", { count: stopping.planned_rounds })
    : say(`fact-stopping-${stopping}`);
}

const whose = ({ sent }: State, session: Session, question: Question): TemplateResult =>
  html`<span>${say(sent ? "fact-theirs" : "fact-yours")}</span> ${foreign(session.builds[question.baseline]?.name ?? "")}`;
