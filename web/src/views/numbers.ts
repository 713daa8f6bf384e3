/** The numbers behind the answer, as a textbook would print them: plain words first, the term second. */
import { html, nothing, type TemplateResult } from "lit";
import type { Estimate, Finding, Group, Numbers, Report, Session, TextbookTest } from "../engine.js";
import { counted, measureView, number, percent, probability, share, signed, withUnit, type MeasureView } from "../format.js";
import type { State } from "../state.js";
import { build } from "./pieces.js";

const MISSING = "–";

export function numbers(report: Report, state: State, session: Session): TemplateResult | typeof nothing {
  const shown = report.findings.filter(
    (finding) => finding.candidate === report.asked.candidate && finding.numbers.baseline && finding.numbers.candidate,
  );
  const first = shown.find((finding) => finding.measure === report.asked.measure);
  const ordered = first ? [first, ...shown.filter((finding) => finding !== first)] : shown;
  if (ordered.length === 0) return nothing;
  return html`
    <details class="numbers" id="numbers">
      <summary><h3>The numbers behind this</h3></summary>
      <p class="hint">
        All gaps are the other club minus yours. The tables are plain textbook results; the answer above is held to wider limits.
        <a href="./methods.html#${methodsSection(report)}" target="_blank" rel="noopener">How the answer is found (opens beside this page)</a>.
      </p>
      ${ordered.map((finding, at) => measured(finding, at === 0, state, session))}
    </details>`;
}

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

function measured({ baseline, candidate, measure, numbers, estimate }: Finding, open: boolean, state: State, session: Session): TemplateResult {
  const view = measureView(measure, state.measures, session);
  const builds = [baseline, candidate].map((index) => ({ index, name: session.builds[index]?.name ?? "" }));
  return html`
    <details class="measured" ?open=${open}>
      <summary><h4>${view.name}</h4></summary>
      ${groups(numbers, view, builds)} ${tests(numbers, view)} ${scatter(numbers)} ${estimate ? deciding(estimate, view) : nothing}
    </details>`;
}

const groups = (numbers: Numbers, view: MeasureView, builds: { index: number; name: string }[]): TemplateResult => html`
  <div class="scroll" tabindex="0" role="group" aria-label="${view.name}: each club">
    <table>
      <thead>
        <tr><th scope="col">Club</th><th scope="col">Shots<small>n</small></th><th scope="col">Average<small>mean</small></th><th scope="col">Scatter<small>standard deviation</small></th></tr>
      </thead>
      <tbody>
        ${[numbers.baseline, numbers.candidate].map((group, at) => group ? groupRow(group, view, builds[at]!) : nothing)}
      </tbody>
    </table>
  </div>`;

const groupRow = (group: Group, view: MeasureView, { index, name }: { index: number; name: string }): TemplateResult => html`
  <tr>
    <th scope="row">${build(index, name)}</th>
    <td>${number(group.n, 0)}</td>
    <td>${withUnit(number(group.mean, view.decimals + 1), view.unit)}</td>
    <td>${group.sd === null ? MISSING : withUnit(number(group.sd, view.decimals + 1), view.unit)}</td>
  </tr>`;

const METHODS = [
  { key: "welch", plain: "All shots", term: "Welch" },
  { key: "yuen", plain: "Typical shot, mishits aside", term: "Yuen, 20 % trimmed" },
  { key: "round", plain: "Within rounds", term: "round model" },
] as const;

function tests(numbers: Numbers, view: MeasureView): TemplateResult | typeof nothing {
  const shown = METHODS.flatMap(({ key, plain, term }) => (numbers[key] ? [{ plain, term, test: numbers[key] }] : []));
  if (shown.length === 0) return nothing;
  const line = (plain: string, term: string, cell: (test: TextbookTest) => string): TemplateResult => html`
    <tr>
      <th scope="row">${plain}<small>${term}</small></th>
      ${shown.map(({ test }) => html`<td>${cell(test)}</td>`)}
    </tr>`;
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label="${view.name}: the comparison">
      <table>
        <thead>
          <tr>
            <td></td>
            ${shown.map(({ plain, term }) => html`<th scope="col">${plain}<small>${term}</small></th>`)}
          </tr>
        </thead>
        <tbody>
          ${line("Gap", "difference of averages", (test) => withUnit(signed(test.diff, view.decimals + 1), view.unit))}
          ${line("It may lie from", "95 % interval", (test) => signed(test.low, view.decimals + 1))}
          ${line("to", "95 % interval", (test) => signed(test.high, view.decimals + 1))}
          ${line("Uncertainty", "standard error", (test) => number(test.se, view.decimals + 2))}
          ${line("Gap in uncertainties", "t", (test) => number(test.t, 2))}
          ${line("Shots that inform it", "degrees of freedom", (test) => number(test.df, 1))}
          ${line("Equal clubs show it", "p, two-sided", (test) => probability(test.p))}
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
            <dt>Scatter, other club against yours</dt>
            <dd>${number(spread.ratio, 2)}; it may lie from ${number(spread.low, 2)} to ${number(spread.high, 2)} <small>ratio of standard deviations, 95 % interval, Bonett</small></dd>
          </div>
          <div><dt>Equal scatters show it</dt><dd>${probability(spread.p)} <small>p, two-sided</small></dd></div>
        </dl>`
    : nothing;

/** What the decision itself rests on. */
function deciding(estimate: Estimate, view: MeasureView): TemplateResult {
  const ratio = estimate.method === "spread_ratio";
  const widened = ratio ? "" : ", widened";
  const value = (x: number) => (ratio ? number(x, 2) : withUnit(signed(x, view.decimals + 1), view.unit));
  return html`
    <dl>
      <div><dt>Held against “no difference”</dt><dd>${value(estimate.low)} to ${value(estimate.high)} <small>${percent(estimate.level)} interval${widened}</small></dd></div>
      <div><dt>Held against “the same”</dt><dd>${value(estimate.equivalence.low)} to ${value(estimate.equivalence.high)} <small>${percent(estimate.equivalence.level)} interval${widened}</small></dd></div>
      ${estimate.order_allowance > 0
        ? html`<div><dt>Allowed for warming up and tiring</dt><dd>${withUnit(number(estimate.order_allowance, view.decimals + 1), view.unit)} <small>at each end</small></dd></div>`
        : nothing}
      <div><dt>Equal clubs show such a gap</dt><dd>${share(estimate.chance_if_same)} <small>of sessions like this</small></dd></div>
      <div><dt>A session like this finds, 8 times in 10</dt><dd>${ratio ? number(estimate.detectable, 2) : withUnit(number(estimate.detectable, view.decimals + 1), view.unit)} <small>or more, detectable difference</small></dd></div>
      ${estimate.shots_to_settle === undefined
        ? nothing
        : html`<div><dt>To settle it, hit in turn</dt><dd>${counted(estimate.shots_to_settle, "shot")} <small>with each club</small></dd></div>`}
    </dl>`;
}
