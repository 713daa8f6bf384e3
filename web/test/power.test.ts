/** The picture of what a test will show by its length, and the keys of the log. */
import { describe, expect, test } from "vitest";
import type { Length } from "../src/core/planner.js";
import { emptyEntry, type Key, nextEmpty, pressed, turnedTo } from "../src/fair/entry.js";
import { doubled, powerGeometry } from "../src/fair/power.js";

const row = (rounds: number, margin_found: number | null, is_plan = false): Length => ({
  rounds,
  balls: rounds * 6,
  minutes: rounds * 5,
  margin_found,
  double_found: margin_found,
  same: null,
  is_plan,
});

describe("the lengths of a test", () => {
  test("stand in equal steps, a higher chance higher up", () => {
    const { margin, grid } = powerGeometry([row(5, 0.2), row(10, 0.5, true), row(20, 0.8)]);
    expect(margin.map(({ x }) => x)).toEqual([18, 54.5, 91]);
    expect(margin[0]!.y).toBeGreaterThan(margin[1]!.y);
    expect(grid[2]!.y).toBeCloseTo(margin[2]!.y);
  });

  test("with large text every second length is told, and always the plan's own", () => {
    const rows = [row(4, 0.2), row(5, 0.3), row(6, 0.4, true), row(7, 0.5), row(8, 0.6)];
    expect(powerGeometry(rows).told).toHaveLength(5);
    expect(powerGeometry(rows, 2).told.map(({ row }) => row.rounds)).toEqual([4, 6, 8]);
    expect(powerGeometry(rows, 2).height).toBeGreaterThan(powerGeometry(rows).height);
  });

  test("a chance that nobody knows has no dot, and one length stands in the middle", () => {
    expect(powerGeometry([row(5, null), row(10, 0.5)]).margin).toHaveLength(1);
    expect(powerGeometry([row(5, 0.1)]).margin[0]!.x).toBe(50);
  });
});

test("twice a margin is the sum of two differences, or the product of two ratios", () => {
  expect(doubled({ goal: "higher", margin: 5 })).toBe(10);
  expect(doubled({ goal: "tighter", margin: 1.2 })).toBeCloseTo(1.44, 12);
});

describe("the keys", () => {
  const typed = (...keys: Key[]) => keys.reduce(pressed, emptyEntry(["carry", "offline"]));

  test("write a number digit by digit", () => {
    expect(typed("2", "5", "1").values["carry"]).toBe(251);
    expect(typed("2", ".", "5", ".").typed).toBe("2.5");
    expect(typed(".", "5").typed).toBe("0.5");
    expect(typed("0", "7").typed).toBe("7");
    expect(typed("2", "back").values["carry"]).toBeNull();
    expect(typed(...Array<Key>(20).fill("9")).typed).toHaveLength(9);
  });

  test("turn the side before or after the digits", () => {
    expect(typed("side", "8").values["carry"]).toBe(-8);
    expect(typed("8", "side").values["carry"]).toBe(-8);
    expect(typed("8", "side", "side").values["carry"]).toBe(8);
    expect(typed("side").values["carry"]).toBeNull();
  });

  test("go on to the next number that is open", () => {
    const one = typed("2");
    expect(nextEmpty(one, ["carry", "offline"])).toBe("offline");
    const two = pressed(turnedTo(one, "offline"), "4");
    expect(nextEmpty(two, ["carry", "offline"])).toBeNull();
    expect(turnedTo(two, "carry").typed).toBe("2");
  });
});
