/**
 * Geometry of 'Club or swing?': a bar for each part of a gap with its interval, the gap itself below. Pure; positions
 * across are percent of the width, heights are pixels.
 */
import { linear } from "./scale.js";

export interface PartRow {
  key: string;
  name: string;
  value: number;
  low: number;
  high: number;
  /** Whose doing it is; the gap itself is nobody's. */
  belongs: "swing" | "both" | "unexplained" | "gap";
  /** A part of the part above it. */
  inner: boolean;
}

export interface PartBar {
  row: PartRow;
  /** Top of the row; its name stands here, its bar below. */
  top: number;
  y: number;
  from: number;
  to: number;
  low: number;
  high: number;
  /** Where its figure stands, beyond the interval. */
  label: number;
  anchor: "start" | "end";
}

export interface PartsGeometry {
  height: number;
  none: number;
  bars: PartBar[];
  ticks: { value: number; at: number }[];
  axisY: number;
}

const ROW = 52;
const BAR = 34;
const TOP = 4;
const AXIS = 28;
/** Percent left free at both ends, so that figures there stay inside. */
const PAD = 15;

/** `shown` is what one is in the unit shown: marks are round there. */
export function partsGeometry(rows: readonly PartRow[], shown = 1): PartsGeometry {
  const ends = rows.flatMap(({ value, low, high }) => [value, low, high]).filter(Number.isFinite);
  const scale = linear(Math.min(0, ...ends), Math.max(0, ...ends), PAD, 5, shown);
  const axisY = TOP + rows.length * ROW;
  return {
    height: axisY + AXIS,
    none: scale.at(0),
    bars: rows.map((row, index) => bar(row, index, scale.at)),
    ticks: scale.ticks.map((value) => ({ value, at: scale.at(value) })),
    axisY,
  };
}

function bar(row: PartRow, index: number, at: (value: number) => number): PartBar {
  const top = TOP + index * ROW;
  const [from, to] = [at(Math.min(0, row.value)), at(Math.max(0, row.value))];
  const right = row.value >= 0;
  const beyond = right ? Math.max(at(row.high), to) : Math.min(at(row.low), from);
  return {
    row,
    top,
    y: top + BAR,
    from,
    to,
    low: at(row.low),
    high: at(row.high),
    label: beyond + (right ? 1.5 : -1.5),
    anchor: right ? "start" : "end",
  };
}
