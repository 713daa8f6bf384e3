/** Pictures at twice the reader's text: what stands in writing has twice the room, and nothing is cut or laid over. */
import { expect, test } from "vitest";
import { intervalGeometry, type Row } from "../src/chart/interval.js";
import { linesOf } from "../src/chart/lines.js";
import { type PartRow, partsGeometry } from "../src/chart/parts.js";
import { landingGeometry } from "../src/landing/geometry.js";
import { luckGeometry } from "../src/luck/geometry.js";
import { mapGeometry } from "../src/potential/carry-map.js";
import { orderGeometry } from "../src/trust/order.js";

/** Size of a letter against the narrowest picture, percent, and height of a line, pixels. */
const [LETTER, LINE] = [2.1, 17];

test("lines break between words, and no word is lost", () => {
  const text = "too small to matter: 25 % less to 25 % more";
  for (const letters of [5, 12, 23, 60]) {
    const lines = linesOf(text, letters);
    expect(lines.join(" ")).toBe(text);
    for (const line of lines) expect(line.length <= letters || !line.includes(" ")).toBe(true);
  }
  expect(linesOf(text, 60)).toEqual([text]);
});

const row = (name?: string): Row => ({
  build: 1,
  value: 9,
  low: -4,
  high: 22,
  allowance: 0,
  chosen: true,
  ...(name ? { name } : {}),
});

test("the answer's bars lie apart by twice as much, and label and names break into lines that fit", () => {
  const input = { margin: 5, isRatio: false, letters: 6, label: "too small to matter: below 5 yd, either way" };
  const rows = [row("Every shot (95 % interval)"), row("Without 2 of 24 (95 % interval)")];
  const [one, two] = [1, 2].map((text) => intervalGeometry({ ...input, rows, text }));
  for (const [text, { bars, label, zoneY, height, axisY }] of [
    [1, one!],
    [2, two!],
  ] as const) {
    for (const line of [...label.lines, ...bars.flatMap(({ name }) => name!.lines)])
      expect(line.length * LETTER * text).toBeLessThanOrEqual(100);
    // The label ends above the zone, a name above its own bar's figure, and that above the bar.
    expect(zoneY).toBeGreaterThanOrEqual(LINE * label.lines.length * text);
    for (const { name, y } of bars) {
      const nameEnds = name!.y + LINE * (name!.lines.length - 1) * text;
      const figureTop = y - 11 - 7 * text - 13 * text;
      expect(figureTop).toBeGreaterThanOrEqual(nameEnds);
    }
    expect(bars[1]!.name!.y - 13 * text).toBeGreaterThan(bars[0]!.y + 11);
    expect(height - axisY).toBeGreaterThanOrEqual(21 * text);
    for (const { from, to } of bars) expect(to - from).toBeGreaterThan(10);
  }
  expect(two!.label.lines.length).toBeGreaterThan(one!.label.lines.length);
});

test("parts of a gap", () => {
  const part = (name: string): PartRow => ({
    key: name,
    name,
    value: 4,
    low: 1,
    high: 7,
    belongs: "both",
    inner: false,
  });
  const rows = [part("Struck higher or lower on the face"), part("Loft and path")];
  const [one, two] = [1, 2].map((text) => partsGeometry(rows, 1, text));
  expect(one!.bars[0]!.lines).toHaveLength(1);
  expect(two!.bars[0]!.lines.length).toBeGreaterThan(1);
  for (const [text, { bars, height, axisY }] of [
    [1, one!],
    [2, two!],
  ] as const) {
    for (const { nameY, lines, y } of bars)
      expect(y - 8).toBeGreaterThanOrEqual(nameY + 18 * (lines.length - 1) * text);
    expect(bars[1]!.nameY - 13 * text).toBeGreaterThanOrEqual(bars[0]!.y + 8);
    expect(height - axisY).toBeGreaterThanOrEqual(18 * text);
  }
});

test("figures beside a field have room to its left", () => {
  const shots = Array.from({ length: 12 }, (_, at) => ({ build: at % 2, round: 1, value: 240 + at, leftOut: false }));
  const lefts = [1, 2].map((text) => orderGeometry(shots, null, 1, text)!.left);
  expect(lefts[1]).toBe(2 * lefts[0]!);
  const ground = {
    shots: [{ shot: 0, build: 0, offline: -3, carry: 250, leftOut: false }],
    builds: [],
    fairway: 30,
    aim: 0,
    farthestAim: 60,
  };
  const [one, two] = [1, 2].map((text) => landingGeometry({ ...ground, text }));
  expect(two!.left).toBe(2 * one!.left);
  expect(two!.sides.length).toBeLessThan(one!.sides.length);
  expect(two!.height - two!.bottom).toBe(2 * (one!.height - one!.bottom));
  const field = { launches: [8, 12, 16], spins: [1500, 2500, 3500], carries: [1, 2, 3, 4, 5, 6, 7, 8, 9], lines: [4] };
  const own = { build: 0, launch: 12, spin: 2500 };
  const band = { launchLow: 11, launchHigh: 13, spinLow: 2000, spinHigh: 3000 };
  const maps = [1, 2].map((text) => mapGeometry({ ...field, shots: [], own, band, text }));
  expect(maps[1]!.field.x).toBe(2 * maps[0]!.field.x);
  expect(maps[1]!.field.width).toBeGreaterThan(200);
  expect(maps[1]!.launches.length).toBeLessThan(maps[0]!.launches.length);
});

test("the hill's labels stand clear of its bars and of each other", () => {
  const bins = [-2, -1, 0, 1].map((low) => ({ low: 2 * low, high: 2 * low + 2, count: 5 }));
  const input = {
    bins,
    margin: 5,
    toward: "higher" as const,
    gap: 3,
    best: { candidate: 9, baseline: -6 },
    deals: [1],
  };
  for (const text of [1, 2]) {
    const { hillTop, axisY, dealsY, reaches, height } = luckGeometry({ ...input, dealt: 1, text });
    expect(hillTop - 12).toBeGreaterThanOrEqual(13 * text);
    // Ticks, the deal's figure, the deal, and each line's figure, from the top down.
    expect(dealsY - 7 - 7 * text - 13 * text).toBeGreaterThanOrEqual(axisY + 5 + 16 * text);
    expect(reaches[0]!.y - 14 - 13 * text).toBeGreaterThanOrEqual(dealsY);
    expect(reaches[1]!.y - 14 - 13 * text).toBeGreaterThanOrEqual(reaches[0]!.y);
    expect(height).toBeGreaterThan(reaches[1]!.y);
  }
});
