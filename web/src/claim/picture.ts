/** What luck alone reaches with the shots behind a claim, the claim in it, and the retest below. */
import { nothing, type TemplateResult } from "lit";
import { drawInterval } from "../chart/draw-interval.js";
import { type Drawn, figure } from "../chart/figure.js";
import { intervalGeometry } from "../chart/interval.js";
import { textSize } from "../chart/text-size.js";
import type { ClaimReport } from "../core/planner.js";
import { amountOf, chosenOf, type MeasureView, plain, sides, signed, withUnit } from "../format/values.js";
import { say } from "../text/say.js";

/** The club of a claim without a retest is the second of two. */
const NEW_CLUB = 1;

/** Nothing where nobody knows what luck does: the claim's shots, or their scatter, were not said. */
export function claimPicture(report: ClaimReport, measure: MeasureView): TemplateResult | typeof nothing {
  const { luck } = report;
  if (!luck) return nothing;
  const reach = luck.error_95;
  const rows = [claimed(report, measure), ...retested(report)];
  const zone = say("claim-reach", { size: amountOf(reach, measure) });
  const geometry = intervalGeometry({
    rows: rows.map(({ row }) => row),
    margin: reach,
    isRatio: false,
    scale: measure.scale,
    // Its card is narrower than the answer's.
    letters: 1 + Math.max(...rows.flatMap(({ printed }) => [printed.low.length, printed.high.length])),
    text: textSize(),
    label: zone,
  });
  const said = rows.map(({ row, printed }) => say("claim-picture-each", { name: row.name ?? "", ...ends(printed) }));
  return figure(
    sides(measure.id, false),
    drawInterval(geometry, {
      alternative: [`${zone}.`, ...said].join(" "),
      printed: (_, at) => rows[at]!.printed,
      tick: (x) => signed(x * measure.scale, measure.decimals),
    }),
    luck.order_allowance > 0
      ? say("claim-reach-caption-order", { size: amountOf(luck.order_allowance, measure) })
      : say("claim-reach-caption"),
  );
}

/** What was said: a mark, since nobody said how sure. */
function claimed({ claimed: value, candidate }: ClaimReport, measure: MeasureView): Drawn {
  const row = { build: candidate ?? NEW_CLUB, value, low: value, high: value, allowance: 0, chosen: true };
  return {
    row: { ...row, name: say("claim-picture-claim") },
    printed: {
      value: `${value > 0 ? "+" : ""}${withUnit(plain(chosenOf(value, measure)), measure.unit)}`,
      low: "",
      high: "",
    },
  };
}

function retested({ retest, printed, answer, candidate, open }: ClaimReport): Drawn[] {
  const value = answer?.estimate?.value;
  if (open === "next_to_nothing" || !retest || !printed || value === undefined || typeof candidate !== "number")
    return [];
  const name = say("claim-picture-retest", { level: printed.level });
  const { low, high } = retest;
  return [{ row: { build: candidate, value, low, high, allowance: 0, chosen: true, name }, printed }];
}

/** For those who hear it: the value, and the ends where there are any. */
const ends = ({ value, low, high }: Drawn["printed"]) => ({
  value: low === "" ? value : say("from-to", { from: low, to: high }),
});
