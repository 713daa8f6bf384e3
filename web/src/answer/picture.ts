/** The answer's one picture: each candidate's interval against 'no difference' and the zone too small to matter. */
import { html, nothing, type TemplateResult } from "lit";
import { drawInterval } from "../chart/draw-interval.js";
import { intervalGeometry, type Row } from "../chart/interval.js";
import type { Finding, Report, Session } from "../core/engine.js";
import {
  chosenOf,
  type MeasureView,
  moreOrLess,
  moreOrLessInWords,
  plain,
  sides,
  signed,
  withUnit,
} from "../format/values.js";
import { build } from "../pieces/pieces.js";
import { say } from "../text/say.js";

const NOTHING = { value: "", low: "", high: "" };

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
    letters: Math.max(...shown.flatMap(({ printed }) => [printed?.low.length ?? 0, printed?.high.length ?? 0])),
  });
  const baseline = session.builds[report.asked.baseline]?.name ?? "";
  const { left, right } = sides(measure.id, isRatio);
  const printed = (build: number) => shown.find(({ candidate }) => candidate === build)?.printed ?? NOTHING;
  const startOfLaps = report.answer.facts?.order_allowance === "start_of_laps";
  const tick = (x: number) => (isRatio ? moreOrLess(x) : signed(x * measure.scale, measure.decimals));
  return html`
    <figure class="picture">
      <div class="sides" aria-hidden="true">
        <span>← ${left}</span>
        <span>${right} →</span>
      </div>
      ${drawInterval(geometry, {
        alternative: alternative(shown, session, measure, baseline, small, isRatio),
        zone: small === null ? say("picture-no-difference") : say("picture-zone", { margin: small }),
        printed: ({ build }) => printed(build),
        tick,
      })}
      ${
        shown.length > 1
          ? html`<ul class="legend">${shown.map(({ candidate, printed }) => html`<li>${build(candidate, session.builds[candidate]?.name ?? "")} <small>${say("picture-level", { level: printed?.level ?? "" })}</small></li>`)}</ul>`
          : nothing
      }
      <figcaption>
        ${caption(shown, isRatio)}${first.order_allowance > 0 ? ` ${say(startOfLaps ? "picture-allowance-laps" : "picture-allowance")}` : nothing}
      </figcaption>
    </figure>`;
}

/** Of one club with the level of its interval; of several each has its own in the legend. */
function caption(shown: readonly Finding[], isRatio: boolean): string {
  const level = shown.length === 1 ? shown[0]?.printed?.level : undefined;
  if (level === undefined) return isRatio ? say("picture-caption-ratio") : say("picture-caption");
  return isRatio ? say("picture-caption-ratio-level", { level }) : say("picture-caption-level", { level });
}

function row(finding: Finding, report: Report): Row[] {
  const estimate = finding.estimate;
  if (!estimate) return [];
  const { low, high } = estimate.decided_by;
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
  isRatio: boolean,
): string {
  const each = shown.flatMap((finding) => {
    const { candidate, printed } = finding;
    if (!printed) return [];
    const name = session.builds[candidate]?.name ?? "";
    return [say("picture-each", { candidate: name, baseline, ...printed })];
  });
  const said = {
    what: isRatio ? say("picture-scatter-of", { measure: measure.name }) : measure.name,
    each: each.join(" "),
  };
  return small === null
    ? say("picture-alternative", said)
    : say("picture-alternative-zone", { ...said, margin: small });
}
