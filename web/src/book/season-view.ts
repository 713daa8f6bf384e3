/** A season in one picture: each visit's gap with its interval, what was new on that day, and what all of them say together. */
import { html, nothing, type TemplateResult } from "lit";
import { drawInterval } from "../chart/draw-interval.js";
import { type Drawn, figure } from "../chart/figure.js";
import { intervalGeometry } from "../chart/interval.js";
import { textSize } from "../chart/text-size.js";
import type { Measure } from "../core/engine.js";
import { amountOf, endOf, gapOf, type MeasureView, measureView, sides, signed } from "../format/values.js";
import { say } from "../text/say.js";
import type { Season, SeasonDay } from "./state.js";
import { dayOf } from "./words.js";

export function seasonView(season: Season, measures: readonly Measure[]): TemplateResult {
  const measure = measureView(season.measure, measures, { custom: [] });
  const [baseline, candidate] = season.clubs;
  const { pair } = season;
  return html`
    <div class="book-season">
      <h3>${say("season-title", { candidate, baseline })}</h3>
      ${picture(season, measure)}
      ${pair ? html`<p class="book-together">${pair.headline}</p><p>${pair.detail}</p>` : html`<p class="hint">${say("season-one")}</p>`}
    </div>`;
}

function picture(season: Season, measure: MeasureView): TemplateResult | typeof nothing {
  const drawn = [...season.days.flatMap((day) => rowOf(day, season)), ...together(season, measure)];
  if (drawn.length === 0) return nothing;
  const margin = season.days.at(-1)?.report.asked.margin ?? null;
  const zone =
    margin === null ? say("season-no-difference") : say("season-zone", { margin: amountOf(margin, measure) });
  const geometry = intervalGeometry({
    rows: drawn.map(({ row }) => row),
    margin,
    isRatio: false,
    scale: measure.scale,
    text: textSize(),
    label: zone,
    letters: Math.max(...drawn.flatMap(({ printed }) => [printed.low.length, printed.high.length])),
  });
  const said = drawn.map(({ row, printed: { value, low, high } }) =>
    say("season-each", { name: row.name ?? "", value, low, high }),
  );
  return figure(
    sides(measure.id, false),
    drawInterval(geometry, {
      alternative: [`${zone}.`, ...said].join(" "),
      printed: (_, at) => drawn[at]!.printed,
      tick: (x) => signed(x * measure.scale, measure.decimals),
    }),
    say("season-caption"),
  );
}

function rowOf({ visit, report, candidate }: SeasonDay, { measure }: Season): Drawn[] {
  const finding = report.findings.find((one) => one.measure === measure && one.candidate === candidate);
  // A ratio of scatters has no place among gaps.
  if (!finding?.estimate || !finding.printed || finding.estimate.method === "spread_ratio") return [];
  const { value, order_allowance: allowance, decided_by } = finding.estimate;
  const name = [visit ? dayOf(visit.data.date) : "", visit?.data.mark ? say(`visit-${visit.data.mark}`) : ""]
    .filter(Boolean)
    .join(" · ");
  const { low, high } = decided_by;
  return [{ row: { build: candidate, value, low, high, allowance, chosen: true, name }, printed: finding.printed }];
}

function together({ pair, days }: Season, measure: MeasureView): Drawn[] {
  const found = pair?.combined;
  const last = days.at(-1);
  if (!found || !last) return [];
  const { low, high } = pair.decision?.kind === "same" ? found.same : found.different;
  const { margin } = last.report.asked;
  const row = { build: last.candidate, value: found.value, low, high, allowance: 0, chosen: true };
  const printed = {
    value: gapOf(found.value, measure),
    low: endOf(low, margin, measure),
    high: endOf(high, margin, measure),
  };
  return [{ row: { ...row, name: say("season-together") }, printed }];
}
