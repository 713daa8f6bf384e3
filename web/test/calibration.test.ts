/** The measured error rates of the methods page. */
import { expect, test } from "vitest";
import { nearest, table, type Measured } from "../calibration.js";

const row = (target: number, measured: number, at_most: number | null, at_least: number | null = null): Measured => ({
  target, what: `target ${target} <at ${measured}>`, measured, se: 0.001, sessions: 8000, at_least, at_most, pass: at_most === null || measured <= at_most,
});

test("of each target the row nearest to its limit is shown first, a broken promise before all", () => {
  const rows = [row(1, 0.02, 0.035), row(1, 0.034, 0.035), row(2, 0.07, 0.06), row(2, 0.05, 0.06), row(7, 0.8, 0.86, 0.77)];
  expect(nearest(rows).map(({ measured }) => measured)).toEqual([0.034, 0.07, 0.8]);
  const html = table(rows);
  expect(html).toContain("4 of 5 promises are kept");
  expect(html).toContain("&lt;at 0.8&gt;");
  expect(html).toContain("0.77 to 0.86");
});

test("without measurements the page says so", () => {
  expect(table([])).toContain("without its measured rates");
});
