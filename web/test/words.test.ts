/** One word for each thing, and none that a golfer reads as another: what no catalogue and no methods page may say. */
import { describe, expect, test } from "vitest";

const catalogues = import.meta.glob<string>("../src/text/{en,es}/*.ftl", {
  query: "?raw",
  import: "default",
  eager: true,
});
const core = import.meta.glob<string>("../../crates/text/{en,es}/*.ftl", {
  query: "?raw",
  import: "default",
  eager: true,
});
const methods = import.meta.glob<string>("../methods/{en,es}/*.{ftl,html}", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** What is wrong in a language, and what stands for it. */
const BANNED: Readonly<Record<"en" | "es", readonly (readonly [RegExp, string])[]>> = {
  en: [
    [/\bbuilds?\b/i, "club"],
    [/\brounds?\b(?! number| there)/i, "lap: a round is 18 holes"],
    [/\bfurther\b/i, "farther"],
    [/colour|\w+met(?:re)s?\b|judgement|neighbour|favour|centre\b|modell|\bgrey\b|licence\b/i, "US spelling"],
    [/\bcertain(?:ty)?\b/i, "an interval's level is no probability"],
    [/\bI am warm\b|very own|[Nn]obody (?:measures|plays)|anybody measures|the plan holds/i, "plain words"],
    [/\bcommon practice\b/i, "golfers’ rule of thumb, no study behind it"],
  ],
  es: [
    [/\bSD\b/, "DE"],
    [/golpe(?:ar|aron|ad[oa]s?|an?)\b/i, "alternar, pegar, dar: a club is not beaten"],
    [/\brondas?\b/i, "ciclo: una ronda son 18 hoyos"],
    [/\bmiradas?\b/i, "consulta"],
    [/\bseries?\b(?! de (?:otros|tiempo)| menos)/i, "tanda"],
    [/\bmal(?:os)? golpes?\b|golpes? (?:malos?|fallados?)/i, "fallo"],
    [/\busual(?:es)?\b/i, "habitual"],
    [/\bcertezas?\b/i, "an interval's level is no probability"],
    [/\bEspera (?:de|aproximadamente|unos)\b/, "Espera says wait"],
    [/\b(?:los|unos) \d+\s*yd/i, "las yd: yardas"],
    [/\bde media\b/i, "en promedio"],
    [/\bpor tacto\b/i, "por sensaciones"],
    [/práctica (?:habitual|común), sin fuente/i, "regla práctica entre golfistas, sin ningún estudio detrás"],
  ],
};

/** What is read: without ids, comments, placeables, tags, attributes and code. */
const read = (text: string): string =>
  text
    .replace(/<!--.*?-->/gs, " ")
    .replace(/<code>.*?<\/code>/gs, " ")
    .replace(/<[^>]*>/g, " ")
    .replace(/^#.*$/gm, "")
    .replace(/\{\s*"[^"]*"\s*\}/g, " ")
    .replace(/\{ ?(?:[\w-]+|NUMBER\(\$[\w-]+\)) ?\}/g, " ")
    .replace(/\{ ?(\$[\w-]+) (?:->)?/g, " ")
    .replace(/^[\w-]+ = /gm, "")
    .replace(/^\s*\*?\[[\w-]+\]/gm, "");

const of = (language: "en" | "es") =>
  Object.entries({ ...catalogues, ...core, ...methods }).filter(([path]) => path.includes(`/${language}/`));

/** Facts of the trade that no study is known for: each says so where it stands, in golfers' words. */
const UNTOLD: Readonly<Record<"en" | "es", readonly [RegExp, RegExp]>> = {
  en: [/rule of\s+thumb/, /no study behind it/],
  es: [/regla práctica entre golfistas/i, /sin ningún estudio detrás/i],
};
const FACTS: readonly (readonly [string, string])[] = [
  ["case", "more-than-a-visit"],
  ["cause", "no-strike"],
  ["checklist", "split-over-days"],
  ["measure", "margin-why"],
  ["overlay", "assumed-to-scatter"],
  ["plan", "spread-usual"],
  ["trust", "cold-start-why"],
  ["trust", "cold-start-next"],
];

test.each(["en", "es"] as const)("a fact without a source says so where it stands: %s", (language) => {
  for (const [file, id] of FACTS) {
    const text = core[`../../crates/text/${language}/${file}.ftl`]!;
    const [, message = ""] = new RegExp(`^${id} = (.*(?:\n[ *}\\[].*)*)`, "m").exec(text) ?? [];
    for (const tag of UNTOLD[language]) expect(message, `${file}: ${id}`).toMatch(tag);
  }
  const [, strike = ""] = /\[strike_height\] (.*)/.exec(core[`../../crates/text/${language}/checklist.ftl`]!) ?? [];
  expect(strike).toMatch(UNTOLD[language][1]);
});

/** Where a size may be yards: no article that has to know their gender stands before it. */
test("Spanish puts no masculine article before a size in yards", () => {
  const sizes = /\b(?:los|unos|un) \{ ?\$(?:margin|size|gain|honest|effect|expected|shown|allowed)\b/;
  for (const [path, text] of Object.entries(core).filter(
    ([path]) => path.includes("/es/") && !path.endsWith("spread.ftl"),
  ))
    expect(text.match(sizes)?.[0], path).toBeUndefined();
});

describe.each(["en", "es"] as const)("%s", (language) => {
  test.each(of(language))("%s", (path, text) => {
    const said = read(text);
    expect(said.length, path).toBeGreaterThan(5);
    for (const [wrong, right] of BANNED[language]) expect(said.match(wrong)?.[0], right).toBeUndefined();
    // Typographic marks, and those of the language; a straight one is for programs.
    expect(said.match(/.{0,20}["'].{0,20}/)?.[0]).toBeUndefined();
    expect(said.match(language === "en" ? /.{0,20}[«»].{0,20}/ : /.{0,20}[“”].{0,20}/)?.[0]).toBeUndefined();
  });
});
