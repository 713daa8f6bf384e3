/** Numbers onto a line that is 100 wide. Pure. */

export interface Scale {
  /** Where a value lies, in percent of the width. */
  at: (value: number) => number;
  /** Round values worth a mark, inside the range. */
  ticks: number[];
}

/** Values round where one is `scale` in the unit shown. */
export const roundIn = (scale: number, low: number, high: number, count: number): number[] =>
  roundValues(low * scale, high * scale, count).map((value) => value / scale);

/**
 * Multiples of the round step that is nearest to a `count`th of the way from `low` to `high`, without the last digits that
 * binary fractions leave behind. The library that draws contours has the like, and is too large for the first picture.
 */
function roundValues(low: number, high: number, count: number): number[] {
  const wanted = (high - low) / count;
  if (!(wanted > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(wanted));
  const away = (digit: number) => Math.abs(Math.log((digit * power) / wanted));
  const step = [1, 2, 5, 10].reduce((best, digit) => (away(digit) < away(best) ? digit : best)) * power;
  const first = Math.ceil(low / step - 1e-9);
  const steps = Math.max(Math.floor(high / step + 1e-9) - first + 1, 0);
  // Zero is not to be a negative one.
  return Array.from({ length: steps }, (_, at) => Number(((first + at) * step).toPrecision(12)) + 0);
}

/** A straight scale over `low` to `high`, with `pad` percent left free at both ends; marks are round where one is `shown`. */
export function linear(low: number, high: number, pad: number, count: number, shown = 1): Scale {
  const span = high - low || 1;
  return {
    at: (value) => pad + ((value - low) / span) * (100 - 2 * pad),
    ticks: roundIn(shown, low, high, count),
  };
}

/** How wide the figure of a mark is on the narrowest screen with what keeps it apart from the next, percent. */
const MARK = 12;

/** How many marks have room at `pad` percent left free, five at most, where the reader's text is so large. */
export const marksWithin = (pad: number, text: number): number =>
  Math.min(Math.max(Math.floor((100 - 2 * pad) / (MARK * text)), 1), 5);

/** Marks worth a place on a scale of ratios, each set for a wider one than the set before. */
const RATIOS: readonly (readonly number[])[] = [
  [0.8, 1, 1.25],
  [0.67, 1, 1.5],
  [0.5, 1, 2],
  [0.25, 0.5, 1, 2, 4],
  [0.2, 1, 5],
  [0.1, 1, 10],
];

/** A scale for ratios: half and double lie equally far from 1. */
export function ratio(low: number, high: number, pad: number): Scale {
  const straight = linear(Math.log(low), Math.log(high), pad, 1);
  const inside = (marks: readonly number[]) => marks.every((value) => value >= low && value <= high);
  return {
    at: (value) => straight.at(Math.log(value)),
    ticks: [...(RATIOS.findLast(inside) ?? [1])],
  };
}
