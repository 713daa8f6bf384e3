/** What is typed becomes a text for the reader, and what the reader says comes back to the cell it is about. */
import { describe, expect, test } from "vitest";
import type { ReadResult } from "../src/core/engine.js";
import { emptyAverages, faults, withClubChanged, withValue, writtenAverages } from "../src/entry/averages.js";
import {
  emptyGrid,
  type Grid,
  headingOf,
  isSeveralCells,
  mistakes,
  nextCell,
  shotsOf,
  withCell,
  withColumn,
  withName,
  withoutColumn,
  withPasted,
  written,
} from "../src/entry/grid.js";
import { MEASURES, readResult, session } from "./fake-engine.js";

const at = (club: number, row: number, column: number) => ({ club, row, column });

/** Two clubs, a shot each, with an empty row between two shots of the first. */
function typed(): Grid {
  let grid = emptyGrid([]);
  grid = withCell(grid, at(0, 0, 0), "251");
  grid = withCell(grid, at(0, 2, 1), "12 L");
  return withCell(grid, at(1, 0, 0), "1,5");
}

describe("the grid as a text", () => {
  test("a line for each shot, told to the reader column by column; nothing is understood on the way", () => {
    const { text, hints, rows } = written(typed(), MEASURES);
    expect(text).toBe("Club\tCarry (yd)\tOffline (yd)\nMine\t251\t\nMine\t\t12 L\nNew\t1,5\t\n");
    expect(hints).toEqual({
      delimiter: "tab",
      layout: "rows",
      columns: { 0: "build", 1: { measure: "carry" }, 2: { measure: "offline" } },
      units: {},
      lines: { 1: "headings", 2: "shot", 3: "shot", 4: "shot" },
      order: "unknown",
    });
    expect(rows).toEqual([
      { club: 0, row: 0 },
      { club: 0, row: 2 },
      { club: 1, row: 0 },
    ]);
  });

  test("rounds tell the order, and a unit that was chosen is said", () => {
    const grid = { ...withColumn(typed(), "round"), units: { carry: "m" } };
    const { text, hints } = written(grid, MEASURES);
    expect(text.split("\n")[0]).toBe("Club\tCarry (m)\tOffline (yd)\tLap");
    expect(hints.order).toBeUndefined();
    expect(hints.units).toEqual({ 1: "m" });
    expect(hints.columns?.[3]).toBe("round");
  });

  test("names and cells cannot break their line", () => {
    const grid = withName(withCell(typed(), at(0, 0, 0), 'a\tb\n"c"'), 0, '7" \t club');
    expect(written(grid, MEASURES).text.split("\n")[1]).toBe('"7""   club"\t"a b ""c"""\t');
    expect(written(withName(typed(), 1, "  "), MEASURES).text).toContain("\nClub 2\t1,5");
  });
});

describe("the grid itself", () => {
  test("rows with nothing in them are no shots", () => {
    expect(typed().clubs.map(shotsOf)).toEqual([2, 1]);
    expect(shotsOf(withCell(typed(), at(1, 0, 0), " ").clubs[1]!)).toBe(0);
  });

  test("pasted cells fill what they reach, and what finds no place is counted", () => {
    const { grid, left } = withPasted(typed(), at(0, 1, 1), "1\t2\t3\r\n4 \t5\r\n");
    expect(grid.clubs[0]?.rows).toEqual([
      ["251", ""],
      ["", "1"],
      ["", "4"],
    ]);
    expect(left).toBe(2);
    expect(["1\t2", "1\n2"].map(isSeveralCells)).toEqual([true, true]);
    expect(isSeveralCells("251\n")).toBe(false);
  });

  test("a column leaves with its cells, the others keep theirs", () => {
    const grid = withoutColumn(typed(), "carry");
    expect(grid.columns).toEqual(["offline"]);
    expect(grid.clubs[0]?.rows).toEqual([[""], [], ["12 L"]]);
    expect(withoutColumn(typed(), "spin_rate")).toEqual(typed());
  });

  test("the next cell is beside or below", () => {
    expect(nextCell(at(1, 4, 0), typed())).toEqual(at(1, 4, 1));
    expect(nextCell(at(1, 4, 1), typed())).toEqual(at(1, 5, 0));
  });

  test("names and units come from the trade's list", () => {
    expect(headingOf("carry", typed(), MEASURES)).toEqual({ name: "Carry", unit: "yd" });
    expect(headingOf("round", typed(), MEASURES)).toEqual({ name: "Lap", unit: "" });
  });
});

test("what the core says of a line and a column comes back to its cell", () => {
  const problem = {
    kind: "not_a_number",
    place: { line: 3, column: "Offline (yd)" },
    found: "x",
    message: "m",
    remedy: "",
    suggestion: "12",
  };
  const result = {
    ...readResult(session(2)),
    problems: [
      problem,
      { ...problem, place: { line: 4, column: null }, suggestion: null },
      { ...problem, place: { line: 0, column: null } },
    ],
    notices: [
      { kind: "implausible", place: { line: 2, column: "Carry" }, message: "far" },
      { kind: "unit_assumed", place: { line: 2, column: null }, message: "" },
    ],
  } as unknown as ReadResult;
  expect(mistakes(result, written(typed(), MEASURES), typed(), MEASURES)).toEqual([
    { ...at(0, 2, 1), message: "m", suggestion: "12" },
    { ...at(1, 0, -1), message: "m", suggestion: null },
    { ...at(0, 0, 0), message: "far", suggestion: null },
  ]);
});

describe("averages as a text", () => {
  const form = withValue(
    withClubChanged(withValue(emptyAverages(["A", "B"]), 1, "carry", { average: "251,5", deviation: "8" }), 1, {
      shots: "12",
      of: "good",
    }),
    0,
    "carry",
    { deviation: "7" },
  );

  test("clubs with an average, which shots they stand for, and what each column is", () => {
    const { text, hints, clubs } = writtenAverages(form, MEASURES);
    expect(text).toBe("Club\tShots\tOf which\tCarry average (yd)\tCarry SD (yd)\nB\t12\tgood ones\t251,5\t8\n");
    expect(clubs).toEqual([1]);
    expect(hints).toMatchObject({
      layout: "averages",
      columns: { 1: "count", 2: "ignored", 3: { measure: "carry" }, 4: { deviation: "carry" } },
    });
  });

  test("a fault stands at its field; a number of shots that is none is one too", () => {
    const of = session(2);
    of.summaries = [{ build: 0, n: null, of: "all", values: {}, line: 2 }];
    const result = {
      ...readResult(of),
      problems: [{ place: { line: 2, column: "Carry SD (yd)" }, message: "m" }],
    } as unknown as ReadResult;
    expect(faults(result, writtenAverages(form, MEASURES), form, MEASURES)).toEqual([
      { club: 1, column: "carry", part: "deviation", message: "m" },
      { club: 1, column: null, part: "average", message: "That is not a number of shots." },
    ]);
  });
});
