/** What the browser says of a golfer's region: an offer, a default where the address leaves it open, the marks of numbers. */
import { afterEach, describe, expect, test, vi } from "vitest";
import { number, plain } from "../src/format/values.js";
import { hasPoint, holdsSession, ownLanguage, tagOf, unitsOfRegion } from "../src/text/region.js";
import { turnTo } from "../src/text/say.js";

const SPOKEN = ["en", "es"] as const;

test("the language offered is the first of the browser's that the page speaks", () => {
  expect(ownLanguage(["es-MX", "en"], SPOKEN)).toBe("es");
  expect(ownLanguage(["fr-FR", "es"], SPOKEN)).toBe("es");
  expect(ownLanguage(["en-US", "es"], SPOKEN)).toBe("en");
  expect(ownLanguage(["de-DE"], SPOKEN)).toBeNull();
  expect(ownLanguage([], SPOKEN)).toBeNull();
});

test("a region that plays meters gets them with miles an hour; where nothing is known, nothing is taken for granted", () => {
  for (const tag of ["es-ES", "de-DE", "sv-SE", "en-AU", "en-ZA", "zh-Hant-AU"])
    expect(unitsOfRegion([tag]), tag).toBe("mixed");
  for (const tag of ["en-US", "en-GB", "en-IE", "es-MX", "es", "en", "es-419", "ja-JP"])
    expect(unitsOfRegion([tag]), tag).toBeNull();
  expect(unitsOfRegion(["en-US", "es-ES"])).toBeNull();
  expect(unitsOfRegion([])).toBeNull();
});

test("a session that was sent opens in the units it was made in", () => {
  expect(["", "#", "#example=floor"].map(holdsSession)).toEqual([false, false, false]);
  expect(holdsSession("#1AbC")).toBe(true);
});

describe("Spanish numbers", () => {
  afterEach(() => {
    turnTo("en");
    vi.unstubAllGlobals();
  });

  test.each([
    ["es-ES", "1234,5", "19\u202f600", false],
    ["es-AR", "1234,5", "19\u202f600", false],
    ["es-MX", "1234.5", "19,600", true],
    ["es-GT", "1234.5", "19,600", true],
    ["es-US", "1234.5", "19,600", true],
  ])("as %s writes them", (tag, one, thousands, point) => {
    vi.stubGlobal("navigator", { languages: [tag, "en"] });
    turnTo("es");
    expect(plain(1234.5)).toBe(one);
    expect(number(19600, 0)).toBe(thousands);
    expect(hasPoint(tagOf("es", [tag]))).toBe(point);
  });

  test("without a region they are those of Spain, and English is read as it is everywhere", () => {
    expect(tagOf("es", ["fr-FR", "es"])).toBe("es");
    expect(tagOf("en", ["en-ZA"])).toBe("en");
    expect([hasPoint("es"), hasPoint("en")]).toEqual([false, true]);
  });
});
