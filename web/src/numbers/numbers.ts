/** The numbers behind the answer, as a textbook would print them: plain words first, the term second. */
import { html, nothing, type TemplateResult } from "lit";
import type { Estimate, Finding, Group, Numbers, Report, Session, TextbookTest } from "../core/engine.js";
import {
  amountOf,
  chosenOf,
  endOf,
  gapOf,
  levelOf,
  type MeasureView,
  measureView,
  number,
  plain,
  probability,
  share,
  signed,
  withUnit,
} from "../format/values.js";
import { build } from "../pieces/pieces.js";
import type { State } from "../state/state.js";
import english from "../text/en/numbers.ftl?raw";
import { learn, say } from "../text/say.js";
import "./typical.js";

learn(english);

const MISSING = "–";

/** What `shown` has behind it, the first opened. */
export const numbers = (
  shown: readonly Finding[],
  report: Report,
  state: State,
  session: Session,
): TemplateResult => html`
  <p class="hint">
    ${say("numbers-help")}
    <a href=${`${say("numbers-methods-page")}#${methodsSection(report)}`} target="_blank" rel="noopener">${say("numbers-methods")}</a>.
  </p>
  ${shown.map((finding, at) => measured(finding, at === 0, report, state, session))}`;

/** Where the methods page explains the comparison that decided. */
function methodsSection({ answer: { estimate } }: Report): string {
  switch (estimate?.method) {
    case "rounds":
      return "rounds";
    case "welch_with_allowance":
      return "blocked";
    case "summary_with_allowance":
    case "summary_assumed_spread":
      return "averages";
    case "spread_ratio":
      return "scatter";
    case undefined:
      return "decision";
  }
}

function measured(
  { baseline, candidate, measure, numbers, estimate }: Finding,
  open: boolean,
  report: Report,
  state: State,
  session: Session,
): TemplateResult {
  const view = measureView(measure, state.measures, session);
  const builds = [baseline, candidate].map((index) => ({ index, name: session.builds[index]?.name ?? "" }));
  return html`
    <details class="measured" ?open=${open}>
      <summary><h4>${view.name}</h4></summary>
      ${groups(numbers, view, builds)} ${tests(numbers, view)}
      ${measure === report.asked.measure ? html`<straight-answer-typical .session=${session} .question=${state.question}></straight-answer-typical>` : nothing}
       ${scatter(numbers)} ${estimate ? deciding(estimate, view, marginOn(measure, view, report)) : nothing}
    </details>`;
}

const groups = (numbers: Numbers, view: MeasureView, builds: { index: number; name: string }[]): TemplateResult => html`
  <div class="scroll" tabindex="0" role="group" aria-label=${say("numbers-each", { measure: view.name })}>
    <table>
      <thead>
        <tr><th scope="col">${say("numbers-club")}</th>${(["shots", "average", "scatter"] as const).map((id) => html`<th scope="col">${say(`numbers-${id}`)}<small>${say(`numbers-${id}-term`)}</small></th>`)}</tr>
      </thead>
      <tbody>
        ${[numbers.baseline, numbers.candidate].map((group, at) => (group ? groupRow(group, view, builds[at]!) : nothing))}
      </tbody>
    </table>
  </div>`;

const groupRow = (
  group: Group,
  view: MeasureView,
  { index, name }: { index: number; name: string },
): TemplateResult => html`
  <tr>
    <th scope="row">${build(index, name)}</th>
    <td>${number(group.n, 0)}</td>
    <td>${amountOf(group.mean, view, 1)}</td>
    <td>${group.sd === null ? MISSING : amountOf(group.sd, view, 1)}</td>
  </tr>`;

const METHODS = ["welch", "round"] as const;

function tests(numbers: Numbers, view: MeasureView): TemplateResult | typeof nothing {
  const shown = METHODS.flatMap((key) =>
    numbers[key]
      ? [{ plain: say(`numbers-method-${key}`), term: say(`numbers-method-${key}-term`), test: numbers[key] }]
      : [],
  );
  if (shown.length === 0) return nothing;
  const line = (plain: string, term: string, cell: (test: TextbookTest) => string): TemplateResult => html`
    <tr>
      <th scope="row">${plain}<small>${term}</small></th>
      ${shown.map(({ test }) => html`<td>${cell(test)}</td>`)}
    </tr>`;
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label=${say("numbers-comparison", { measure: view.name })}>
      <table>
        <thead>
          <tr>
            <td></td>
            ${shown.map(({ plain, term }) => html`<th scope="col">${plain}<small>${term}</small></th>`)}
          </tr>
        </thead>
        <tbody>
          ${line(say("numbers-gap"), say("numbers-gap-term"), (test) => gapOf(test.diff, view, 1))}
          ${line(say("numbers-may-lie-from"), say("numbers-interval-term"), (test) => signed(test.low * view.scale, view.decimals + 1))}
          ${line(say("numbers-may-lie-to"), say("numbers-interval-term"), (test) => signed(test.high * view.scale, view.decimals + 1))}
          ${line(say("numbers-uncertainty"), say("numbers-uncertainty-term"), (test) => number(test.se * view.scale, view.decimals + 2))}
          ${line(say("numbers-gap-in-uncertainties"), say("numbers-gap-in-uncertainties-term"), (test) => number(test.t, 2))}
          ${line(say("numbers-informing"), say("numbers-informing-term"), (test) => number(test.df, 1))}
          ${line(say("numbers-equal-show"), say("numbers-equal-show-term"), (test) => probability(test.p))}
        </tbody>
      </table>
    </div>`;
}

/** The scatters against each other; a ratio reaches as far down as up, so its ends are not even. */
const scatter = ({ spread }: Numbers): TemplateResult | typeof nothing =>
  spread
    ? html`
        <dl class="spread">
          <div>
            <dt>${say("numbers-scatter-ratio")}</dt>
            <dd>${say("numbers-scatter-ratio-value", { ratio: number(spread.ratio, 2), low: number(spread.low, 2), high: number(spread.high, 2) })} <small>${say("numbers-scatter-ratio-term")}</small></dd>
          </div>
          <div><dt>${say("numbers-scatter-equal")}</dt><dd>${probability(spread.p)} <small>${say("numbers-equal-show-term")}</small></dd></div>
        </dl>`
    : nothing;

/** The smallest difference that matters on a finding's measure: the one asked for, elsewhere the usual one. */
function marginOn(measure: string, { margin }: MeasureView, { asked }: Report): number | null {
  return measure === asked.measure ? asked.margin : margin;
}

/** What the decision itself rests on. */
function deciding(estimate: Estimate, view: MeasureView, margin: number | null): TemplateResult {
  const ratio = estimate.method === "spread_ratio";
  const interval = (level: number) =>
    ratio
      ? say("numbers-interval-of", { level: levelOf(level) })
      : say("numbers-interval-of-widened", { level: levelOf(level) });
  const chosen = (size: number) => (ratio ? plain(size, 2) : withUnit(plain(chosenOf(size, view)), view.unit));
  const value = (x: number) => (ratio ? number(x, 2) : endOf(x, margin, view, 1));
  return html`
    <dl>
      <div><dt>${say("numbers-held-none")}</dt><dd>${say("from-to", { from: value(estimate.low), to: value(estimate.high) })} <small>${interval(estimate.level)}</small></dd></div>
      <div><dt>${say("numbers-held-same")}</dt><dd>${say("from-to", { from: value(estimate.equivalence.low), to: value(estimate.equivalence.high) })} <small>${interval(estimate.equivalence.level)}</small></dd></div>
      ${
        estimate.order_allowance > 0
          ? html`<div><dt>${say("numbers-allowed")}</dt><dd>${amountOf(estimate.order_allowance, view, 1)} <small>${say("numbers-allowed-term")}</small></dd></div>`
          : nothing
      }
      <div><dt>${say("numbers-equal-such")}</dt><dd>${share(estimate.chance_if_same)} <small>${say("numbers-equal-such-term")}</small></dd></div>
      <div><dt>${say("numbers-detectable")}</dt><dd>${ratio ? number(estimate.detectable, 2) : amountOf(estimate.detectable, view, 1)} <small>${say("numbers-detectable-term")}</small></dd></div>
      ${
        estimate.shots_to_settle === undefined || margin === null
          ? nothing
          : html`<div><dt>${say("numbers-settle", { gap: chosen(margin) })}</dt><dd>${say("n-shots", { count: estimate.shots_to_settle })} <small>${say("numbers-settle-term")}</small></dd></div>`
      }
    </dl>`;
}
