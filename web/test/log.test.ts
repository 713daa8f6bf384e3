/** The log of a test under way, and shots pasted into it. */
import { describe, expect, test } from "vitest";
import {
  asked,
  begun,
  isLog,
  undone,
  warmedUp,
  withLook,
  withMishit,
  withSay,
  withSetEnded,
  withShot,
} from "../src/fair/log.js";
import { pastedRows, sided } from "../src/fair/paste.js";

const plan = { builds: ["Own", "New"], measure: "carry", same_club: false };
const start = begun(plan, ["carry", "offline"]);
const two = withShot(withShot(start, 0, { carry: 250, offline: -3 }, false), 0, { carry: 211, offline: 20 }, true);

describe("the log", () => {
  test("keeps every shot in the order hit, and a mishit is a note", () => {
    expect(two.shots.map(({ turn, note }) => [turn, note])).toEqual([
      [0, null],
      [0, "mishit"],
    ]);
    expect(withMishit(two, false).shots.map(({ note }) => note)).toEqual([null, null]);
    expect(start.shots).toEqual([]);
  });

  test("gives back what was done last, a shot with its values", () => {
    const { log, back } = undone(two);
    expect(log.shots).toHaveLength(1);
    expect(back?.values).toEqual({ carry: 211, offline: 20 });
    expect(undone(start)).toEqual({ log: start, back: null });
  });

  test("takes back the end of a set before the shots of it", () => {
    const ended = withSetEnded(two, 0);
    expect(undone(ended).log).toEqual(two);
    const later = withShot(ended, 1, { carry: 1, offline: 1 }, false);
    expect(undone(later).log).toEqual(ended);
  });

  test("writes a look down once", () => {
    const look = { after_round: 3, within_a_round: false };
    expect(withLook(withLook(two, look), { ...look }).looks).toEqual([look]);
    expect(withLook(withLook(two, look), { ...look, within_a_round: true }).looks).toHaveLength(2);
  });

  test("asks the core with nothing but plan, shots, ends and looks", () => {
    expect(
      Object.keys(
        asked(withSay(warmedUp(two), { straighter: 1, longer: null, easier: null, look: null, sound: null })),
      ),
    ).toEqual(["plan", "shots", "ended", "looks"]);
  });

  test("knows its own record and no other", () => {
    expect(isLog(structuredClone(two))).toBe(true);
    for (const other of [null, undefined, 3, {}, { ...two, version: 2 }, { ...two, shots: "none" }])
      expect(isLog(other)).toBe(false);
  });
});

describe("pasted shots", () => {
  const both = ["carry", "offline"];
  test("one shot or a set, by tab, semicolon, comma or blanks", () => {
    for (const text of ["251\t-8", "251;-8", "251, -8", "251  -8", "251 8 L", "251\t8L", "251; left 8\n"]) {
      expect(pastedRows(text, both), text).toEqual({ rows: [{ carry: 251, offline: -8 }] });
    }
    expect(pastedRows("251\t4\n\n248\t-\r\n260\t12 R", both)).toEqual({
      rows: [
        { carry: 251, offline: 4 },
        { carry: 248, offline: null },
        { carry: 260, offline: 12 },
      ],
    });
    expect(pastedRows("251,5", ["carry"])).toEqual({ rows: [{ carry: 251.5 }] });
  });

  test("what does not fit is refused whole, with its place", () => {
    for (const text of ["", "251", "251\t4\t9", "251\tfar", "251\t4\n260"])
      expect(pastedRows(text, both)).toHaveProperty("trouble");
    expect(pastedRows("251\t4\n260", both)).toEqual({ trouble: expect.stringContaining("Row 2") });
  });

  test("sides are signs", () => {
    expect([sided("12 R"), sided("12L"), sided("right 3"), sided("-4"), sided("4,5")]).toEqual([12, -12, 3, -4, 4.5]);
    expect([sided(""), sided("xl"), sided("L")]).toEqual([null, null, null]);
  });
});
