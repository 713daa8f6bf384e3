/** The methods page says what the code does: its constants stand in the Rust sources, its rates in the table. */
import { describe, expect, test } from "vitest";
import calibration from "../../tests/calibration.json";
import measuredRivals from "../../tests/rivals.json";
import { messagesOf } from "../catalogues.mjs";
import spanish from "../methods/es/figures.json";
import { type Content, fill, type Row } from "../methods/fill.mjs";
import { MEASURES } from "./fake-engine.js";

const files = import.meta.glob<string>("../methods/{en,es}/*.{html,ftl}", {
  query: "?raw",
  import: "default",
  eager: true,
});
const LANGUAGES = ["en", "es"] as const;
type Language = (typeof LANGUAGES)[number];
const sectionsOf = (language: Language) =>
  Object.keys(files)
    .filter((path) => path.startsWith(`../methods/${language}/`) && path.endsWith(".html"))
    .sort()
    .map((path) => files[path]!);
const wordsOf = (language: Language) => files[`../methods/${language}/words.ftl`]!;
const FRAME = "%title% %page% <!-- contents --><!-- sections -->";
const rust = import.meta.glob<string>("../../crates/{stats,session,judging}/src/**/*.rs", {
  query: "?raw",
  import: "default",
});

const row = (target: number, change: Partial<Row> = {}): Row => ({
  target,
  what: "equal builds <in turn>",
  measured: 0.0312,
  se: 0.0019,
  sessions: 8000,
  at_least: null,
  at_most: 0.06,
  pass: true,
  ...change,
});

/** The page of a language; without rates unless they are given. */
const filled = (content: Partial<Content> = {}, language: Language = "en") =>
  fill(FRAME, {
    language,
    other: { language: "xx", name: "Other", file: "other.html" },
    words: wordsOf(language),
    figures: language === "es" ? spanish : null,
    sections: sectionsOf(language),
    measures: MEASURES,
    rows: null,
    rivals: null,
    ...content,
  });

/** What follows a code in a source; `start … figure` is a figure within the row that starts so. */
function behind(source: string, code: string): string | undefined {
  const [start, figure] = code.split(" … ");
  const rows = source.split(start!).slice(1);
  if (figure === undefined) return rows[0];
  const row = rows[0]?.split("///")[0];
  return row?.split(figure)[1];
}

test.each(LANGUAGES)("every constant on the page is the one in the code: %s", async (language) => {
  const text = sectionsOf(language).join("\n");
  const constants = [...text.matchAll(/<data value="([^"]+)"\s+data-code=(["'])(.*?): (.*?)\2>(.*?)<\/data>/gs)];
  expect(constants.length).toBe(text.split("<data ").length - 1);
  expect(constants.length).toBeGreaterThan(20);
  for (const [, value, , file, code, shown] of constants) {
    const source = await rust[`../../${file}`]?.();
    expect(behind(source ?? "", code!)?.[0], `${file}: ${code} ends there`).toMatch(/[^\d.]/);
    expect(Number(code!.match(/[\d_.]+$/)![0].replaceAll("_", "")), code).toBe(Number(value));
    expect(shown, code).toBe(language === "es" ? value!.replace(".", ",") : value);
  }
});

describe("the page in Spanish", () => {
  /** What no language may change: sections, constants, what is measured where, sources by year and page. */
  const bones = (language: Language) =>
    sectionsOf(language).map((text) => ({
      ids: [...text.matchAll(/(?:id|href)="([^"]+)"/g)].map(([, id]) => id),
      constants: [...text.matchAll(/<data value=.*?>/gs)].map(([tag]) => tag),
      measured: [...text.matchAll(/<!-- (.*?) -->/g)].map(([, mark]) => mark),
      sources: [...text.matchAll(/\d+ \(\d{4}\), \d+(?:–\d+)?/g)].map(([source]) => source),
      // Every figure, however its decimals and thousands are written.
      figures: [...text.replace(/<[^>]*>/g, "").matchAll(/\d[\d.,]*/g)]
        .map(([figure]) => figure.replace(/\D/g, ""))
        .sort(),
      parts: [...text.matchAll(/<(?:h\d|dt|dd|tr|td|li|p)\b/g)].length,
    }));

  test("has the sections, constants, figures and sources of the English one", () => {
    expect(bones("es")).toEqual(bones("en"));
  });

  test("has its words for everything", () => {
    const told = (language: Language) =>
      [...messagesOf(wordsOf(language), language)].map(([id, message]) => [id, [...message.told.keys()]]);
    expect(told("es")).toEqual(told("en"));
  });

  test("names every figure that was measured, and writes it with a comma", () => {
    const text = filled({ rows: calibration, rivals: measuredRivals }, "es");
    const names = [...text.matchAll(/<th scope="(?:row|col)">(.*?)<\/th>/gs)].map(([, name]) => name!);
    expect(names.length).toBeGreaterThan(calibration.length);
    expect(
      names.filter((name) => /\b(each|with|called|equal|apart|looks?|rounds|scatter|typical|strong|the)\b/.test(name)),
    ).toEqual([]);
    expect(text).toContain(
      "palos iguales por turnos, deriva típica, 15 con cada uno: llamados distintos en velocidad de bola",
    );
    expect(text).toMatch(/razón real 2: fuera del intervalo<\/th><td>\d,\d\d\u00a0%/);
    expect(() => filled({ rows: [row(1)] }, "es")).toThrow("no words for");
  });
});

describe("measured error rates", () => {
  test("without them the page says so, everywhere", () => {
    const text = filled();
    expect(text).toContain("The error rates are not yet measured.");
    expect(text).not.toMatch(/<!--/);
    expect(text).not.toMatch(/within their limits<\/summary>/);
  });

  test("with them every figure stands at its method, in percent or in yards, and a missed limit is said", () => {
    const text = filled({
      rows: [
        row(1),
        row(2, { pass: false, measured: 0.081 }),
        row(7, { at_least: 0.77, at_most: 0.86, measured: 0.8 }),
        row(14, { what: "honest lead less the true one, yd", measured: -0.21, at_least: -0.6, at_most: 0.6 }),
      ],
    });
    expect(text).toContain("<strong>3 of 4</strong> figures lie within their limits, on 32,000 invented sessions");
    expect(text).toContain("Measured: 1 of 2 within their limits");
    expect(text).toMatch(/3\.12\u00a0%<\/td><td>0\.19\u00a0%<\/td>\s*<td>at most 6\.00\u00a0%/);
    expect(text).toMatch(/8\.10\u00a0%.*?<strong>no<\/strong>/s);
    expect(text).toContain("77.00\u00a0% to 86.00\u00a0%");
    expect(text).toContain("\u22120.21\u00a0yd");
    expect(text).toContain("equal builds &lt;in turn&gt;");
  });

  test.each(LANGUAGES)("every target that is measured has its place: %s", (language) => {
    const named = [
      ...sectionsOf(language)
        .join("")
        .matchAll(/<!-- measured ([\d ]+) -->/g),
    ].flatMap(([, targets]) => targets!.split(" ").map(Number));
    expect(named.sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 17]);
  });
});

test("other methods stand beside the answer's, a column for each kind of session", () => {
  const figure = (method: string, what: string, rate: number) => ({
    each: 9,
    method,
    what,
    rate,
    se: 0.0071,
    sessions: 4000,
  });
  const rivals = [
    figure("ours", "equal", 0.025),
    figure("ours", "found", 0.31),
    figure("<other>", "equal", 0.09),
    figure("<other>", "found", 0.4),
  ];
  const text = filled({ rivals });
  expect(text).toMatch(/ours, 9 shots each<\/th><td>2\.5\u00a0%<\/td><td>31\.0\u00a0%<\/td>/);
  expect(text).toMatch(/&lt;other&gt;, 9 shots each<\/th><td>9\.0\u00a0%/);
  expect(text).toContain("standard error at most 0.7 points");
});

test.each(LANGUAGES)("the margins are those of the core, and links inside the page lead somewhere: %s", (language) => {
  const text = filled({}, language);
  expect(text).toMatch(/Carry<\/th><td>5\u00a0yd<\/td><td>Common practice, no source\./);
  const ids = [...text.matchAll(/id="([\w-]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const [, target] of text.matchAll(/href="#([\w-]+)"/g)) expect(ids).toContain(target);
});
