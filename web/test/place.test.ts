/** Where the golfer is while there are no shots. */
import { expect, test } from "vitest";
import { placeIn, placeOf } from "../src/page/place.js";
import { start } from "../src/state/state.js";

test("the address names a place, a plan in it is a fair test, and anything unknown is the start", () => {
  expect(["", "#start", "#shots", "#claim", "#fitting", "#plan=1.abc", "#1.ARgC", "#nonsense"].map(placeIn)).toEqual([
    "start",
    "start",
    "shots",
    "claim",
    "fitting",
    "fair",
    "shots",
    "start",
  ]);
});

test("what was refused or cut is said at the place of the shots, and with something to show there is no place", () => {
  const refusal = { kind: "x", place: "", message: "m", remedy: "r" } as const;
  expect(placeOf(start, "start")).toBe("start");
  expect(placeOf({ ...start, trouble: refusal as never }, "start")).toBe("shots");
  expect(placeOf({ ...start, trouble: refusal as never }, "claim")).toBe("claim");
  expect(placeOf({ ...start, wants: "read" }, "fair")).toBeNull();
});
