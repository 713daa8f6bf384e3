/** Geometry of what a test will show by its length: two lines over the rounds, the plan's own length marked. Pure. */
import type { Length, Plan } from "../core/planner.js";
import { isSpread } from "../format/margin.js";

export interface PowerPoint {
  x: number;
  y: number;
  row: Length;
}

export interface PowerGeometry {
  /** How large the reader's text is beside the page's own. */
  text: number;
  height: number;
  top: number;
  bottom: number;
  /** Shares worth a line, with their heights. */
  grid: { y: number; share: number }[];
  margin: PowerPoint[];
  double: PowerPoint[];
  /** The lengths that have room for their rounds: with large text every second one, the plan's own among them. */
  told: PowerPoint[];
}

const HIGH = 156;
const TOP = 14;
/** Below the lines stand the rounds. */
const BELOW = 30;
/** Percent left free at the sides: on the left stand the shares, on the right half a figure. */
const LEFT = 18;
const RIGHT = 9;

/** From this size of text on two figures side by side would touch. */
const CLOSE = 1.5;

/** Lengths stand side by side in equal steps: they are choices, not a scale. */
export function powerGeometry(rows: readonly Length[], text = 1): PowerGeometry {
  const left = LEFT * text;
  const x = (index: number) => (rows.length === 1 ? 50 : left + (index / (rows.length - 1)) * (100 - left - RIGHT));
  const top = TOP * text;
  // The lines are a writing and a half apart at the least.
  const bottom = top + HIGH * Math.max(1, text * 0.8);
  const y = (share: number) => bottom - share * (bottom - top);
  const line = (of: (row: Length) => number | null): PowerPoint[] =>
    rows.flatMap((row, index) => {
      const share = of(row);
      return share === null ? [] : [{ x: x(index), y: y(share), row }];
    });
  const margin = line((row) => row.margin_found);
  const own = Math.max(
    0,
    margin.findIndex(({ row }) => row.is_plan),
  );
  return {
    text,
    height: bottom + BELOW * text,
    top,
    bottom,
    grid: [0, 0.5, 0.8, 1].map((share) => ({ y: y(share), share })),
    margin,
    told: margin.filter((_, index) => text < CLOSE || (index - own) % 2 === 0),
    double: line((row) => row.double_found),
  };
}

/** Twice the margin, as the chances of a length are told for it: a ratio of scatter is doubled by being taken twice. */
export const doubled = (plan: Pick<Plan, "goal" | "margin">): number =>
  isSpread(plan) ? plan.margin ** 2 : plan.margin * 2;
