/** Ten dots: the least filled, half-filled up to the most, never more or fewer than ten. */
import { expect, test } from "vitest";
import { DOT, dots, WIDTH } from "../src/bet/geometry.js";

const count = (row: ReturnType<typeof dots>, wanted: string): number =>
  row.filter(({ filling }) => filling === wanted).length;

test("as many are filled as are stated at least, and half filled up to the most", () => {
  for (const [low, high] of [
    [6, 8],
    [0, 0],
    [0, 3],
    [10, 10],
    [8, 8],
  ] as const) {
    const row = dots({ low, high });
    expect(row).toHaveLength(10);
    expect([count(row, "full"), count(row, "half"), count(row, "empty")]).toEqual([low, high - low, 10 - high]);
  }
});

test("they stand in a row, apart and inside the picture", () => {
  const row = dots({ low: 6, high: 8 });
  for (const [at, { x }] of row.entries()) {
    expect(x - DOT.radius).toBeGreaterThanOrEqual(0);
    expect(x + DOT.radius).toBeLessThanOrEqual(WIDTH);
    if (at > 0) expect(x - row[at - 1]!.x).toBeGreaterThan(2 * DOT.radius);
  }
});
