/** The methods page says what the code does: its constants stand in the Rust sources, its rates in the table. */
import { describe, expect, test } from "vitest";
import calibration from "../../tests/calibration.json";
import measuredRivals from "../../tests/rivals.json";
import { messagesOf } from "../catalogues.mjs";
import spanish from "../methods/es/figures.json";
import { type Content, fill, type Row } from "../methods/fill.mjs";
import frame from "../methods/frame.html?raw";
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
    .filter((path) => path.startsWith(`../methods/${language}/`) && /\/\d[\w-]*\.html$/.test(path))
    .sort()
    .map((path) => files[path]!);
const firstOf = (language: Language) => files[`../methods/${language}/first.html`]!;
const wordsOf = (language: Language) => files[`../methods/${language}/words.ftl`]!;
const FRAME = frame;
const rust = import.meta.glob<string>("../../crates/{stats,session,judging}/src/**/*.rs", {
  query: "?raw",
  import: "default",
});

const row = (target: number, change: Partial<Row> = {}): Row => ({
  target,
  what: "equal clubs <in turn>",
  measured: 0.0312,
  se: 0.0019,
  sessions: 8000,
  at_least: null,
  at_most: 0.06,
  pass: true,
  promised_at_most: 0.05,
  promised_at_least: null,
  unit: null,
  ...change,
});

/** The page of a language; without rates unless they are given. */
const filled = (content: Partial<Content> = {}, language: Language = "en") =>
  fill(FRAME, {
    part: "full",
    language,
    firstPage: "first.html",
    fullPage: "full.html",
    first: firstOf(language),
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
  const text = [firstOf(language), ...sectionsOf(language)].join("\n");
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
    [firstOf(language), ...sectionsOf(language)].map((text) => ({
      ids: [...text.matchAll(/(?:id|href)="([^"]+)"/g)].map(([, id]) => id!.replace(".es.html", ".html")),
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
      "palos iguales alternados, deriva típica, 15 con cada uno: llamados distintos en velocidad de bola",
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

  test("with them every figure stands beside its promise, in percent or in its unit, and what is worse is marked", () => {
    const text = filled({
      rows: [
        row(1),
        row(2, { measured: 0.081 }),
        row(7, { promised_at_most: null, promised_at_least: 0.8, at_least: 0.77, at_most: 0.86, measured: 0.791 }),
        row(6, { what: "5 yd apart: called the same within 5 yd", measured: 0.0425 }),
        row(14, { what: "honest lead less the true one", promised_at_most: null, measured: -0.21, unit: "yd" }),
        row(22, { promised_at_most: null }),
      ],
      sections: [...sectionsOf("en").map((text) => text.replace(/<!-- (?:in100|range|value) .*? -->/g, "7"))],
    });
    expect(text).toContain("Of 3 error rates 1 lie above the 5 in 100 that is promised. The highest is 8.1 in 100");
    expect(text).toMatch(/Of 1 promised chances to find a\s+difference 1 came out lower, by 0.9 points at most/);
    expect(text).toContain("48,000 invented sessions");
    expect(text).toContain("Measured: wrong in 3.1 to 8.1 of 100, promised at most 5; 1 of 2 above the promise.");
    expect(text).toMatch(/3\.12\u00a0%<\/td>\s*<td>0\.19\u00a0%<\/td><td>at most 5\u00a0%<\/td><td>kept/);
    expect(text).toMatch(/8\.10\u00a0%.*?<strong>above the promise<\/strong>/s);
    expect(text).toMatch(/79\.10\u00a0%<\/td>.*?<td>80\u00a0%<\/td><td><strong>below the promise<\/strong>/s);
    expect(text).toMatch(/called the same within 5 yd<\/th><td>4\.25\u00a0%<\/td>/);
    expect(text).toMatch(/\u22120\.21\u00a0yd<\/td>\s*<td>0\.00\u00a0yd<\/td><td>nothing/);
    expect(text).toContain("equal clubs &lt;in turn&gt;");
  });

  test("a rate is no yardage: whatever has no unit is a share", () => {
    for (const { what, measured, unit } of calibration) expect(unit !== null || measured <= 1, what).toBe(true);
    const text = filled({ rows: calibration, rivals: measuredRivals });
    const one = calibration.find(({ what }) => what.includes("typical, 90 each: called the same within 5 yd"))!;
    expect(text).toContain(`90 each: called the same within 5 yd</th><td>${(one.measured * 100).toFixed(2)}\u00a0%`);
    expect(text).not.toMatch(/within 5 yd<\/th><td>[\d.]+\u00a0yd/);
  });

  test("± is that of the rate itself, also above one half", () => {
    const rates = calibration.filter(({ unit }) => unit === null);
    expect(rates.some(({ measured }) => measured > 0.9)).toBe(true);
    for (const { what, measured, se, sessions } of rates) {
      const share = Math.min(Math.max(measured, 1 / sessions), 1 - 1 / sessions);
      expect(se, what).toBeCloseTo(Math.sqrt((share * (1 - share)) / sessions), 9);
    }
  });

  test("every error rate but those for comparison carries the promise that the page's words make", () => {
    for (const { what, promised_at_most, promised_at_least, unit } of calibration)
      if (unit === null && !what.startsWith("for comparison"))
        expect(promised_at_most === 0.05 || (promised_at_least ?? 0) > 0, what).toBe(true);
  });

  test.each(LANGUAGES)("rows say clubs, laps and units, never a name of the code: %s", (language) => {
    const text = filled({ rows: calibration, rivals: measuredRivals }, language);
    const names = [...text.matchAll(/<th scope="row">(.*?)<\/th>/gs)].map(([, name]) => name!);
    expect(names.length).toBeGreaterThan(calibration.length);
    for (const name of names) {
      expect(name).not.toMatch(/\w_\w|\bbuilds?\b|\brounds?\b|\brondas?\b|\bmiradas?\b|\bSD\b/);
      expect(name).not.toMatch(/(?:carry|offline|speed|spin rate) [\d.]+ apart/);
    }
  });

  test.each(LANGUAGES)("every target that is measured has its place: %s", (language) => {
    const named = [
      ...sectionsOf(language)
        .join("")
        .matchAll(/<!-- measured ([\d ]+) -->/g),
    ].flatMap(([, targets]) => targets!.split(" ").map(Number));
    expect(named.sort((a, b) => a - b)).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 18, 19, 20, 21, 22, 23, 24, 27, 30, 31, 32,
    ]);
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

/** Words that an adult reads in a minute: M. Brysbaert, Journal of Memory and Language 109 (2019), 104047. */
const WORDS_A_MINUTE = 238;

describe.each(LANGUAGES)("the first page: %s", (language) => {
  const page = filled({ part: "first", rows: calibration, rivals: measuredRivals }, language);
  const own = firstOf(language);

  test("is read in two minutes", () => {
    const [, body = ""] = /<h1>(.*)<\/main>/s.exec(page) ?? [];
    const read = body.replace(/<ul class="contents">.*?<\/ul>/s, "").replace(/<[^>]*>/g, " ");
    const words = read.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length;
    expect(words).toBeGreaterThan(300);
    expect(words).toBeLessThanOrEqual(2 * WORDS_A_MINUTE);
  });

  test("leads to every section of the full one, also from a link that was made before there were two", () => {
    const sections = [
      ...sectionsOf(language)
        .join("")
        .matchAll(/<section id="([\w-]+)"/g),
    ].map(([, id]) => id!);
    for (const id of sections) expect(page).toContain(`<li id="${id}"><a href="./full.html#${id}">`);
  });

  test("has its numbers from the table, and says where one is above the promise", () => {
    expect(own.replace(/<[^>]*>/g, "")).not.toMatch(/\d+[.,]\d/);
    const rates = calibration.filter(({ promised_at_most }) => promised_at_most !== null);
    const highest = rates.reduce((most, rate) => (rate.measured > most.measured ? rate : most));
    expect(own).toContain(
      `<!-- in100 ${highest.target} ${highest.what.split(", ").slice(1).join(", ").split(" called")[0]} -->`,
    );
    const ranges = [...own.matchAll(/<!-- range (\d+) (.*?) -->/g)].map(([, target, what]) =>
      calibration.filter(
        (row) => row.target === Number(target) && what!.split(" + ").every((part) => row.what.includes(part)),
      ),
    );
    const isAbove = ({ measured, promised_at_most: most }: Row) => typeof most === "number" && measured > most;
    expect(ranges.length).toBeGreaterThan(3);
    const marks = page.match(language === "en" ? /above the promise/g : /por encima de lo prometido/g) ?? [];
    expect(marks.length).toBe(ranges.filter((rows) => rows.some(isAbove)).length);
    expect(page).not.toMatch(/<!-- /);
  });
});

test.each(LANGUAGES)(
  "no sentence has a source from memory, and counted numbers say what counts them: %s",
  (language) => {
    const text = sectionsOf(language).join("");
    expect(text).not.toMatch(/from memory|de memoria|later public description|descripción pública posterior/);
    // What is promised, and what a test of the tree counts where it stands.
    for (const [, number] of text.matchAll(/(\d+) (?:of|in|de cada) 100\b/g))
      expect(["5", "10", "90", "92", "95", "8"], number).toContain(number);
    for (const counted of ["chances_hold", "a_known_cause", "calibrate --only 22"]) expect(text).toContain(counted);
  },
);

test.each(LANGUAGES)("the margins are those of the core, and links inside the page lead somewhere: %s", (language) => {
  const text = filled({}, language);
  expect(text).toMatch(/Carry<\/th><td>5\u00a0yd<\/td><td>Common practice, no source\./);
  const ids = [...text.matchAll(/id="([\w-]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const [, target] of text.matchAll(/href="#([\w-]+)"/g)) expect(ids).toContain(target);
});
