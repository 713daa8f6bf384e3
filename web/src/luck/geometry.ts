/**
 * Geometry of the luck picture: a hill of chance gaps, the gap of all shots on it, and below it how far the best
 * choice of each club reaches. Pure; positions across are percent of the width, heights are pixels.
 */
import { linear, marksWithin, type Scale } from "../chart/scale.js";

/** The two clubs by what they are asked about. */
export type Role = "candidate" | "baseline";

/** One bar as the core counted it, in the measure's unit, candidate minus baseline. */
export interface Bin {
  low: number;
  high: number;
  count: number;
}

export interface LuckInput {
  bins: readonly Bin[];
  /** Smallest difference that matters; null when there is none. */
  margin: number | null;
  /** Which way a gap speaks for the candidate. */
  toward: "higher" | "lower";
  /** Gap of all shots. */
  gap: number;
  /** Gap that the best choice of each club shows. */
  best: Record<Role, number>;
  /** Gaps of all deals there are: the scale has room for each before it is dealt. */
  deals?: readonly number[];
  /** How many of them were dealt. */
  dealt?: number;
  /** What one is in the unit shown: marks are round there. */
  scale?: number;
  /** How large the reader's text is beside the page's own. */
  text?: number;
}

export interface HillBar {
  from: number;
  to: number;
  y: number;
  height: number;
  /** The club a gap like this would speak for, where it is large enough to matter. */
  speaksFor: Role | null;
}

export interface Reach {
  role: Role;
  /** At no difference. */
  from: number;
  to: number;
  y: number;
  value: number;
}

export interface LuckGeometry {
  height: number;
  hillTop: number;
  axisY: number;
  none: number;
  bars: HillBar[];
  whole: number;
  reaches: Reach[];
  /** The deals so far on their strip below the scale, the last one last. */
  deals: { at: number; value: number }[];
  dealsY: number;
  ticks: { at: number; value: number }[];
  /** What lengths that belong to writing are multiplied by. */
  text: number;
}

const TOP = 28;
const HILL = 150;
const TICKS = 30;
const ROW = 46;
/** The strip on which deals fall, with the figure of the last one above it. */
const STRIP = 44;
/** Percent left free at both ends, so that figures there stay inside. */
const PAD = 6;

export function luckGeometry(input: LuckInput): LuckGeometry {
  const { bins, margin, toward, gap, best, deals = [], dealt = 0, scale: shown = 1, text = 1 } = input;
  const scale = scaleFor(bins, [0, gap, best.candidate, best.baseline, ...deals], shown, text);
  const hillTop = TOP * text;
  const axisY = hillTop + HILL;
  const below = axisY + (TICKS + STRIP) * text;
  const most = Math.max(1, ...bins.map(({ count }) => count));
  const row = (role: Role, index: number): Reach => ({
    role,
    from: scale.at(0),
    to: scale.at(best[role]),
    y: below + (index * ROW + ROW) * text - 14,
    value: best[role],
  });
  return {
    height: below + 2 * ROW * text,
    hillTop,
    axisY,
    none: scale.at(0),
    bars: bins.map((bin) => hillBar(bin, scale, (HILL * bin.count) / most, axisY, speaksFor(bin, margin, toward))),
    whole: scale.at(gap),
    reaches: [row("candidate", 0), row("baseline", 1)],
    deals: deals.slice(0, dealt).map((value) => ({ at: scale.at(value), value })),
    dealsY: below - 8,
    ticks: scale.ticks.map((value) => ({ at: scale.at(value), value })),
    text,
  };
}

function scaleFor(bins: readonly Bin[], marks: readonly number[], shown: number, text: number): Scale {
  const ends = [bins[0]?.low ?? -1, bins.at(-1)?.high ?? 1, ...marks];
  return linear(Math.min(...ends), Math.max(...ends), PAD, marksWithin(PAD, text), shown);
}

const hillBar = ({ low, high }: Bin, scale: Scale, height: number, axisY: number, speaksFor: Role | null): HillBar => ({
  from: scale.at(low),
  to: scale.at(high),
  y: axisY - height,
  height,
  speaksFor,
});

/** A bar belongs to the side its middle lies on; where the margin is an edge, no bar lies on both. */
function speaksFor({ low, high }: Bin, margin: number | null, toward: "higher" | "lower"): Role | null {
  const middle = (low + high) / 2;
  if (margin === null || Math.abs(middle) < margin) return null;
  return middle > 0 === (toward === "higher") ? "candidate" : "baseline";
}
