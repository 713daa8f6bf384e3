/** Geometry of every shot in the order hit. */
import { describe, expect, test } from "vitest";
import { type OrderedShot, orderGeometry } from "../src/trust/order.js";

const shot = (build: number, value: number | null, round: number | null = null, leftOut = false): OrderedShot => ({
  build,
  value,
  round,
  leftOut,
});
const blocks = (builds: number, n: number): OrderedShot[] =>
  Array.from({ length: builds * n }, (_, index) => shot(Math.floor(index / n), 200 + ((index * 37) % 71), null));

describe("shots in order", () => {
  test("every shot lies inside, from left to right, for 4 × 60 and for 2 × 5", () => {
    for (const shots of [blocks(4, 60), blocks(2, 5)]) {
      const { points, top, bottom } = orderGeometry(shots)!;
      expect(points).toHaveLength(shots.length);
      expect(points.every(({ at, y }) => at > 12 && at < 100 && y > top && y < bottom)).toBe(true);
      expect(points.every(({ at }, index) => index === 0 || at > points[index - 1]!.at)).toBe(true);
    }
  });

  test("higher values lie higher", () => {
    const [low, high] = orderGeometry([shot(0, 200), shot(1, 240)])!.points;
    expect(high!.y).toBeLessThan(low!.y);
  });

  test("a shot without a value leaves its place empty", () => {
    const { points } = orderGeometry([shot(0, 200), shot(1, null), shot(0, 240)])!;
    expect(points.map(({ index }) => index)).toEqual([0, 2]);
    expect(points[1]!.at - points[0]!.at).toBeCloseTo((2 * 85) / 3, 9);
  });

  test("the average counts the shots left out, as the answer does", () => {
    const { averages } = orderGeometry([shot(0, 200), shot(0, 230, null, true), shot(1, 215)])!;
    expect(averages.map(({ build, value }) => [build, value])).toEqual([
      [0, 215],
      [1, 215],
    ]);
  });

  test("a note rings a shot and moves nothing", () => {
    const plain = [shot(0, 200), shot(1, 215), shot(0, 230)];
    const noted = plain.map((one, index) => ({ ...one, noted: index === 2 }));
    const [before, after] = [orderGeometry(plain)!, orderGeometry(noted)!];
    expect(after.points.map((point) => point.noted)).toEqual([false, false, true]);
    expect(after.averages).toEqual(before.averages);
    expect(after.points.map(({ at, y }) => [at, y])).toEqual(before.points.map(({ at, y }) => [at, y]));
  });

  test("rounds are bands side by side, every second one shaded", () => {
    const { bands } = orderGeometry([shot(0, 1, 1), shot(1, 2, 1), shot(0, 3, 2), shot(1, 4, 2)])!;
    expect(bands.map(({ round, shaded }) => [round, shaded])).toEqual([
      [1, true],
      [2, false],
    ]);
    expect(bands[0]!.to).toBeCloseTo(bands[1]!.from, 9);
  });

  test("a drift is one slope for its clubs, through the middle of each, and none without one", () => {
    const shots = [shot(0, 200), shot(0, 210), shot(1, 220), shot(1, 200), shot(2, 190)];
    expect(orderGeometry(shots)!.drifts).toEqual([]);
    const { drifts, averages, points } = orderGeometry(shots, { change: 12, builds: [0, 1] })!;
    expect(drifts.map(({ build }) => build)).toEqual([0, 1]);
    const rise = ({ yFrom, yTo }: { yFrom: number; yTo: number }) => yFrom - yTo;
    expect(rise(drifts[0]!)).toBeCloseTo(rise(drifts[1]!), 9);
    // 12 from the first of their shots to the last, three places on: 4 from one place to the next.
    expect(rise(drifts[0]!)).toBeCloseTo(0.4 * (points[0]!.y - points[1]!.y), 9);
    expect((drifts[1]!.yFrom + drifts[1]!.yTo) / 2).toBeCloseTo(averages[1]!.yFrom, 9);
    expect(orderGeometry([shot(0, 200), shot(1, null)], { change: 5, builds: [0, 1] })!.drifts).toEqual([]);
  });

  test("many shots get a field for each club, on one scale; few share one", () => {
    expect(orderGeometry(blocks(2, 5))!.fields.map(({ build }) => build)).toEqual([null]);
    const { fields, points, averages } = orderGeometry(blocks(4, 60))!;
    expect(fields.map(({ build }) => build)).toEqual([0, 1, 2, 3]);
    const inside = points.every(({ build, y }) => y > fields[build]!.top && y < fields[build]!.bottom);
    expect(inside).toBe(true);
    const [first, second] = [0, 1].map((own) => points.find(({ build, value }) => build === own && value === 237)!.y);
    expect(second! - first!).toBeCloseTo(fields[1]!.top - fields[0]!.top, 9);
    expect(averages.every(({ build, yFrom }) => yFrom > fields[build]!.top && yFrom < fields[build]!.bottom)).toBe(
      true,
    );
  });

  test("equal values lie in the middle, and nothing is nothing", () => {
    const { points, top, bottom } = orderGeometry([shot(0, 5), shot(1, 5)])!;
    expect(points.map(({ y }) => y)).toEqual([(top + bottom) / 2, (top + bottom) / 2]);
    expect(orderGeometry([shot(0, null)])).toBeNull();
  });
});
