/** A hundred dots: as many filled as were counted, in the order of a bar, and the range below them on the same scale. */
import { expect, test } from "vitest";
import { HEIGHT, hundredDots, ROWS, WIDTH } from "../src/landing/dots.js";

test.each([1, 37, 63, 79, 99])("%i of a hundred are filled, the first ones", (on) => {
  const { dots } = hundredDots({ on, low: 1, high: 99 });
  expect(dots).toHaveLength(100);
  expect(dots.filter(({ filled }) => filled)).toHaveLength(on);
  expect(dots.findIndex(({ filled }) => !filled)).toBe(on);
});

test("dots fill column by column, each in a place of its own inside the picture", () => {
  const { dots } = hundredDots({ on: 50, low: 40, high: 60 });
  expect(new Set(dots.map(({ x, y }) => `${x} ${y}`)).size).toBe(100);
  for (const [at, { x, y }] of dots.entries()) {
    expect(x).toBe(dots[at - (at % ROWS)]!.x);
    expect(x > 0 && x < WIDTH && y > 0 && y < HEIGHT).toBe(true);
  }
});

test("the range ends where as many dots would", () => {
  const { range, dots } = hundredDots({ on: 60, low: 40, high: 80 });
  // Forty dots are the columns left of the range's lower end.
  expect(dots.filter(({ x }) => x < range.from)).toHaveLength(40);
  expect(dots.filter(({ x }) => x < range.to)).toHaveLength(80);
  expect(range.y).toBeGreaterThan(Math.max(...dots.map(({ y }) => y)));
});
