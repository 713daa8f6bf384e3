/**
 * What the answer is an answer to, in a line of facts that are the settings at once: each opens where it stands, one at a
 * time.
 */
import { html, nothing, type TemplateResult } from "lit";
import type { Goal, Order, Question, Report, Session } from "../core/engine.js";
import { marginScale } from "../format/margin.js";
import { goalName, goalsFor, type MeasureView, measureView, orderName, plain, withUnit } from "../format/values.js";
import { build, choice, foreign } from "../pieces/pieces.js";
import { whenOpen } from "../pieces/when-open.js";
import type { Actions } from "../state/actions.js";
import { measuresInOrder } from "../state/question.js";
import { shotCount } from "../state/shots.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";
import { asked, margin } from "./margin.js";
import { stopping } from "./stopping.js";

/** Up to this many clubs stand open to view; more open as a list. */
const OPEN_CHOICES = 5;
const WHICHEVER = "whichever";
const ORDERS: readonly Order[] = ["interleaved", "blocked", "unknown"];

export function counts(state: State, session: Session, question: Question, actions: Actions): TemplateResult {
  const measure = measureView(question.measure, state.measures, session);
  return html`
    <section class="part" id="counts" aria-labelledby="counts-title">
      <h2 id="counts-title" class="visually-hidden" tabindex="-1">${say("counts-title")}</h2>
      <form class="facts" @submit=${(event: Event) => event.preventDefault()}>
        ${fact("compared", compared(state, question, measure), () => whatIsCompared(state, session, question, actions))}
        ${fact("margin", matters(state, question, measure), () => margin(state, measure, question, actions))}
        ${shotCount(session) > 0 ? fact("order", say(`fact-order-${session.order}`), () => order(session, actions)) : nothing}
        ${fact("stopping", stopped(question), () => stopping(question.stopping, actions))}
        ${fact("whose", whose(state, session, question), () => html`${baseline(state, session, question, actions)}${session.builds.length > 2 ? candidate(session, question, state.report, actions) : nothing}`)}
      </form>
    </section>`;
}

type Fact = "compared" | "margin" | "order" | "stopping" | "whose";

const fact = (id: Fact, says: unknown, setting: () => TemplateResult): TemplateResult => html`
  <details class="fact" name="fact" id="fact-${id}">
    <summary>${says}</summary>
    ${whenOpen(setting)}
  </details>`;

const compared = (state: State, question: Question, { name }: MeasureView): string => {
  const goal = goalOf(state, question);
  return goal ? `${name} · ${goalName(goal, question.measure)}` : name;
};

function matters(state: State, question: Question, measure: MeasureView): string {
  const scale = marginScale(question, measure);
  const now = question.margin ?? asked(state, measure, question);
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

function whatIsCompared(state: State, session: Session, question: Question, actions: Actions): TemplateResult {
  const measures = measuresInOrder(session, state.measures).map((id) => ({
    value: id,
    label: measureView(id, state.measures, session).name,
  }));
  return html`
    <label class="row">
      <span>${say("compare")}</span>
      ${choice(say("compare-label"), measures, question.measure, (id) => actions.ask({ measure: id }))}
    </label>
    ${goal(state, question, actions)}`;
}

const order = (session: Session, actions: Actions): TemplateResult => html`
  <label class="row">
    <span>${say("were-hit")}</span>
    ${choice(
      say("were-hit-how"),
      ORDERS.map((value) => ({ value, label: orderName(value) })),
      session.order,
      (value) => actions.hint({ order: value as Order }),
    )}
  </label>`;

function baseline({ sent }: State, session: Session, question: Question, actions: Actions): TemplateResult {
  const title = sent ? say("which-theirs") : say("which-yours");
  if (session.builds.length > OPEN_CHOICES) {
    return html`
      <label class="row">
        <span>${title}</span>
        ${choice(title, options(session), String(question.baseline), (value) => ask(Number(value)))}
      </label>`;
  }
  return html`
    <fieldset>
      <legend>${title}</legend>
      <div class="segments">
        ${session.builds.map(
          ({ name }, index) => html`
            <label class="segment">
              <input type="radio" name="baseline" value=${index} .checked=${index === question.baseline} @change=${() => ask(index)} />
              <span>${build(index, name)}</span>
            </label>`,
        )}
      </div>
    </fieldset>`;

  function ask(index: number): void {
    actions.ask({ baseline: index, ...(question.candidate === index ? { candidate: undefined } : {}) });
  }
}

function candidate(session: Session, question: Question, report: Report | null, actions: Actions): TemplateResult {
  const others = options(session).filter((_, index) => index !== question.baseline);
  const leader = report?.asked.candidate;
  const leads = leader !== null && leader !== undefined && question.candidate === undefined;
  const label = leads ? say("whichever-now", { name: session.builds[leader]?.name ?? "" }) : say("whichever");
  const whichever = { value: WHICHEVER, label };
  return html`
    <label class="row">
      <span>${say("against")}</span>
      ${choice(
        say("against-label"),
        [whichever, ...others],
        question.candidate === undefined ? WHICHEVER : String(question.candidate),
        (value) => actions.ask({ candidate: value === WHICHEVER ? undefined : Number(value) }),
      )}
    </label>`;
}

const options = (session: Session) => session.builds.map(({ name }, index) => ({ value: String(index), label: name }));

const goalOf = (state: State, question: Question): Goal | undefined => question.goal ?? state.report?.asked.goal;

function goal(state: State, question: Question, actions: Actions): TemplateResult {
  const chosen = goalOf(state, question);
  return html`
    <fieldset>
      <legend>${say("better")}</legend>
      <div class="segments">
        ${goalsFor(question.measure, state.measures).map(
          (value) => html`
            <label class="segment">
              <input type="radio" name="goal" value=${value} .checked=${value === chosen} @change=${() => actions.ask({ goal: value })} />
              <span>${goalName(value, question.measure)}</span>
            </label>`,
        )}
      </div>
    </fieldset>`;
}
