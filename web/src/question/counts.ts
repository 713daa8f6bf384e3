/** Part 2: whose club is whose, what better means, how much would matter, and how the test was stopped. */
import { html, nothing, type TemplateResult } from "lit";
import type { Goal, Question, Report, Session } from "../core/engine.js";
import { goalName, goalsFor, measureView } from "../format/values.js";
import { build, choice, part } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import { measuresInOrder } from "../state/question.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";
import { margin } from "./margin.js";
import { stopping } from "./stopping.js";

/** Up to this many clubs stand open to view; more open as a list. */
const OPEN_CHOICES = 5;
const WHICHEVER = "whichever";

export function counts(state: State, session: Session, question: Question, actions: Actions): TemplateResult {
  const measure = measureView(question.measure, state.measures, session);
  const measures = measuresInOrder(session, state.measures).map((id) => ({
    value: id,
    label: measureView(id, state.measures, session).name,
  }));
  return part(
    "counts",
    say("counts-title"),
    html`
      <form class="card" @submit=${(event: Event) => event.preventDefault()}>
        ${baseline(state, session, question, actions)}
        ${session.builds.length > 2 ? candidate(session, question, state.report, actions) : nothing}
        <label class="row">
          <span>${say("compare")}</span>
          ${choice(say("compare-label"), measures, question.measure, (id) => actions.ask({ measure: id }))}
        </label>
        ${goal(state, question, actions)}
        ${margin(state, measure, question, actions)}
        ${stopping(question.stopping, actions)}
      </form>
    `,
  );
}

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
  const chosen: Goal | undefined = question.goal ?? state.report?.asked.goal;
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
