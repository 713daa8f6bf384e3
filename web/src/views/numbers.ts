/** The numbers behind the answer, as a textbook would print them: plain words first, the term second. */
import { html, nothing, type TemplateResult } from "lit";
import type { Estimate, Group, Numbers, Report, Session, TextbookTest } from "../engine.js";
import { counted, measureView, number, percent, probability, signed, withUnit, type MeasureView } from "../format.js";
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
      </p>
      ${ordered.map(({ baseline, candidate, measure, numbers, estimate }) => {
        const view = measureView(measure, state.measures, session);
        return html`
          <h4>${view.name}</h4>
          ${groups(numbers, view, [baseline, candidate].map((index) => ({ index, name: session.builds[index]?.name ?? "" })))}
          ${tests(numbers, view)}
          ${estimate ? widened(estimate, view) : nothing}`;
      })}
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

function tests(numbers: Numbers, view: MeasureView): TemplateResult | typeof nothing {
  const rows: [string, string, TextbookTest | undefined][] = [
    ["All shots", "Welch", numbers.welch],
    ["Typical shot, mishits set aside", "Yuen, 20 % trimmed", numbers.yuen],
    ["Within rounds", "round model", numbers.round],
  ];
  if (rows.every(([, , test]) => !test)) return nothing;
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label="${view.name}: the comparison">
      <table>
        <thead>
          <tr>
            <th scope="col">Compared by</th>
            <th scope="col">Gap</th>
            <th scope="col">Where it may lie<small>95 % interval</small></th>
            <th scope="col">Uncertainty<small>standard error</small></th>
            <th scope="col"><abbr title="gap divided by its standard error">t</abbr></th>
            <th scope="col"><abbr title="degrees of freedom">df</abbr></th>
            <th scope="col"><abbr title="how often equal clubs would show such a gap">p</abbr></th>
          </tr>
        </thead>
        <tbody>${rows.map(([plain, term, test]) => (test ? testRow(plain, term, test, view) : nothing))}</tbody>
      </table>
    </div>`;
}

const testRow = (plain: string, term: string, test: TextbookTest, view: MeasureView): TemplateResult => html`
  <tr>
    <th scope="row">${plain}<small>${term}</small></th>
    <td>${withUnit(signed(test.diff, view.decimals + 1), view.unit)}</td>
    <td>${signed(test.low, view.decimals + 1)} to ${signed(test.high, view.decimals + 1)}</td>
    <td>${number(test.se, view.decimals + 2)}</td>
    <td>${number(test.t, 2)}</td>
    <td>${number(test.df, 1)}</td>
    <td>${probability(test.p)}</td>
  </tr>`;

/** What the decision itself rests on. */
function widened(estimate: Estimate, view: MeasureView): TemplateResult {
  const ratio = estimate.method === "spread_ratio";
  const value = (x: number) => (ratio ? number(x, 2) : withUnit(signed(x, view.decimals + 1), view.unit));
  return html`
    <dl>
      <div><dt>Held against “no difference”</dt><dd>${value(estimate.low)} to ${value(estimate.high)} <small>${percent(estimate.level)} interval, widened</small></dd></div>
      <div><dt>Held against “the same”</dt><dd>${value(estimate.equivalence.low)} to ${value(estimate.equivalence.high)} <small>${percent(estimate.equivalence.level)} interval, widened</small></dd></div>
      ${estimate.order_allowance > 0
        ? html`<div><dt>Allowed for warming up and tiring</dt><dd>${withUnit(number(estimate.order_allowance, view.decimals + 1), view.unit)} <small>at each end</small></dd></div>`
        : nothing}
      <div><dt>Equal clubs show such a gap</dt><dd>${percent(estimate.chance_if_same)} <small>of sessions like this</small></dd></div>
      <div><dt>A session like this finds, 8 times in 10</dt><dd>${ratio ? number(estimate.detectable, 2) : withUnit(number(estimate.detectable, view.decimals + 1), view.unit)} <small>or more, detectable difference</small></dd></div>
      ${estimate.shots_to_settle === undefined
        ? nothing
        : html`<div><dt>To settle it, hit in turn</dt><dd>${counted(estimate.shots_to_settle, "shot")} <small>with each club</small></dd></div>`}
    </dl>`;
}
