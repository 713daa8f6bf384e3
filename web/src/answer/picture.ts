/** The answer's one picture: each candidate's interval against 'no difference' and the zone too small to matter. */
import { html, nothing, type TemplateResult } from "lit";
import { drawInterval } from "../chart/draw-interval.js";
import { type Drawn, figure } from "../chart/figure.js";
import { intervalGeometry, type Row } from "../chart/interval.js";
import { textSize } from "../chart/text-size.js";
import type { Finding, Report, Session, Way } from "../core/engine.js";
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
  // Ends that say next to nothing are not drawn as if they said something.
  const shown = report.findings.filter(
    ({ measure: of, estimate, facts }) => of === measure.id && estimate !== null && !facts.says_next_to_nothing,
  );
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
  const rows = shown.flatMap((finding) => rowsOf(finding, report));
  const geometry = intervalGeometry({
    rows: rows.map(({ row }) => row),
    margin,
    isRatio,
    scale: measure.scale,
    letters: Math.max(...rows.flatMap(({ printed }) => [printed.low.length, printed.high.length])),
    text: textSize(),
    label: small === null ? say("picture-no-difference") : say("picture-zone", { margin: small }),
  });
  const baseline = session.builds[report.asked.baseline]?.name ?? "";
  const startOfLaps = report.answer.facts?.order_allowance === "start_of_laps";
  const tick = (x: number) => (isRatio ? moreOrLess(x) : signed(x * measure.scale, measure.decimals));
  const legend =
    shown.length > 1
      ? html`<ul class="legend">${shown.map(({ candidate, printed }) => html`<li>${build(candidate, session.builds[candidate]?.name ?? "")} <small>${say("picture-level", { level: printed?.level ?? "" })}</small></li>`)}</ul>`
      : nothing;
  return figure(
    sides(measure.id, isRatio),
    drawInterval(geometry, {
      alternative: alternative(shown, report, session, measure, baseline, small, isRatio),
      printed: (_, at) => rows[at]?.printed ?? NOTHING,
      tick,
    }),
    html`${caption(shown, isRatio)}${first.order_allowance > 0 ? ` ${say(startOfLaps ? "picture-allowance-laps" : "picture-allowance")}` : nothing}`,
    legend,
  );
}

/** Of one club with the level of its interval; of several each has its own in the legend. */
function caption(shown: readonly Finding[], isRatio: boolean): string {
  // Two answers of one club have each its own level beside their names.
  const level = shown.length === 1 && !shown[0]?.both_ways ? shown[0]?.printed?.level : undefined;
  if (level === undefined) return isRatio ? say("picture-caption-ratio") : say("picture-caption");
  return isRatio ? say("picture-caption-ratio-level", { level }) : say("picture-caption-level", { level });
}

/** One bar for a club; two for the club asked about where shots were left out: with every shot, and without those. */
function rowsOf(finding: Finding, report: Report): Drawn[] {
  const { estimate, printed, both_ways: both, candidate: build } = finding;
  if (!estimate) return [];
  const chosen = build === report.asked.candidate;
  if (both && chosen)
    return [both.every, both.without].map((way) => ({ row: rowOf(way, build), printed: way.printed }));
  const { value, order_allowance: allowance } = estimate;
  const { low, high } = estimate.decided_by;
  return [{ row: { build, value, low, high, allowance, chosen }, printed: printed ?? NOTHING }];
}

const rowOf = ({ name, value, interval: { low, high }, allowance, printed }: Way, build: number): Row => ({
  build,
  value,
  low,
  high,
  allowance,
  chosen: true,
  name: say("picture-way", { name, level: printed.level }),
});

/** The picture for those who hear it. */
function alternative(
  shown: readonly Finding[],
  report: Report,
  session: Session,
  measure: MeasureView,
  baseline: string,
  small: string | null,
  isRatio: boolean,
): string {
  const each = shown.flatMap((finding) => {
    const { candidate, printed, both_ways: both } = finding;
    if (!printed) return [];
    const name = session.builds[candidate]?.name ?? "";
    const club = { candidate: name, baseline };
    return both && candidate === report.asked.candidate
      ? [both.every, both.without].map((way) => say("picture-each-way", { way: way.name, ...club, ...way.printed }))
      : [say("picture-each", { ...club, ...printed })];
  });
  const said = {
    what: isRatio ? say("picture-scatter-of", { measure: measure.name }) : measure.name,
    each: each.join(" "),
  };
  return small === null
    ? say("picture-alternative", said)
    : say("picture-alternative-zone", { ...said, margin: small });
}
