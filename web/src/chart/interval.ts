/**
 * Geometry of the answer's picture: each candidate's interval against 'no difference' and the zone
 * too small to matter. Pure; positions across are percent of the width, heights are pixels.
 */
import { linesOf } from "./lines.js";
import { linear, marksWithin, ratio, type Scale } from "./scale.js";

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
  /** Stands above it where it takes more than its marker to know it. */
  name?: string;
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
  /** How large the reader's text is beside the page's own. */
  text?: number;
  /** Names the zone around no difference. */
  label?: string;
}

export interface Bar {
  build: number;
  chosen: boolean;
  y: number;
  /** Its name, and where that stands. */
  name: { lines: string[]; y: number } | null;
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
  /** The zone's name, where it stands. */
  label: { at: number; anchor: "start" | "middle" | "end"; lines: string[] };
  /** Where the zone begins below it. */
  zoneY: number;
  /** What lengths that belong to writing are multiplied by. */
  text: number;
}

const ROW = 76;
const TOP = 30;
/** A line of the label or of a name. */
const LINE = 17;
const AXIS = 34;
/** Percent left free at both ends at least, so that figures at the ends stay inside. */
const PAD = 12;
/** The same for what stands between a bar and its figure. */
const GAP = 5;
/** How wide a letter of the label is on the narrowest screen, in percent of the picture. */
const LETTER = 2.1;
/** Percent at one end that figures may take at most: what is large leaves room for the bar. */
const WIDEST_PAD = 34;
/** Up to this size of text a scale of ratios has room for its words. */
const ROOMY = 1.3;

export function intervalGeometry(input: IntervalInput): IntervalGeometry {
  const { rows, margin, isRatio, scale: shown = 1, letters = 0, text = 1, label = "" } = input;
  const none = isRatio ? 1 : 0;
  const zoneEnds = zone(margin, isRatio);
  const pad = Math.min(Math.max(PAD, letters * LETTER * text + GAP), WIDEST_PAD);
  const scale = scaleFor(rows, zoneEnds, isRatio, shown, pad, text);
  const perLine = Math.floor(100 / (LETTER * text));
  const labels = linesOf(label, perLine);
  const top = (TOP + LINE * (labels.length - 1)) * text;
  const names = rows.map(({ name }) => (name === undefined ? [] : linesOf(name, perLine)));
  let axisY = top;
  const tops = names.map((own) => {
    axisY += (ROW + LINE * own.length) * text;
    return axisY - (ROW + LINE * own.length) * text;
  });
  return {
    height: axisY + AXIS * text,
    none: scale.at(none),
    zone: zoneEnds && { from: scale.at(zoneEnds.low), to: scale.at(zoneEnds.high) },
    bars: rows.map((row, index) => {
      const own = names[index]!;
      const y = tops[index]! + (LINE * own.length + ROW / 2 + 8) * text;
      const name = own.length > 0 ? { lines: own, y: tops[index]! + LINE * text } : null;
      return bar(row, y, name, scale, isRatio);
    }),
    ticks: scale.ticks.map((value) => ({ at: scale.at(value), value })),
    axisY,
    label: { ...labelPlace(scale.at(none), Math.max(...labels.map(({ length }) => length)), text), lines: labels },
    zoneY: top - 8 * text,
    text,
  };
}

/** Where a label stands that names the zone around `none`: one that would be cut begins or ends at the picture's edge. */
export function labelPlace(
  none: number,
  letters: number,
  text = 1,
): { at: number; anchor: "start" | "middle" | "end" } {
  const half = (letters * LETTER * text) / 2;
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
  text: number,
): Scale {
  const ends = rows.flatMap((row) => [row.low, row.high]).concat(zone ? [zone.low, zone.high] : []);
  if (isRatio) {
    const widest = Math.max(...ends.map((end) => Math.abs(Math.log(end))).filter(Number.isFinite), Math.log(1.5));
    const scale = ratio(Math.exp(-widest), Math.exp(widest), pad);
    // Words are wider than figures: of large ones only the middle has room. An end without a limit lies at the edge.
    const ticks = text > ROOMY ? scale.ticks.filter((value) => value === 1) : scale.ticks;
    return { ...scale, ticks, at: (value) => Math.min(100, Math.max(0, scale.at(value))) };
  }
  const low = Math.min(0, ...ends);
  const high = Math.max(0, ...ends);
  return linear(low, high, pad, marksWithin(pad, text), shown);
}

function bar(row: Row, y: number, name: Bar["name"], scale: Scale, isRatio: boolean): Bar {
  const allowance = isRatio ? 0 : row.allowance;
  return {
    ...row,
    y,
    name,
    from: scale.at(row.low),
    to: scale.at(row.high),
    coreFrom: scale.at(Math.min(row.low + allowance, row.value)),
    coreTo: scale.at(Math.max(row.high - allowance, row.value)),
    at: scale.at(row.value),
  };
}
