/** The answer's one picture: each candidate's interval against 'no difference' and the zone too small to matter. */
import { html, nothing, type TemplateResult } from "lit";
import { drawInterval } from "../chart/draw-interval.js";
import { deciding, intervalGeometry, type Row } from "../chart/interval.js";
import type { Finding, Report, Session } from "../core/engine.js";
import {
  chosenOf,
  gapOf,
  type MeasureView,
  moreOrLess,
  moreOrLessInWords,
  percent,
  plain,
  sides,
  signed,
  withUnit,
} from "../format/values.js";
import { build } from "../pieces/pieces.js";
import { say } from "../text/say.js";

export function picture(report: Report, session: Session, measure: MeasureView): TemplateResult | typeof nothing {
  const shown = report.findings.filter((finding) => finding.measure === measure.id && finding.estimate !== null);
  const first = shown[0]?.estimate;
  if (!first) return nothing;
  const isRatio = first.method === "spread_ratio";
  const { margin } = report.asked;
  const small =
    margin === null
      ? null
      : isRatio
        ? say("from-to", { from: moreOrLessInWords(1 / margin), to: moreOrLessInWords(margin) })
        : say("picture-below", { margin: withUnit(plain(chosenOf(margin, measure)), measure.unit) });
  const geometry = intervalGeometry({
    rows: shown.flatMap((finding) => row(finding, report)),
    margin,
    isRatio,
    scale: measure.scale,
  });
  const baseline = session.builds[report.asked.baseline]?.name ?? "";
  const { left, right } = sides(measure.id, isRatio);
  const value = (x: number) => (isRatio ? moreOrLessInWords(x) : gapOf(x, measure));
  const end = (x: number) => (isRatio ? moreOrLess(x) : signed(x * measure.scale, measure.decimals));
  return html`
    <figure class="picture">
      <div class="sides" aria-hidden="true">
        <span>← ${left}</span>
        <span>${right} →</span>
      </div>
      ${drawInterval(geometry, {
        alternative: alternative(shown, session, measure, baseline, small, value, isRatio),
        zone: small === null ? say("picture-no-difference") : say("picture-zone", { margin: small }),
        value,
        end,
        tick: end,
      })}
      ${
        shown.length > 1
          ? html`<ul class="legend">${shown.map((finding) => html`<li>${build(finding.candidate, session.builds[finding.candidate]?.name ?? "")}</li>`)}</ul>`
          : nothing
      }
      <figcaption>
        ${isRatio ? say("picture-caption-ratio") : say("picture-caption")}${first.order_allowance > 0 ? ` ${say("picture-allowance")}` : nothing}
      </figcaption>
    </figure>`;
}

function row(finding: Finding, report: Report): Row[] {
  const estimate = finding.estimate;
  if (!estimate) return [];
  const { low, high } = deciding(finding.decision, estimate);
  return [
    {
      build: finding.candidate,
      value: estimate.value,
      low,
      high,
      allowance: estimate.order_allowance,
      chosen: finding.candidate === report.asked.candidate,
    },
  ];
}

/** The picture for those who hear it. */
function alternative(
  shown: readonly Finding[],
  session: Session,
  measure: MeasureView,
  baseline: string,
  small: string | null,
  value: (x: number) => string,
  isRatio: boolean,
): string {
  const each = shown.flatMap((finding) => {
    const { candidate, estimate } = finding;
    if (!estimate) return [];
    const { low, high, level } = deciding(finding.decision, estimate);
    const name = session.builds[candidate]?.name ?? "";
    return [
      say("picture-each", {
        candidate: name,
        baseline,
        value: value(estimate.value),
        low: value(low),
        high: value(high),
        level: percent(level),
      }),
    ];
  });
  const said = {
    what: isRatio ? say("picture-scatter-of", { measure: measure.name }) : measure.name,
    each: each.join(" "),
  };
  return small === null
    ? say("picture-alternative", said)
    : say("picture-alternative-zone", { ...said, margin: small });
}
