/**
 * Geometry of 'Club or swing?': a bar for each part of a gap with its interval, the gap itself below. Pure; positions
 * across are percent of the width, heights are pixels.
 */
import { linesOf } from "./lines.js";
import { linear, marksWithin } from "./scale.js";

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
  /** Its name in lines, and where the first of them stands; its bar is below. */
  lines: string[];
  nameY: number;
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
  /** What lengths that belong to writing are multiplied by. */
  text: number;
}

/** A line of a name; from the last of them to the middle of the bar, and from there to the next row. */
const LINE = 18;
const BAR = 18;
const BELOW = 18;
const TOP = 2;
const AXIS = 28;
/** Percent left free at both ends, so that figures there stay inside. */
const PAD = 15;
/** So much more at twice the text. */
const MORE_PAD = 20;
/** How wide a letter is on the narrowest screen, in percent of the picture. */
const LETTER = 2.3;

/** `shown` is what one is in the unit shown: marks are round there; `text` how large the reader's text is. */
export function partsGeometry(rows: readonly PartRow[], shown = 1, text = 1): PartsGeometry {
  const ends = rows.flatMap(({ value, low, high }) => [value, low, high]).filter(Number.isFinite);
  const pad = PAD + (text - 1) * MORE_PAD;
  const scale = linear(Math.min(0, ...ends), Math.max(0, ...ends), pad, marksWithin(pad, text), shown);
  let axisY = TOP;
  const bars = rows.map((row) => {
    const lines = linesOf(row.name, Math.floor(100 / (LETTER * text)));
    const nameY = axisY + LINE * text - 2;
    const y = axisY + (LINE * lines.length + BAR * 0.5) * text + BAR * 0.5;
    axisY = y + BELOW * 0.5 * (1 + text);
    return bar(row, { lines, nameY, y }, scale.at);
  });
  return {
    height: axisY + AXIS * text,
    none: scale.at(0),
    bars,
    ticks: scale.ticks.map((value) => ({ value, at: scale.at(value) })),
    axisY,
    text,
  };
}

function bar(row: PartRow, place: Pick<PartBar, "lines" | "nameY" | "y">, at: (value: number) => number): PartBar {
  const [from, to] = [at(Math.min(0, row.value)), at(Math.max(0, row.value))];
  const right = row.value >= 0;
  const beyond = right ? Math.max(at(row.high), to) : Math.min(at(row.low), from);
  return {
    row,
    ...place,
    from,
    to,
    low: at(row.low),
    high: at(row.high),
    label: beyond + (right ? 1.5 : -1.5),
    anchor: right ? "start" : "end",
  };
}
