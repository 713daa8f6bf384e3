/** Geometry of the answer's picture, and the markers of the builds. */
import { describe, expect, test } from "vitest";
import { intervalGeometry, labelPlace, type Row } from "../src/chart/interval.js";
import { LOOKS, look, markerPath } from "../src/chart/marker.js";
import { linear, ratio } from "../src/chart/scale.js";

const row = (value: number, half: number, allowance = 0, build = 1): Row => ({
  build,
  value,
  low: value - half,
  high: value + half,
  allowance,
  chosen: true,
});
const difference = (rows: Row[], margin: number | null = 5) => intervalGeometry({ rows, margin, isRatio: false });

describe("the interval against zero and the zone", () => {
  test("zero, the zone and every interval lie inside the picture, with room for figures", () => {
    for (const rows of [[row(13, 8)], [row(-40, 3)], [row(0.2, 0.1)], [row(300, 900), row(-2, 1)]]) {
      const { none, zone, bars } = difference(rows);
      const ends = bars.flatMap((bar) => [bar.from, bar.to, bar.at]).concat(none, zone!.from, zone!.to);
      expect(Math.min(...ends)).toBeGreaterThanOrEqual(12 - 1e-9);
      expect(Math.max(...ends)).toBeLessThanOrEqual(88 + 1e-9);
    }
  });

  test("ends have room for as many letters as are printed there", () => {
    for (const letters of [6, 10]) {
      const { bars } = intervalGeometry({ rows: [row(9, 39)], margin: 5, isRatio: false, letters });
      const room = Math.min(bars[0]!.from, 100 - bars[0]!.to);
      expect(room).toBeGreaterThan(2.1 * letters);
    }
  });

  test("the zone lies evenly around zero", () => {
    const { none, zone } = difference([row(13, 8)]);
    expect(none - zone!.from).toBeCloseTo(zone!.to - none, 9);
  });

  test("equal lengths stand for equal gaps", () => {
    const [bar] = difference([row(13, 8)]).bars;
    expect(bar!.at - bar!.from).toBeCloseTo(bar!.to - bar!.at, 9);
  });

  test("turned around, the picture is its own mirror image", () => {
    const one = difference([row(13, 8, 2)]);
    const other = difference([row(-13, 8, 2)]);
    expect(other.none).toBeCloseTo(100 - one.none, 9);
    expect(other.bars[0]!.coreFrom).toBeCloseTo(100 - one.bars[0]!.coreTo, 9);
  });

  test("the order allowance is the part between core and ends, never past the mark", () => {
    const [wide] = difference([row(13, 8, 6)]).bars;
    expect(wide!.from).toBeLessThan(wide!.coreFrom);
    expect(wide!.coreTo).toBeLessThan(wide!.to);
    const [all] = difference([row(13, 8, 20)]).bars;
    expect([all!.coreFrom, all!.coreTo]).toEqual([all!.at, all!.at]);
  });

  test("without a margin there is no zone", () => expect(difference([row(3, 2)], null).zone).toBeNull());

  test("rows stand below each other and make the picture taller", () => {
    const { bars, height, axisY } = difference([row(1, 2), row(2, 2), row(3, 2)]);
    expect(bars.map((bar) => bar.y)).toEqual([...bars.map((bar) => bar.y)].sort((a, b) => a - b));
    expect(axisY).toBeGreaterThan(bars.at(-1)!.y);
    expect(height).toBeGreaterThan(difference([row(1, 2)]).height);
  });

  test("everything equal still gives a picture of finite numbers", () => {
    const { bars, none } = difference([row(0, 0)], null);
    expect([none, bars[0]!.from, bars[0]!.to].every(Number.isFinite)).toBe(true);
  });
});

describe("a ratio of spreads", () => {
  const spread = intervalGeometry({
    rows: [{ build: 1, value: 0.8, low: 0.4, high: 1.6, allowance: 3, chosen: true }],
    margin: 1.25,
    isRatio: true,
  });

  test("no difference is 1, in the middle, the zone evenly around it, without an allowance", () => {
    expect(spread.none).toBeCloseTo(50, 9);
    expect(spread.none - spread.zone!.from).toBeCloseTo(spread.zone!.to - spread.none, 9);
    expect(spread.bars[0]!.coreFrom).toBe(spread.bars[0]!.from);
  });

  test("an end without a limit lies at the edge", () => {
    const { bars, ticks } = intervalGeometry({
      rows: [{ build: 1, value: 0.8, low: 0, high: Infinity, allowance: 0, chosen: true }],
      margin: 1.25,
      isRatio: true,
    });
    expect([bars[0]!.from, bars[0]!.to]).toEqual([0, 100]);
    expect(ticks.every(({ at }) => at > 0 && at < 100)).toBe(true);
  });

  test("half and double lie equally far from 1", () => {
    const scale = ratio(0.25, 4, 10);
    expect(scale.at(1) - scale.at(0.5)).toBeCloseTo(scale.at(2) - scale.at(1), 9);
    expect(scale.ticks).toEqual([0.25, 0.5, 1, 2, 4]);
    expect([1.3, 1.6, 2.5, 30].map((end) => ratio(1 / end, end, 10).ticks.at(-1))).toEqual([1.25, 1.5, 2, 10]);
  });
});

test("ticks are round and inside the range", () => {
  const { ticks } = linear(-7, 23, 10, 5);
  expect(ticks).toEqual([-5, 0, 5, 10, 15, 20]);
});

describe("markers", () => {
  test("every look has a shape of its own, closed", () => {
    const paths = Array.from({ length: LOOKS }, (_, build) => markerPath(build));
    expect(new Set(paths).size).toBe(LOOKS);
    expect(paths.every((path) => /^M.*Z$/.test(path) && !path.includes("NaN"))).toBe(true);
  });

  test("after the last look the first comes again", () => expect(look(LOOKS)).toBe(0));
});

test("a label that would be cut at an edge begins or ends there", () => {
  expect(labelPlace(50, 30)).toEqual({ at: 50, anchor: "middle" });
  expect(labelPlace(20, 30)).toEqual({ at: 0, anchor: "start" });
  expect(labelPlace(80, 30)).toEqual({ at: 100, anchor: "end" });
  // As long as the longest of the catalogues: it takes all of a phone's picture.
  expect(labelPlace(37, 46)).toEqual({ at: 0, anchor: "start" });
  expect(labelPlace(60, 46)).toEqual({ at: 100, anchor: "end" });
});

describe("an answer with and without what was left out", () => {
  test("two bars of one club, each below its name, on one scale", () => {
    const every = { ...row(13, 8), name: "Every shot" };
    const without = { ...row(3, 8), name: "Without 2 of 12" };
    const { bars, none } = difference([every, without]);
    expect(bars.map(({ name }) => name!.lines.join(" "))).toEqual(["Every shot", "Without 2 of 12"]);
    for (const { name, y } of bars) expect(name!.y).toBeLessThan(y);
    expect(bars[0]!.y).toBeLessThan(bars[1]!.name!.y);
    expect((bars[0]!.at - none) / (bars[1]!.at - none)).toBeCloseTo(13 / 3, 9);
    // Without names nothing makes room for one.
    expect(difference([row(13, 8)]).bars[0]!.name).toBeNull();
    expect(difference([row(13, 8)]).height).toBeLessThan(difference([every]).height);
  });
});
