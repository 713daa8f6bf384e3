/** The margin's steps, and its two scales: a measure's unit and percent of scatter. */
import { describe, expect, test } from "vitest";
import { marginScale, marginStep, stepMargin } from "../src/format/margin.js";
import { measureView, plain } from "../src/format/values.js";
import { MEASURES, session } from "./fake-engine.js";

const view = (id: string) => measureView(id, MEASURES, session(2));

describe("the margin's steps", () => {
  test.each([
    ["carry", 1],
    ["ball_speed", 0.5],
    ["spin_rate", 50],
    ["smash", 0.01],
  ])("%s moves by %f", (id, step) => {
    expect(marginStep(view(id))).toBeCloseTo(step, 10);
  });

  test("stays on the grid, above zero, without drifting", () => {
    expect(stepMargin(5, 1, 1)).toBe(6);
    expect(stepMargin(5.4, 1, 1)).toBe(6);
    expect(stepMargin(5.4, 1, -1)).toBe(5);
    expect(stepMargin(1, 1, -1)).toBe(1);
    let margin = 0.02;
    for (let press = 0; press < 8; press++) margin = stepMargin(margin, 0.01, 1);
    expect(margin).toBe(0.1);
    expect(plain(margin)).toBe("0.1");
  });
});

test("scatter is set in percent and taken as a ratio", () => {
  const scale = marginScale({ goal: "tighter" }, view("carry"));
  expect([scale.unit, scale.shown(1.25), scale.taken(30), scale.taken(scale.shown(1.1))]).toEqual(["%", 25, 1.3, 1.1]);
});

test("averages are set in the measure's unit and taken as they are", () => {
  const scale = marginScale({ goal: "higher" }, view("ball_speed"));
  expect([scale.unit, scale.step, scale.shown(1.5), scale.taken(2)]).toEqual(["mph", 0.5, 1.5, 2]);
});
