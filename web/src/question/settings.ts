/** The settings behind the facts, loaded when one is opened. */
import { html, nothing, type TemplateResult } from "lit";
import type { Order, Question, Report, Session } from "../core/engine.js";
import { goalName, goalsFor, measureView, orderName } from "../format/values.js";
import { build, choice } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import { goalAsked, measuresInOrder } from "../state/question.js";
import type { State } from "../state/state.js";
import english from "../text/en/settings.ftl?raw";
import { learn, say } from "../text/say.js";
import { margin } from "./margin.js";
import { stopping } from "./stopping.js";

learn(english);

export type Fact = "compared" | "margin" | "order" | "stopping" | "whose";

/** Up to this many clubs stand open to view; more open as a list. */
const OPEN_CHOICES = 5;
const WHICHEVER = "whichever";
const ORDERS: readonly Order[] = ["interleaved", "blocked", "unknown"];

export function setting(
  fact: Fact,
  state: State,
  session: Session,
  question: Question,
  actions: Actions,
): TemplateResult {
  switch (fact) {
    case "compared":
      return whatIsCompared(state, session, question, actions);
    case "margin":
      return margin(state, measureView(question.measure, state.measures, session), question, actions);
    case "order":
      return order(session, actions);
    case "stopping":
      return stopping(question.stopping, actions);
    case "whose":
      return html`${baseline(state, session, question, actions)}${session.builds.length > 2 ? candidate(session, question, state.report, actions) : nothing}`;
  }
}

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

function goal(state: State, question: Question, actions: Actions): TemplateResult {
  const chosen = goalAsked(state.report, question);
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
