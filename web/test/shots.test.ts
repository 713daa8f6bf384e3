/** Shots one by one and shots as columns are the same shots to the page. */
import { describe, expect, test } from "vitest";
import type { Session, Shot } from "../src/core/engine.js";
import { hasShotsWith } from "../src/pieces/door.js";
import {
  buildOf,
  leftOutCount,
  notesIn,
  numberOf,
  secondOf,
  shotCount,
  shotsFrom,
  withReasons,
} from "../src/state/shots.js";

const SHOTS: Shot[] = [
  { build: 0, round: 1, number: 7, values: { carry: 250.5, offline: null }, left_out: null },
  { build: 1, round: null, number: null, values: { carry: null, offline: -3 }, left_out: "mishit", second: 1 },
  { build: 1, round: 2, number: 9, values: { carry: 261, offline: 4 }, left_out: null, note: "wind" },
];
const COMMON = { builds: [{ name: "Own" }, { name: "B" }], measures: ["carry", "offline"], custom: [], summaries: [] };
const rows: Session = { ...COMMON, order: "unknown", shots: SHOTS };
const columns: Session = {
  ...COMMON,
  order: "unknown",
  shots: [],
  columns: {
    build: Float64Array.of(0, 1, 1),
    round: Float64Array.of(1, Number.NaN, 2),
    number: Float64Array.of(7, Number.NaN, 9),
    second: Float64Array.of(Number.NaN, 1, Number.NaN),
    values: { carry: Float64Array.of(250.5, Number.NaN, 261), offline: Float64Array.of(Number.NaN, -3, 4) },
    left_out: [[1, "mishit"]],
    notes: [[2, "wind"]],
  },
};

describe.each([
  ["one by one", rows],
  ["as columns", columns],
])("%s", (_, session) => {
  test("every shot is what it is", () => {
    expect(shotCount(session)).toBe(3);
    expect(shotsFrom(session, 0, 10)).toEqual(SHOTS);
    expect(shotsFrom(session, 1, 2)).toEqual([SHOTS[1]]);
    expect([leftOutCount(session), notesIn(session)]).toEqual([1, ["wind"]]);
    expect(hasShotsWith(session, ["carry", "offline"])).toBe(true);
    expect(hasShotsWith(session, ["carry", "spin_rate"])).toBe(false);
    expect([0, 1, 2].map((at) => buildOf(session, at))).toEqual([0, 1, 1]);
    expect([0, 1, 2].map((at) => numberOf(session, at))).toEqual([7, null, 9]);
    expect([0, 1, 2].map((at) => secondOf(session, at))).toEqual([undefined, 1, undefined]);
  });

  test("what was said by hand goes before what stands in the text", () => {
    const said = withReasons(session, { 0: "club", 1: null });
    expect(shotsFrom(said, 0, 3).map(({ left_out }) => left_out)).toEqual(["club", null, null]);
    expect(shotsFrom(session, 0, 3).map(({ left_out }) => left_out)).toEqual([null, "mishit", null]);
  });
});
