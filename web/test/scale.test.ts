/** Round marks on a scale: those of the library that draws contours, which comes too late for the first picture. */
import { ticks } from "d3-array";
import { expect, test } from "vitest";
import { roundIn } from "../src/chart/scale.js";

/** Numbers from 0 to 1, the same ones in each run. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

test("marks are the library's, over ranges of every size and place", () => {
  const draw = dice(7);
  const size = () => 10 ** (draw() * 6 - 3);
  for (let round = 0; round < 2000; round++) {
    const low = (draw() - 0.5) * size();
    const high = low + draw() * size();
    const [ours, theirs] = [roundIn(1, low, high, 3 + (round % 6)), ticks(low, high, 3 + (round % 6))];
    expect(ours.length, `${low} ${high}`).toBe(theirs.length);
    for (const [at, value] of ours.entries()) expect(value).toBeCloseTo(theirs[at]!, 9);
  }
});

test("a range of nothing has one mark, and zero has no sign", () => {
  expect(roundIn(1, 3, 3, 5)).toEqual([3]);
  expect(roundIn(1, -4, 4, 5).map((value) => Object.is(value, -0))).not.toContain(true);
});
