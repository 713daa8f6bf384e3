/**
 * Geometry of the answer's picture: each candidate's interval against 'no difference' and the zone
 * too small to matter. Pure; positions across are percent of the width, heights are pixels.
 */
import { linear, ratio, type Scale } from "./scale.js";

/** One candidate's interval, the one that decided, as the report has it. */
export interface Row {
  build: number;
  value: number;
  low: number;
  high: number;
  /** Part of each half-width that stands for warming up and tiring. */
  allowance: number;
  /** Whether the answer speaks of this one. */
  chosen: boolean;
}

export interface IntervalInput {
  rows: readonly Row[];
  /** Smallest difference that matters, itself a ratio for ratios; null when there is none. */
  margin: number | null;
  /** Whether the values are ratios, where 1 means no difference. */
  isRatio: boolean;
  /** What one is in the unit shown: marks are round there. */
  scale?: number;
  /** Letters of the longest end that is printed: both ends have room for it. */
  letters?: number;
}

export interface Bar {
  build: number;
  chosen: boolean;
  y: number;
  from: number;
  to: number;
  /** The part without the order allowance. */
  coreFrom: number;
  coreTo: number;
  at: number;
  value: number;
  low: number;
  high: number;
}

export interface IntervalGeometry {
  height: number;
  /** Where 'no difference' lies. */
  none: number;
  zone: { from: number; to: number } | null;
  bars: Bar[];
  ticks: { at: number; value: number }[];
  /** Where the axis runs. */
  axisY: number;
}

const ROW = 76;
const TOP = 30;
const AXIS = 34;
/** Percent left free at both ends at least, so that figures at the ends stay inside. */
const PAD = 12;
/** The same for what stands between a bar and its figure. */
const GAP = 5;
/** How wide a letter of the label is on the narrowest screen, in percent of the picture. */
const LETTER = 2.1;

export function intervalGeometry(input: IntervalInput): IntervalGeometry {
  const { rows, margin, isRatio, scale: shown = 1, letters = 0 } = input;
  const none = isRatio ? 1 : 0;
  const zoneEnds = zone(margin, isRatio);
  const scale = scaleFor(rows, zoneEnds, isRatio, shown, Math.max(PAD, letters * LETTER + GAP));
  const axisY = TOP + rows.length * ROW;
  return {
    height: axisY + AXIS,
    none: scale.at(none),
    zone: zoneEnds && { from: scale.at(zoneEnds.low), to: scale.at(zoneEnds.high) },
    bars: rows.map((row, index) => bar(row, TOP + index * ROW + ROW / 2 + 8, scale, isRatio)),
    ticks: scale.ticks.map((value) => ({ at: scale.at(value), value })),
    axisY,
  };
}

/** Where a label stands that names the zone around `none`: one that would be cut begins or ends at the picture's edge. */
export function labelPlace(none: number, letters: number): { at: number; anchor: "start" | "middle" | "end" } {
  const half = (letters * LETTER) / 2;
  if (none - half < 0) return { at: 0, anchor: "start" };
  return none + half > 100 ? { at: 100, anchor: "end" } : { at: none, anchor: "middle" };
}

function zone(margin: number | null, isRatio: boolean): { low: number; high: number } | null {
  if (margin === null) return null;
  return isRatio ? { low: 1 / margin, high: margin } : { low: -margin, high: margin };
}

function scaleFor(
  rows: readonly Row[],
  zone: { low: number; high: number } | null,
  isRatio: boolean,
  shown: number,
  pad: number,
): Scale {
  const ends = rows.flatMap((row) => [row.low, row.high]).concat(zone ? [zone.low, zone.high] : []);
  if (isRatio) {
    const widest = Math.max(...ends.map((end) => Math.abs(Math.log(end))).filter(Number.isFinite), Math.log(1.5));
    const scale = ratio(Math.exp(-widest), Math.exp(widest), pad);
    // An end without a limit lies at the edge of the picture.
    return { ...scale, at: (value) => Math.min(100, Math.max(0, scale.at(value))) };
  }
  const low = Math.min(0, ...ends);
  const high = Math.max(0, ...ends);
  return linear(low, high, pad, 5, shown);
}

function bar(row: Row, y: number, scale: Scale, isRatio: boolean): Bar {
  const allowance = isRatio ? 0 : row.allowance;
  return {
    ...row,
    y,
    from: scale.at(row.low),
    to: scale.at(row.high),
    coreFrom: scale.at(Math.min(row.low + allowance, row.value)),
    coreTo: scale.at(Math.max(row.high - allowance, row.value)),
    at: scale.at(row.value),
  };
}
