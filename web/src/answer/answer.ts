/** Part 3: the answer's words as they come from the report, its picture, and what stands over it. */
import { html, nothing, type TemplateResult } from "lit";
import type { Finding, Overlay, Report, Session } from "../core/engine.js";
import { measureView } from "../format/values.js";
import { later } from "../pieces/later.js";
import { build, part } from "../pieces/pieces.js";
import { trouble } from "../pieces/trouble.js";
import { whenOpen } from "../pieces/when-open.js";
import type { Actions } from "../state/actions.js";
import { holding } from "../state/doubts.js";
import { shotCount } from "../state/shots.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";
import { asked } from "./asks.js";
import { picture } from "./picture.js";
import { standing, standingOf } from "./standing.js";

const numbers = later(() =>
  withTexts(["numbers"], () => import("../numbers/numbers.js")).then((module) => module.numbers),
);

export function answer(state: State, session: Session, actions: Actions): TemplateResult {
  return part(
    "answer",
    say("answer-title"),
    state.report ? answered(state, state.report, session, actions) : before(state, session, actions),
  );
}

const doubts = later(() => withTexts(["doubts"], () => import("../doubts/doubts.js")).then((module) => module.doubts));

/** Without an answer: what has to be said first, or that it is on its way. */
function before(state: State, session: Session, actions: Actions): TemplateResult {
  const held = state.wants || state.trouble ? [] : holding(state.given, state.question);
  return held.length > 0 ? doubts(actions.drawAgain, held, session, actions) : waiting(state);
}

const waiting = (state: State): TemplateResult =>
  html`<div class="card answer">${state.trouble ? trouble(state.trouble) : html`<p class="hint">${say("working")}</p>`}</div>`;

function answered(state: State, report: Report, session: Session, actions: Actions): TemplateResult {
  const { words, decision } = report.answer;
  const measure = measureView(report.asked.measure, state.measures, session);
  return html`
    <article class="card answer is-${standingOf(decision)} ${decision.kind}" aria-busy=${state.wants ? "true" : "false"}>
      ${standing(decision)}
      <p class="asked">${question(report, session, measure.name)}</p>
      <p class="headline" id="answer-headline">${words.headline}</p>
      ${picture(report, session, measure)}
      ${words.lead ? html`<p class="lead-in">${words.lead}</p>` : nothing}
      ${words.step ? html`<p class="next">${words.step}</p>` : nothing}
      ${inFull(report)}
      ${asksForMore(report) ? html`<p class="caution">${say("caution")}</p>` : nothing}
      <straight-answer-bet-line .session=${session} .question=${state.question}></straight-answer-bet-line>
    </article>
    ${report.overlays.length > 0 ? html`<ul class="overlays">${report.overlays.map((one) => overlay(one, state, actions))}</ul>` : nothing}`;
}

/** Where they land, for the two clubs of the answer: its place is kept, what stands there comes after the answer. */
export function landed({ report, question }: State, session: Session): TemplateResult | typeof nothing {
  const { baseline, candidate } = report?.asked ?? { baseline: 0, candidate: null };
  const isMeasured = ["carry", "offline"].every((id) => session.measures.includes(id));
  if (candidate === null || shotCount(session) === 0 || !isMeasured) return nothing;
  return html`<straight-answer-landing-line .session=${session} .baseline=${baseline} .candidate=${candidate} .question=${question}></straight-answer-landing-line>`;
}

/** Everything that is to be said of it, where the two sentences are not all. */
function inFull({ answer: { words } }: Report): TemplateResult | typeof nothing {
  const { detail, next, lead, step } = words;
  if (detail === lead && next === step) return nothing;
  return html`
    <details class="in-full">
      <summary>${say("answer-in-full")}</summary>
      ${detail ? html`<p class="detail">${detail}</p>` : nothing}
      ${next ? html`<p class="detail">${next}</p>` : nothing}
    </details>`;
}

const question = (report: Report, session: Session, measure: string): TemplateResult => html`
  <span class="measure">${measure}</span>
  ${report.asked.candidate === null ? nothing : build(report.asked.candidate, session.builds[report.asked.candidate]?.name ?? "")}
  ${report.asked.candidate === null ? nothing : html`<span>${say("answer-against")}</span>`}
  ${session.builds[report.asked.baseline] ? build(report.asked.baseline, session.builds[report.asked.baseline]?.name ?? "") : nothing}`;

/** Whether the words send somebody back to hit more balls: everything short of a settled answer does. */
const asksForMore = ({ answer }: Report): boolean =>
  answer.decision.kind === "cannot_tell" ||
  answer.decision.kind === "cannot_answer" ||
  answer.decision.matters === "maybe" ||
  // Room for the start of the laps makes an answer no hint: nobody is sent back for that alone.
  (answer.facts !== null && !["not_needed", "start_of_laps"].includes(answer.facts.order_allowance));

const overlay = ({ kind, headline, detail, asks }: Overlay, state: State, actions: Actions): TemplateResult => html`
  <li class="overlay ${kind}">
    <details>
      <summary><h3>${headline}</h3></summary>
      <p>${detail}</p>
    </details>
    ${asks ? asked(asks, state.confirmed, actions) : nothing}
  </li>`;

/** The other measures, and the numbers behind all of them. */
export const measured = (state: State, report: Report, session: Session, actions: Actions): TemplateResult => html`
  <div class="measures" aria-busy=${state.wants ? "true" : "false"}>${others(report, state, session)} ${behind(state, report, session, actions)}</div>`;

function others(report: Report, state: State, session: Session): TemplateResult | typeof nothing {
  const rest = report.findings.filter(
    (finding) => finding.candidate === report.asked.candidate && finding.measure !== report.asked.measure,
  );
  if (rest.length === 0) return nothing;
  return html`
    <div class="others">
      <h3>${say("other-measures")}</h3>
      <ul>${rest.map((finding) => other(finding, state, session))}</ul>
    </div>`;
}

const other = (finding: Finding, state: State, session: Session): TemplateResult => html`
  <li>
    <span class="measure">${measureView(finding.measure, state.measures, session).name}</span>
    <span>${finding.words.line}</span>
  </li>`;

/** The numbers behind the answer, closed: the row stands with the answer, what it opens comes a moment later. */
function behind(state: State, report: Report, session: Session, actions: Actions): TemplateResult | typeof nothing {
  const shown = report.findings.filter(
    (finding) => finding.candidate === report.asked.candidate && finding.numbers.baseline && finding.numbers.candidate,
  );
  if (shown.length === 0) return nothing;
  const isAsked = (finding: Finding): boolean => finding.measure === report.asked.measure;
  numbers.ahead();
  const askedFirst = [...shown.filter(isAsked), ...shown.filter((finding) => !isAsked(finding))];
  return html`
    <details class="numbers" id="numbers">
      <summary><h3>${say("numbers-title")}</h3></summary>
      ${whenOpen(() => numbers(actions.drawAgain, askedFirst, report, state, session))}
    </details>`;
}
