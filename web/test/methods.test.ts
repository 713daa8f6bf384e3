/** The methods page says what the code does: its constants stand in the Rust sources, its rates in the table. */
import { describe, expect, test } from "vitest";
import { fill, type Row } from "../methods/fill.mjs";
import { MEASURES } from "./fake-engine.js";

const sections = Object.values(
  import.meta.glob<string>("../methods/*.html", { query: "?raw", import: "default", eager: true }),
);
const page = "<!-- contents --><!-- sections -->";
const rust = import.meta.glob<string>("../../crates/{stats,fitting}/src/**/*.rs", { query: "?raw", import: "default" });

const row = (target: number, change: Partial<Row> = {}): Row => ({
  target, what: "equal builds <in turn>", measured: 0.0312, se: 0.0019, sessions: 8000, at_least: null, at_most: 0.06, pass: true, ...change,
});

test("every constant on the page is the one in the code", async () => {
  const constants = [...sections.join("\n").matchAll(/<data value="([^"]+)"\s+data-code=(["'])(.*?): (.*?)\2>(.*?)<\/data>/gs)];
  expect(constants.length).toBe(sections.join("").split("<data ").length - 1);
  expect(constants.length).toBeGreaterThan(20);
  for (const [, value, , file, code, shown] of constants) {
    const source = await rust[`../../${file}`]?.();
    expect(source, file).toContain(code);
    const end = source!.slice(source!.indexOf(code!) + code!.length)[0];
    expect(end, `${code} ends there`).toMatch(/[^\d.]/);
    expect(Number(code!.match(/[\d_.]+$/)![0].replaceAll("_", "")), code).toBe(Number(value));
    expect(Number(shown), code).toBe(Number(value));
  }
});

describe("measured error rates", () => {
  const filled = (rows: Row[] | null) => fill(page, { sections, measures: MEASURES, rows, rivals: null });

  test("without them the page says so, everywhere", () => {
    const text = filled(null);
    expect(text).toContain("The error rates are not yet measured.");
    expect(text).not.toMatch(/<!--/);
    expect(text).not.toMatch(/within their limits<\/summary>/);
  });

  test("with them every figure stands at its method, in percent or in yards, and a missed limit is said", () => {
    const text = filled([
      row(1),
      row(2, { pass: false, measured: 0.081 }),
      row(7, { at_least: 0.77, at_most: 0.86, measured: 0.8 }),
      row(14, { what: "honest lead less the true one, yd", measured: -0.21, at_least: -0.6, at_most: 0.6 }),
    ]);
    expect(text).toContain("<strong>3 of 4</strong> figures lie within their limits, on 32,000 invented sessions");
    expect(text).toContain("Measured: 1 of 2 within their limits");
    expect(text).toMatch(/3\.12\u00a0%<\/td><td>0\.19\u00a0%<\/td>\s*<td>at most 6\.00\u00a0%/);
    expect(text).toMatch(/8\.10\u00a0%.*?<strong>no<\/strong>/s);
    expect(text).toContain("77.00\u00a0% to 86.00\u00a0%");
    expect(text).toContain("\u22120.21\u00a0yd");
    expect(text).toContain("equal builds &lt;in turn&gt;");
  });

  test("every target that is measured has its place", () => {
    const named = [...sections.join("").matchAll(/<!-- measured ([\d ]+) -->/g)].flatMap(([, targets]) => targets!.split(" ").map(Number));
    expect(named.sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 17]);
  });
});

test("other methods stand beside the answer's, a column for each kind of session", () => {
  const figure = (method: string, what: string, rate: number) => ({ each: 9, method, what, rate, se: 0.0071, sessions: 4000 });
  const rivals = [figure("ours", "equal", 0.025), figure("ours", "found", 0.31), figure("<other>", "equal", 0.09), figure("<other>", "found", 0.4)];
  const text = fill(page, { sections, measures: MEASURES, rows: null, rivals });
  expect(text).toMatch(/ours, 9 shots each<\/th><td>2\.5\u00a0%<\/td><td>31\.0\u00a0%<\/td>/);
  expect(text).toMatch(/&lt;other&gt;, 9 shots each<\/th><td>9\.0\u00a0%/);
  expect(text).toContain("standard error at most 0.7 points");
});

test("the margins are those of the core, and links inside the page lead somewhere", () => {
  const text = fill(page, { sections, measures: MEASURES, rows: null, rivals: null });
  expect(text).toMatch(/Carry<\/th><td>5\u00a0yd<\/td><td>Common practice, no source\./);
  const ids = [...text.matchAll(/id="([\w-]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const [, target] of text.matchAll(/href="#([\w-]+)"/g)) expect(ids).toContain(target);
});
