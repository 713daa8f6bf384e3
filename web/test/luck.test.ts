/** Geometry of the luck picture: a hill, the gap of all shots, and how far the best choices reach. */
import { describe, expect, test } from "vitest";
import { type Bin, type LuckInput, luckGeometry } from "../src/luck/geometry.js";

/** A hill of bins `width` wide, as the core makes it: alike on both sides of zero. */
function hill(width: number, counts: readonly number[]): Bin[] {
  const right = counts.map((count, index) => ({ low: index * width, high: (index + 1) * width, count }));
  const left = right.map(({ low, high, count }) => ({ low: -high, high: -low, count })).reverse();
  return [...left, ...right];
}

const input = (changes: Partial<LuckInput> = {}): LuckInput => ({
  bins: hill(2.5, [90, 70, 40, 12, 3]),
  margin: 5,
  toward: "higher",
  gap: 3,
  best: { candidate: 17, baseline: -9 },
  ...changes,
});

describe("the hill", () => {
  const { bars, axisY, none } = luckGeometry(input());

  test("stands on the axis, its highest bar the highest, heights in proportion", () => {
    expect(bars).toHaveLength(10);
    for (const bar of bars) expect(bar.y + bar.height).toBeCloseTo(axisY, 9);
    expect(bars[5]!.height / bars[6]!.height).toBeCloseTo(90 / 70, 9);
  });

  test("is alike on both sides of no difference, without holes", () => {
    bars.forEach((bar, index) => {
      const mirrored = bars[bars.length - 1 - index]!;
      expect(bar.height).toBeCloseTo(mirrored.height, 9);
      expect(bar.from - none).toBeCloseTo(none - mirrored.to, 9);
      if (index > 0) expect(bar.from).toBeCloseTo(bars[index - 1]!.to, 9);
    });
  });

  test("only bars beyond the margin speak, each for the club on its side", () => {
    expect(bars.map(({ speaksFor }) => speaksFor)).toEqual([
      "baseline",
      "baseline",
      "baseline",
      null,
      null,
      null,
      null,
      "candidate",
      "candidate",
      "candidate",
    ]);
    const lower = luckGeometry(input({ toward: "lower" })).bars;
    expect(lower[0]!.speaksFor).toBe("candidate");
    expect(lower[9]!.speaksFor).toBe("baseline");
  });

  test("without a margin nothing speaks", () => {
    expect(luckGeometry(input({ margin: null })).bars.every(({ speaksFor }) => speaksFor === null)).toBe(true);
  });
});

describe("what is marked", () => {
  test("everything lies inside the picture, however far the best choices reach", () => {
    for (const best of [
      { candidate: 17, baseline: -9 },
      { candidate: 400, baseline: -2 },
      { candidate: -3, baseline: -80 },
    ]) {
      const { bars, reaches, whole, ticks } = luckGeometry(input({ best, gap: 60 }));
      const places = [
        whole,
        ...bars.flatMap(({ from, to }) => [from, to]),
        ...reaches.map(({ to }) => to),
        ...ticks.map(({ at }) => at),
      ];
      expect(Math.min(...places)).toBeGreaterThanOrEqual(6 - 1e-9);
      expect(Math.max(...places)).toBeLessThanOrEqual(94 + 1e-9);
    }
  });

  test("reaches begin at no difference, on lines of their own below the hill", () => {
    const { reaches, none, axisY, height } = luckGeometry(input());
    expect(reaches.map(({ role }) => role)).toEqual(["candidate", "baseline"]);
    for (const reach of reaches) {
      expect(reach.from).toBe(none);
      expect(reach.y).toBeGreaterThan(axisY + 30);
      expect(reach.y).toBeLessThan(height);
    }
    expect(reaches[1]!.y - reaches[0]!.y).toBeGreaterThanOrEqual(40);
  });

  test("turned around, the picture is its own mirror image", () => {
    const here = luckGeometry(input());
    const there = luckGeometry(input({ gap: -3, best: { candidate: -17, baseline: 9 }, toward: "lower" }));
    expect(there.whole).toBeCloseTo(100 - here.whole, 9);
    expect(there.reaches[0]!.to).toBeCloseTo(100 - here.reaches[0]!.to, 9);
    expect(there.bars.map(({ speaksFor }) => speaksFor)).toEqual(here.bars.map(({ speaksFor }) => speaksFor).reverse());
  });

  test("no gaps at all still give a picture of finite numbers", () => {
    const { bars, whole, reaches } = luckGeometry(input({ bins: [], gap: 0, best: { candidate: 0, baseline: 0 } }));
    expect(bars).toEqual([]);
    expect([whole, ...reaches.map(({ to }) => to)].every(Number.isFinite)).toBe(true);
  });
});

describe("deals", () => {
  const deals = [8, -12, 3];

  test("only those that were dealt are drawn, the last one last, and the scale has room for all from the start", () => {
    const scales = [0, 1, 3].map((dealt) => luckGeometry(input({ deals, dealt })));
    expect(scales.map((one) => one.deals.map(({ value }) => value))).toEqual([[], [8], deals]);
    for (const { none, whole } of scales) {
      expect(none).toBe(scales[0]!.none);
      expect(whole).toBe(scales[0]!.whole);
    }
    for (const { at } of scales[2]!.deals) expect(at > 0 && at < 100).toBe(true);
    expect(scales[2]!.deals[1]!.at).toBeLessThan(scales[2]!.none);
  });
});
