/** One word for each thing, and none that a golfer reads as another: what no catalogue and no methods page may say. */
import { describe, expect, test } from "vitest";

const catalogues = import.meta.glob<string>("../src/text/{en,es}/*.ftl", {
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
    [/\bI am warm\b|very own|nobody (?:measures|plays)/i, "plain words"],
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
    .replace(/\{ ?[\w-]+ ?\}/g, " ")
    .replace(/\{ ?(\$[\w-]+) (?:->)?/g, " ")
    .replace(/^[\w-]+ = /gm, "")
    .replace(/^\s*\*?\[[\w-]+\]/gm, "");

const of = (language: "en" | "es") =>
  Object.entries({ ...catalogues, ...methods }).filter(([path]) => path.includes(`/${language}/`));

describe.each(["en", "es"] as const)("%s", (language) => {
  test.each(of(language))("%s", (path, text) => {
    const said = read(text);
    expect(said.length, path).toBeGreaterThan(40);
    for (const [wrong, right] of BANNED[language]) expect(said.match(wrong)?.[0], right).toBeUndefined();
    // Typographic marks, and those of the language; a straight one is for programs.
    expect(said.match(/.{0,20}["'].{0,20}/)?.[0]).toBeUndefined();
    expect(said.match(language === "en" ? /.{0,20}[«»].{0,20}/ : /.{0,20}[“”].{0,20}/)?.[0]).toBeUndefined();
  });
});
