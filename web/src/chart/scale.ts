/** Numbers onto a line that is 100 wide. Pure. */
import { ticks } from "d3-array";

export interface Scale {
  /** Where a value lies, in percent of the width. */
  at: (value: number) => number;
  /** Round values worth a mark, inside the range. */
  ticks: number[];
}

/** A straight scale over `low` to `high`, with `pad` percent left free at both ends. */
export function linear(low: number, high: number, pad: number, count: number): Scale {
  const span = high - low || 1;
  return {
    at: (value) => pad + ((value - low) / span) * (100 - 2 * pad),
    ticks: ticks(low, high, count),
  };
}

const RATIOS = [0.1, 0.2, 0.25, 0.33, 0.5, 0.67, 0.8, 1, 1.25, 1.5, 2, 3, 4, 5, 10];

/** A scale for ratios: half and double lie equally far from 1. */
export function ratio(low: number, high: number, pad: number, count: number): Scale {
  const straight = linear(Math.log(low), Math.log(high), pad, count);
  const inside = RATIOS.filter((value) => value >= low && value <= high);
  const every = Math.max(1, Math.ceil(inside.length / (count + 1)));
  const one = inside.indexOf(1);
  return {
    at: (value) => straight.at(Math.log(value)),
    ticks: inside.filter((_, index) => (index - one) % every === 0),
  };
}
