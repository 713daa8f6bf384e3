/** Values into text, and the choices a reading offers. */
import { describe, expect, test } from "vitest";
import type { ColumnReading } from "../src/core/engine.js";
import {
  buildCounts,
  distinctColumns,
  endOf,
  goalsFor,
  levelOf,
  measureView,
  moreOrLess,
  moreOrLessInWords,
  number,
  probability,
  rolesFor,
  saysTheSame,
  share,
  signed,
  typedNumber,
  withUnit,
} from "../src/format/values.js";
import { say } from "../src/text/say.js";
import { MEASURES, session } from "./fake-engine.js";

describe("numbers", () => {
  test.each([
    [-3.12345, 1, "−3.1"],
    [-0.04, 1, "0.0"],
    [12345.6, 0, "12,346"],
  ])("%f with %i decimals is %s", (value, decimals, text) => expect(number(value, decimals)).toBe(text));

  test("a difference carries its sign, save when it rounds to nothing", () => {
    expect([signed(3.2, 0), signed(-3.2, 0), signed(0.4, 0)]).toEqual(["+3", "−3", "0"]);
  });

  test("units stand as they are written", () => {
    expect([withUnit("5", "yd"), withUnit("1.2", "deg"), withUnit("1.48", "")]).toEqual(["5\u00a0yd", "1.2°", "1.48"]);
  });

  test("a count knows one from many", () => {
    expect([1, 12000].map((count) => say("n-shots", { count }))).toEqual(["1\u00a0shot", "12,000\u00a0shots"]);
  });

  test("a probability is never zero", () => expect(probability(0)).toBe("< 0.001"));
});

describe("intervals", () => {
  test("a level below all is not printed as all", () => {
    const rows: [number, string][] = [
      [0.95, "95"],
      [0.9, "90"],
      [0.983333, "98.3"],
      [0.9996, "99.96"],
      [0.99999992, "99.99999"],
    ];
    for (const [level, text] of rows) expect(levelOf(level)).toBe(`${text}\u00a0%`);
  });

  test("an end is not printed on the margin or on no difference, or across them", () => {
    const yards = { unit: "yd", scale: 1, decimals: 0 };
    const rows: [number, string][] = [
      [4.73, "+4.7"],
      [5.47, "+5.5"],
      [-4.96, "\u22124.96"],
      [0.3, "+0.3"],
      [5, "+5"],
      [30.2, "+30"],
    ];
    for (const [end, text] of rows) expect(endOf(end, 5, yards)).toBe(`${text}\u00a0yd`);
    expect(endOf(4.73, null, yards)).toBe("+5\u00a0yd");
  });

  test("a chance is never all or none", () => {
    expect(share(0.9999)).toBe("above 99\u00a0%");
    expect(share(0.001)).toBe("below 1\u00a0%");
  });
});

describe("what the golfer types", () => {
  test.each([
    ["5", 5],
    ["2,5", 2.5],
    [" 1.5 ", 1.5],
    ["−3", -3],
    ["", null],
    ["five", null],
    ["1/0", null],
  ])("%j is %j", (text, value) => expect(typedNumber(text)).toBe(value));
});

describe("columns", () => {
  const column = {
    index: 1,
    heading: "Carry (yd)",
    role: { measure: "carry" },
    unit: "yd",
    sure: true,
    alternatives: ["ignored"],
    units: ["yd"],
  } as never;

  test("every role is offered once, what it is now first", () => {
    const keys = rolesFor(column, MEASURES, ["carry"]).map((role) => JSON.stringify(role));
    expect(keys[0]).toBe('{"measure":"carry"}');
    expect(keys[1]).toBe('"ignored"');
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toHaveLength(MEASURES.length + 9);
  });

  test("a column read in several blocks is shown once, one that belongs to another club again", () => {
    const of = (index: number, build: string | null) => ({ ...(column as object), index, build }) as ColumnReading;
    expect(distinctColumns([of(0, null), of(1, null), of(0, null), of(1, "B")])).toHaveLength(3);
  });

  test.each([
    ["Carry (yd)", "Carry", true],
    ["ball_speed [mph]", "Ball speed", true],
    ["Build", "Club", true],
    ["Shot", "Shot number", true],
    ["CS", "Club speed", false],
    ["Offline", "Carry", false],
  ])("heading %j and name %j say the same: %j", (heading, name, same) => expect(saysTheSame(heading, name)).toBe(same));
});

test("a luck is never nothing and never certain", () => {
  expect([share(0), share(0.37), share(1)]).toEqual(["below 1\u00a0%", "37\u00a0%", "above 99\u00a0%"]);
});

test("the measure's own goal is offered first", () => {
  expect(goalsFor("offline", MEASURES)[0]).toBe("nearer_zero");
  expect(goalsFor("spin_rate", MEASURES)[0]).toBe("different");
  expect(goalsFor("own column", MEASURES)[0]).toBe("different");
});

test("a column of the golfer's own has a name and no usual margin", () => {
  const own = { ...session(2), custom: [{ id: "mood", name: "Mood", unit: "pts" }] };
  expect(measureView("mood", MEASURES, own)).toMatchObject({ name: "Mood", unit: "pts", margin: null });
});

test("averages stand in for shots only where there are none", () => {
  const some = { ...session(2, 2), builds: [{ name: "a" }, { name: "b" }, { name: "c" }] };
  some.summaries = [{ build: 2, n: 9, of: "all", values: {}, line: null }];
  expect(buildCounts(some).map((count) => [count.shots, count.averagesOnly, count.averagesOf])).toEqual([
    [2, false, null],
    [2, false, null],
    [0, true, 9],
  ]);
});

test("a ratio of scatters is told in percent more or less", () => {
  expect([0.8, 1.25, 1.003, 2.44].map(moreOrLess)).toEqual([
    "\u221220\u00a0%",
    "+25\u00a0%",
    "0\u00a0%",
    "+144\u00a0%",
  ]);
  expect([0.8, 1.25, 1, 3].map(moreOrLessInWords)).toEqual([
    "20\u00a0% less",
    "25\u00a0% more",
    "the same",
    "200\u00a0% more",
  ]);
  expect([0, Infinity, NaN].map(moreOrLess)).toEqual(["no limit", "no limit", "no limit"]);
});
