/** Geometry of what a test will show by its length: two lines over the rounds, the plan's own length marked. Pure. */
import type { Length, Plan } from "../core/planner.js";
import { isSpread } from "../format/margin.js";

export interface PowerPoint {
  x: number;
  y: number;
  row: Length;
}

export interface PowerGeometry {
  height: number;
  top: number;
  bottom: number;
  /** Shares worth a line, with their heights. */
  grid: { y: number; share: number }[];
  margin: PowerPoint[];
  double: PowerPoint[];
}

const HEIGHT = 200;
const TOP = 14;
const BOTTOM = HEIGHT - 30;
/** Percent left free at the sides: on the left stand the shares, on the right half a figure. */
const LEFT = 18;
const RIGHT = 9;

/** Lengths stand side by side in equal steps: they are choices, not a scale. */
export function powerGeometry(rows: readonly Length[]): PowerGeometry {
  const x = (index: number) => (rows.length === 1 ? 50 : LEFT + (index / (rows.length - 1)) * (100 - LEFT - RIGHT));
  const y = (share: number) => BOTTOM - share * (BOTTOM - TOP);
  const line = (of: (row: Length) => number | null): PowerPoint[] =>
    rows.flatMap((row, index) => {
      const share = of(row);
      return share === null ? [] : [{ x: x(index), y: y(share), row }];
    });
  return {
    height: HEIGHT,
    top: TOP,
    bottom: BOTTOM,
    grid: [0, 0.5, 0.8, 1].map((share) => ({ y: y(share), share })),
    margin: line((row) => row.margin_found),
    double: line((row) => row.double_found),
  };
}

/** Twice the margin, as the chances of a length are told for it: a ratio of scatter is doubled by being taken twice. */
export const doubled = (plan: Pick<Plan, "goal" | "margin">): number =>
  isSpread(plan) ? plan.margin ** 2 : plan.margin * 2;
