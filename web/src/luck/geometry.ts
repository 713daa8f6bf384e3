/**
 * Geometry of the luck picture: a hill of chance gaps, the gap of all shots on it, and below it how far the best
 * choice of each club reaches. Pure; positions across are percent of the width, heights are pixels.
 */
import { linear, type Scale } from "../chart/scale.js";

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
  /** What one is in the unit shown: marks are round there. */
  scale?: number;
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
  ticks: { at: number; value: number }[];
}

const TOP = 28;
const HILL = 150;
const TICKS = 30;
const ROW = 46;
/** Percent left free at both ends, so that figures there stay inside. */
const PAD = 6;

export function luckGeometry({ bins, margin, toward, gap, best, scale: shown = 1 }: LuckInput): LuckGeometry {
  const scale = scaleFor(bins, [0, gap, best.candidate, best.baseline], shown);
  const axisY = TOP + HILL;
  const most = Math.max(1, ...bins.map(({ count }) => count));
  const row = (role: Role, index: number): Reach => ({
    role,
    from: scale.at(0),
    to: scale.at(best[role]),
    y: axisY + TICKS + index * ROW + ROW - 14,
    value: best[role],
  });
  return {
    height: axisY + TICKS + 2 * ROW,
    hillTop: TOP,
    axisY,
    none: scale.at(0),
    bars: bins.map((bin) => hillBar(bin, scale, (HILL * bin.count) / most, axisY, speaksFor(bin, margin, toward))),
    whole: scale.at(gap),
    reaches: [row("candidate", 0), row("baseline", 1)],
    ticks: scale.ticks.map((value) => ({ at: scale.at(value), value })),
  };
}

function scaleFor(bins: readonly Bin[], marks: readonly number[], shown: number): Scale {
  const ends = [bins[0]?.low ?? -1, bins.at(-1)?.high ?? 1, ...marks];
  return linear(Math.min(...ends), Math.max(...ends), PAD, 5, shown);
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
