/** Bars of a gap, and the carry map: everything inside, in order, where its number says. */
import { expect, test } from "vitest";
import { type PartRow, partsGeometry } from "../src/chart/parts.js";
import { type MapInput, mapGeometry } from "../src/potential/carry-map.js";

const row = (value: number, reach: number, belongs: PartRow["belongs"] = "both"): PartRow => ({
  key: String(value),
  name: "Part",
  value,
  low: value - reach,
  high: value + reach,
  belongs,
  inner: false,
});

test("bars start at no difference and end at their value", () => {
  const { none, bars } = partsGeometry([row(8, 3), row(-4, 2), row(4, 0, "gap")]);
  expect(bars.map(({ from, to }) => [from === none, to === none])).toEqual([
    [true, false],
    [false, true],
    [true, false],
  ]);
  expect((bars[0]!.to - none) / 8).toBeCloseTo((none - bars[1]!.from) / 4, 9);
  expect(bars[0]!.anchor).toBe("start");
  expect(bars[1]!.label).toBeLessThan(bars[1]!.low);
});

test("every end and every figure has room, and an endless interval breaks nothing", () => {
  const { bars } = partsGeometry([row(12, 30), { ...row(1, 0), low: -Infinity, high: Infinity }, row(0, 0)]);
  for (const { from, to, label } of bars.filter(({ row: { high } }) => Number.isFinite(high))) {
    for (const at of [from, to, label]) {
      expect(at).toBeGreaterThan(3);
      expect(at).toBeLessThan(97);
    }
  }
});

/** A hill with its top at 16 deg and 2,500 rpm. */
function hill(): MapInput {
  const launches = Array.from({ length: 33 }, (_, i) => 6 + (12 * i) / 32);
  const spins = Array.from({ length: 25 }, (_, i) => 1500 + 125 * i);
  return {
    launches,
    spins,
    carries: spins.flatMap((spin) =>
      launches.map((launch) => 260 - (launch - 16) ** 2 / 2 - ((spin - 2500) / 250) ** 2),
    ),
    lines: [220, 230, 240, 250],
    shots: [
      { build: 0, launch: 12, spin: 3000 },
      { build: 1, launch: 99, spin: -5 },
    ],
    own: { build: 0, launch: 13, spin: 2800 },
    band: { launchLow: 14, launchHigh: 18, spinLow: 2100, spinHigh: 2900 },
  };
}

test("an area is smaller the more it carries, and lies where the hill is", () => {
  const { areas, field } = mapGeometry(hill());
  expect(areas.map(({ value }) => value)).toEqual([220, 230, 240, 250]);
  const box = (path: string) => {
    const numbers = path.match(/-?\d+(\.\d+)?/g)!.map(Number);
    const xs = numbers.filter((_, index) => index % 2 === 0);
    return { from: Math.min(...xs), to: Math.max(...xs) };
  };
  const widths = areas.map(({ path }) => box(path).to - box(path).from);
  expect([...widths].sort((a, b) => b - a)).toEqual(widths);
  const top = box(areas[3]!.path);
  // √20 deg to each side of 16, cut off at 18.
  expect(top.from).toBeCloseTo(field.x + ((16 - Math.sqrt(20) - 6) / 12) * field.width, 0);
  expect(top.to).toBeCloseTo(field.x + field.width, 0);
});

test("marks, band and figures stand inside the field, figures apart", () => {
  const { shots, own, band, labels, field } = mapGeometry(hill());
  for (const { x, y } of [...shots, own, ...labels, band, { x: band.x + band.width, y: band.y + band.height }]) {
    expect(x).toBeGreaterThanOrEqual(field.x);
    expect(x).toBeLessThanOrEqual(field.x + field.width);
    expect(y).toBeGreaterThanOrEqual(field.y);
    expect(y).toBeLessThanOrEqual(field.y + field.height);
  }
  for (const [index, one] of labels.entries()) {
    for (const other of labels.slice(index + 1))
      expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(20);
  }
});
