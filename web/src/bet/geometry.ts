/** Geometry of ten dots: as many are filled as the least that is stated, half filled up to the most, the rest empty. Pure. */

export type Filling = "full" | "half" | "empty";

export interface Dot {
  /** Middle, in pixels. */
  x: number;
  filling: Filling;
}

export const DOT = { radius: 9, step: 26, height: 24 } as const;

const TEN = 10;

export const dots = ({ low, high }: { low: number; high: number }): Dot[] =>
  Array.from({ length: TEN }, (_, at) => ({
    x: DOT.step * at + DOT.height / 2,
    filling: at < low ? "full" : at < high ? "half" : "empty",
  }));

export const WIDTH = DOT.step * (TEN - 1) + DOT.height;
