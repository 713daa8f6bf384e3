/** Numbers of the log that keep themselves, and those that are asked about first. */
import { describe, expect, test } from "vitest";
import type { Measure } from "../src/core/engine.js";
import { emptyEntry, type Key } from "../src/fair/entry.js";
import { afterKey, oddIn } from "../src/fair/keeping.js";
import { showUnits } from "../src/text/units.js";

const measure = (id: string, unit: string, decimals: number, low: number, high: number): Measure =>
  ({ id, name: id, unit, decimals, plausible: { low, high } }) as unknown as Measure;
const MEASURES = [
  measure("carry", "yd", 0, 0, 400),
  measure("offline", "yd", 0, -150, 150),
  measure("ball_speed", "mph", 1, 15, 235),
  measure("spin_rate", "rpm", 0, 500, 15_000),
];

/** What stands once these keys were pressed, and after how many of them the shot was complete. */
function typed(keys: string, record: readonly string[]) {
  let entry = emptyEntry(record);
  let completeAfter: number | null = null;
  for (const [at, key] of [...keys].entries()) {
    const after = afterKey(entry, key as Key, record, MEASURES);
    entry = after.entry;
    if (after.isComplete) completeAfter ??= at + 1;
  }
  return { entry, completeAfter };
}

describe("a number keeps itself", () => {
  test.each([
    ["241", ["carry"], 3],
    ["95", ["carry"], null],
    ["100", ["carry"], 3],
    ["941", ["carry"], 3],
    ["152", ["ball_speed"], null],
    ["120", ["offline"], null],
    ["2650", ["spin_rate"], 4],
    ["1400", ["spin_rate"], null],
    ["14000", ["spin_rate"], 5],
    ["24", ["carry"], null],
  ] as const)("%s of %j after %s keys", (keys, record, after) => {
    expect(typed(keys, record).completeAfter).toBe(after);
  });

  test("and leads to the next, until all are there", () => {
    const first = typed("241", ["carry", "spin_rate"]);
    expect(first.completeAfter).toBeNull();
    expect(first.entry.active).toBe("spin_rate");
    expect(first.entry.values).toEqual({ carry: 241, spin_rate: null });
    expect(typed("2412650", ["carry", "spin_rate"]).completeAfter).toBe(7);
  });

  test("never without the strike that is tapped", () => {
    expect(typed("241", ["carry", "strike_offset"]).completeAfter).toBeNull();
    expect(typed("241", ["carry", "strike_offset"]).entry.active).toBe("carry");
  });

  test("not while a digit is taken back", () => {
    const { entry } = typed("2412", ["carry", "offline"]);
    expect(entry.active).toBe("offline");
    const back = afterKey({ ...entry, active: "carry", typed: "2410" }, "back", ["carry"], MEASURES);
    expect(back.isComplete).toBe(false);
    expect(back.entry.typed).toBe("241");
  });
});

describe("a value is asked about", () => {
  test("outside what is usual, in the units shown", () => {
    expect(oddIn([{ carry: 401 }], MEASURES)).toEqual({ measure: "carry", value: 401 });
    expect(oddIn([{ carry: 400, offline: -150 }, { carry: null }], MEASURES)).toBeNull();
    showUnits("metric");
    expect(oddIn([{ carry: 380 }], MEASURES)).toEqual({ measure: "carry", value: 380 });
    expect(oddIn([{ carry: 365, ball_speed: 300 }], MEASURES)).toBeNull();
    showUnits(null);
  });
});
