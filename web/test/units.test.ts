/** Meters and kilometers an hour at the edge: what is shown, what is typed, and that nothing inside changes. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { intervalGeometry } from "../src/chart/interval.js";
import { roundIn } from "../src/chart/scale.js";
import type { ColumnReading, Hints } from "../src/core/engine.js";
import { readIn, unitsOf } from "../src/core/read-in-units.js";
import { STANDARD_AIR_CARRY } from "../src/core/standard-air.js";
import { emptyGrid, headingOf, written } from "../src/entry/grid.js";
import { inCanonicalUnits, inUnitsShown } from "../src/fair/log.js";
import { marginScale } from "../src/format/margin.js";
import { amountOf, chosenOf, gapOf, measureView, spelledOut } from "../src/format/values.js";
import { wholeAim } from "../src/landing/geometry.js";
import { manner, shownIn, showUnits, unitsIn } from "../src/text/units.js";
import { MEASURES, readResult, session } from "./fake-engine.js";
import "./english.js";

const view = (id: string) =>
  measureView(id, MEASURES, {
    custom: [
      { id: "tee", name: "Tee", unit: "mm" },
      { id: STANDARD_AIR_CARRY, name: "Carry in standard air", unit: "yd" },
      { id: "roll", name: "Roll", unit: "yd" },
    ],
  });

test("the address says it; what is not understood counts as not said", () => {
  expect(unitsIn("?lang=es&units=metric")).toBe("metric");
  expect(unitsIn("?units=imperial")).toBe("imperial");
  for (const query of ["", "?units=", "?units=furlong", "?units=Metric"]) expect(unitsIn(query)).toBeNull();
});

test("without a word of it everything stays in yards and miles an hour", () => {
  expect(shownIn("yd")).toEqual({ unit: "yd", scale: 1 });
  expect(amountOf(250.4, view("carry"))).toBe("250\u00a0yd");
  expect(chosenOf(4.572, view("carry"))).toBe(4.572);
  expect(headingOf("carry", emptyGrid([]), MEASURES).unit).toBe("yd");
  expect(manner("en").split(" ")).toEqual(["en", ""]);
});

describe("in meters", () => {
  beforeEach(() => showUnits("metric"));
  afterEach(() => showUnits(null));

  test("values, gaps and chosen sizes are converted, other units are not", () => {
    expect(amountOf(250, view("carry"))).toBe("229\u00a0m");
    expect(gapOf(10, view("carry"), 1)).toBe("+9.1\u00a0m");
    expect(amountOf(100, view("ball_speed"))).toBe("160.9\u00a0km/h");
    expect(amountOf(2500, view("spin_rate"))).toBe("2,500\u00a0rpm");
    expect(amountOf(1.4, view("smash"))).toBe("1.40");
    expect(chosenOf(5, view("carry"))).toBe(4.6);
    expect(chosenOf(5 / 0.9144, view("carry"))).toBe(5);
    expect(spelledOut(32.2, "m")).toBe("32 meters");
    expect(manner("es")).toBe("es metric");
  });

  test("a column of the golfer's own stays in its own unit; carry in standard air is a carry", () => {
    expect(view("tee")).toMatchObject({ unit: "mm", scale: 1 });
    expect(view("roll")).toMatchObject({ unit: "yd", scale: 1 });
    expect(view(STANDARD_AIR_CARRY)).toMatchObject({ unit: "m", scale: 0.9144 });
  });

  test("a margin is typed in meters and handed to the core in yards", () => {
    const scale = marginScale({ goal: "higher" }, { ...view("carry"), margin: 5 / 0.9144 });
    expect(scale.unit).toBe("m");
    expect(scale.step).toBe(1);
    expect(scale.shown(5 / 0.9144)).toBe(5);
    expect(scale.taken(6) * 0.9144).toBeCloseTo(6, 12);
    expect(marginScale({ goal: "tighter" }, view("carry")).shown(1.25)).toBe(25);
  });

  test("marks of a picture are round in meters and stand where they belong", () => {
    const rows = [{ build: 1, value: 8, low: 2, high: 14, allowance: 0, chosen: true }];
    const { ticks } = intervalGeometry({ rows, margin: 5, isRatio: false, scale: 0.9144 });
    const shown = ticks.map(({ value }) => value * 0.9144);
    expect(shown.length).toBeGreaterThan(2);
    for (const value of shown) expect(value).toBeCloseTo(Math.round(value), 9);
    const plain = intervalGeometry({ rows, margin: 5, isRatio: false });
    expect(plain.bars[0]!.at).toBe(intervalGeometry({ rows, margin: 5, isRatio: false, scale: 0.9144 }).bars[0]!.at);
    expect(roundIn(1, 0, 10, 5)).toEqual([0, 2, 4, 6, 8, 10]);
  });

  test("an aim is whole in meters and never farther than can be asked", () => {
    expect(wholeAim(10, 60, 0.9144) * 0.9144).toBeCloseTo(9, 12);
    expect(Math.abs(wholeAim(-999, 60, 0.9144))).toBeLessThanOrEqual(60);
    expect(wholeAim(-0.2, 60, 0.9144)).toBe(0);
    expect(wholeAim(-0.2, 60)).toBe(0);
  });

  test("a logged shot is kept in yards and comes back as it was typed", () => {
    const typed = { carry: 231.5, offline: -12, ball_speed: 240, spin_rate: 2500, tee: null };
    const kept = inCanonicalUnits(typed, MEASURES);
    expect(kept["carry"]).toBeCloseTo(253.171, 3);
    expect(kept["spin_rate"]).toBe(2500);
    expect(inUnitsShown(kept, MEASURES)).toEqual(typed);
  });

  test("what is typed into the grid says that it is in meters", () => {
    const grid = { ...emptyGrid(["A"]), clubs: [{ name: "A", rows: [["230", "4"]] }] };
    expect(written(grid, MEASURES).text).toContain("Carry (m)\tOffline (m)");
  });
});

describe("columns that say no unit", () => {
  const column = (index: number, unit: string, unit_source: ColumnReading["unit_source"], units: string[]) =>
    ({ index, unit, unit_source, units }) as ColumnReading;
  const columns = [
    column(0, "yd", "assumed", ["yd", "m", "ft"]),
    column(1, "yd", "heading", ["yd", "m"]),
    column(2, "rpm", "assumed", ["rpm"]),
    column(3, "mph", "assumed", ["mph", "km/h"]),
  ];
  const reading = async (hints: Hints) => {
    const asked: Hints[] = [];
    const result = readResult(session(2));
    const engine = {
      read: async (_text: string, given: Hints) => {
        asked.push(given);
        return { ...result, reading: { ...result.reading, columns } };
      },
    };
    await readIn(engine, "shots", hints);
    return asked;
  };
  afterEach(() => showUnits(null));

  test("are in the system that the address names", () => {
    expect(unitsOf(columns, "metric")).toEqual({ 0: "m", 3: "km/h" });
    expect(unitsOf(columns, "imperial")).toEqual({});
  });

  test("are read once when nothing was named, and a second time in the units that were", async () => {
    expect(await reading({})).toEqual([{}]);
    showUnits("imperial");
    expect(await reading({})).toEqual([{}]);
    showUnits("metric");
    expect(await reading({ build: "A" })).toEqual([{ build: "A" }, { build: "A", units: { 0: "m", 3: "km/h" } }]);
  });

  test("the golfer's own word goes before the address", async () => {
    showUnits("metric");
    expect((await reading({ units: { 0: "ft" } })).at(-1)).toEqual({ units: { 0: "ft", 3: "km/h" } });
  });
});

describe("in meters with miles an hour", () => {
  beforeEach(() => showUnits("mixed"));
  afterEach(() => showUnits(null));

  test("lengths are converted, speeds stay", () => {
    expect(unitsIn("?units=mixed")).toBe("mixed");
    expect(amountOf(250, view("carry"))).toBe("229\u00a0m");
    expect(amountOf(100, view("ball_speed"))).toBe("100.0\u00a0mph");
    expect(manner("es-ES")).toBe("es-ES mixed");
  });
});
