/**
 * The margin as the golfer sets it: in the unit shown for averages, in percent for scatter. Pure.
 *
 * The core takes a margin of scatter as a ratio: 25 % is 1.25.
 */
import type { Question } from "../core/engine.js";
import { chosenOf, type MeasureView, unitName } from "./values.js";

export interface MarginScale {
  unit: string;
  /** How much one press of a button changes it. */
  step: number;
  /** What the core calls a margin, as it is shown. */
  shown: (margin: number) => number;
  /** What is shown, as the core takes it. */
  taken: (shown: number) => number;
}

const PERCENT_STEP = 5;

/** Whether the question is about scatter, where margins are ratios. */
export const isSpread = ({ goal }: Pick<Question, "goal">): boolean => goal === "tighter";

export function marginScale(question: Pick<Question, "goal">, measure: MeasureView): MarginScale {
  if (isSpread(question)) {
    return {
      unit: "%",
      step: PERCENT_STEP,
      shown: (ratio) => tidy((ratio - 1) * 100),
      taken: (percent) => tidy(1 + percent / 100),
    };
  }
  return {
    unit: unitName(measure.unit),
    step: marginStep(measure),
    shown: (margin) => chosenOf(margin, measure),
    taken: (shown) => shown / measure.scale,
  };
}

/** A round number, about a third of the usual margin, no finer than the measure is shown. */
export function marginStep(measure: MeasureView): number {
  const finest = 10 ** -measure.decimals;
  if (measure.margin === null) return 1;
  const target = chosenOf(measure.margin, measure) / 3;
  const power = 10 ** Math.floor(Math.log10(target));
  const round = [5, 2, 1].map((digit) => digit * power).find((step) => step <= target * (1 + 1e-9)) ?? power;
  return Math.max(round, finest);
}

/** The margin one step up or down, on the step's own grid and above zero. */
export function stepMargin(margin: number, step: number, direction: 1 | -1): number {
  const position = margin / step;
  const onGrid = direction > 0 ? Math.floor(position + 1e-9) + 1 : Math.ceil(position - 1e-9) - 1;
  return tidy(Math.max(onGrid, 1) * step);
}

/** Without the last digits that binary fractions leave behind. */
const tidy = (value: number): number => Number(value.toPrecision(12));
