/**
 * Geometry of a hundred dots: as many are filled as were counted, column by column, so that the dots of two clubs compare
 * like bars; below them how far the true share may reach. Pure.
 */

/** What was counted of a hundred, and its interval. */
export interface InHundred {
  on: number;
  low: number;
  high: number;
}

export interface Dot {
  x: number;
  y: number;
  filled: boolean;
}

export interface HundredDots {
  dots: Dot[];
  range: { from: number; to: number; y: number };
}

export const ROWS = 4;
const COLUMNS = 25;
/** From one dot to the next, in pixels of a picture that is `WIDTH` wide. */
const STEP = 16;
export const WIDTH = COLUMNS * STEP;
/** Room for the range below the dots. */
const BELOW = 14;
export const HEIGHT = ROWS * STEP + BELOW;

export const hundredDots = ({ on, low, high }: InHundred): HundredDots => ({
  dots: Array.from({ length: ROWS * COLUMNS }, (_, at) => ({
    x: STEP * Math.floor(at / ROWS) + STEP / 2,
    y: STEP * (at % ROWS) + STEP / 2,
    filled: at < on,
  })),
  range: { from: across(low), to: across(high), y: ROWS * STEP + BELOW / 2 },
});

/** Where so many of a hundred end. */
const across = (count: number): number => (WIDTH * count) / (ROWS * COLUMNS);
