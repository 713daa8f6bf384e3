/**
 * Geometry of what each club's ball speed could carry more: a bar from nothing to what one change alone brings, and thinner
 * on to what both together bring; all on one scale. Pure; positions across are percent of the width.
 */
import { linear } from "../chart/scale.js";
import type { Gain } from "../core/flights.js";

export interface GainBar {
  kind: Gain["kind"];
  /** Ends of the solid part, and of the thinner one; the same where there is none. */
  solid: { from: number; to: number };
  thin: { from: number; to: number };
}

export interface GainsGeometry {
  none: number;
  bars: GainBar[];
  /** Empty where no size is named: a scale would be one of nothing. */
  ticks: { value: number; at: number }[];
}

/** Free at both ends, percent. */
const PAD = 2;
/** The scale reaches at least so far, yd: a gain of two looks small. */
const LEAST = 10;

/** `shown` is what one is in the unit shown: marks are round there. */
export function gainsGeometry(gains: readonly Gain[], shown = 1): GainsGeometry {
  const most = Math.max(LEAST, ...gains.map((gain) => ends(gain).high));
  const { at, ticks } = linear(0, most, PAD, 4, shown);
  const none = at(0);
  return {
    none,
    bars: gains.map((gain) => {
      const { low, high } = ends(gain);
      return { kind: gain.kind, solid: { from: none, to: at(low) }, thin: { from: at(low), to: at(high) } };
    }),
    ticks: gains.some((gain) => ends(gain).high > 0) ? ticks.map((value) => ({ value, at: at(value) })) : [],
  };
}

function ends(gain: Gain): { low: number; high: number } {
  if (gain.kind === "range") return { low: gain.low, high: gain.high };
  if (gain.kind === "alone") return { low: gain.size, high: gain.size };
  // Only both together are named: nothing is sure of one alone.
  return gain.kind === "both" ? { low: 0, high: gain.size } : { low: 0, high: 0 };
}
