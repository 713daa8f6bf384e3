/** Bars of what a ball speed could carry more: one scale, from nothing on, and none where no size is named. */
import { expect, test } from "vitest";
import { gainsGeometry } from "../src/potential/gains.js";

test("a range is solid to what one change brings and thin to what both do", () => {
  const { none, bars } = gainsGeometry([
    { kind: "range", low: 4, high: 12 },
    { kind: "alone", size: 4 },
    { kind: "both", size: 12 },
  ]);
  const [range, alone, both] = bars;
  expect(range!.solid).toEqual({ from: none, to: alone!.solid.to });
  expect(range!.thin).toEqual({ from: alone!.solid.to, to: both!.thin.to });
  expect((both!.thin.to - none) / (alone!.solid.to - none)).toBeCloseTo(3, 9);
  expect(both!.solid.to).toBe(none);
  expect(alone!.thin.to).toBe(alone!.thin.from);
});

test("nothing to gain, or none that is named, has no length", () => {
  for (const kind of ["nothing", "not_named"] as const) {
    const { none, bars } = gainsGeometry([{ kind }, { kind: "alone", size: 5 }]);
    expect(bars[0]).toEqual({ kind, solid: { from: none, to: none }, thin: { from: none, to: none } });
  }
});

test("where no size is named there is no scale", () => {
  expect(gainsGeometry([{ kind: "nothing" }, { kind: "not_named" }]).ticks).toEqual([]);
  expect(gainsGeometry([{ kind: "nothing" }, { kind: "alone", size: 3 }]).ticks.length).toBeGreaterThan(1);
});

test("everything lies inside, a small gain is drawn small, and marks are round in the unit shown", () => {
  for (const size of [2, 9, 60]) {
    const { bars, ticks } = gainsGeometry([{ kind: "alone", size }], 0.9144);
    expect(bars[0]!.solid.to).toBeLessThanOrEqual(98 + 1e-9);
    for (const { value } of ticks) expect(value * 0.9144).toBeCloseTo(Math.round(value * 0.9144), 6);
  }
  expect(gainsGeometry([{ kind: "alone", size: 2 }]).bars[0]!.solid.to).toBeLessThan(25);
});
