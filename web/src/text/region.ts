/**
 * What the browser says of where a golfer plays: which language to offer, how numbers are written there, and in what
 * distances are given. An address that says it otherwise counts more, and nothing of this leaves the page.
 */
import type { System } from "./units.js";

/** Where golfers play in meters and their devices give miles an hour. Common practice; no source. */
const METERS_AND_MPH = new Set(
  "AT AU BE BG CH CZ DE DK EE ES FI FR GR HR HU IS IT LT LU LV NL NO NZ PL PT RO SE SI SK TR ZA".split(" "),
);

const languageOf = (tag: string): string => tag.toLowerCase().split("-")[0]!;

/** The first of the browser's languages that the page speaks; null when it speaks none of them. */
export function ownLanguage<Language extends string>(
  tags: readonly string[],
  spoken: readonly Language[],
): Language | null {
  for (const tag of tags) {
    const found = spoken.find((one) => one === languageOf(tag));
    if (found) return found;
  }
  return null;
}

/**
 * The tag by which numbers are written: Spanish has a comma in Madrid and a point in Mexico. English keeps its point
 * wherever it is read.
 */
export function tagOf(language: string, tags: readonly string[]): string {
  if (language === "en") return language;
  return tags.find((tag) => languageOf(tag) === language && tag.includes("-")) ?? language;
}

/** Whether decimals follow a point where this tag is at home. */
export const hasPoint = (tag: string): boolean =>
  new Intl.NumberFormat(tag).formatToParts(0.5).some(({ type, value }) => type === "decimal" && value === ".");

/** The units of the region of the browser's first language; null where yards are played, or nobody knows. */
export function unitsOfRegion(tags: readonly string[]): System | null {
  const [first] = tags;
  if (first === undefined) return null;
  // A tag without a region, `en` or `es`, says nothing of where somebody plays.
  const region = /-([A-Z]{2})(?:-|$)/i.exec(first)?.[1]?.toUpperCase();
  return region !== undefined && METERS_AND_MPH.has(region) ? "mixed" : null;
}

/** Whether what follows the mark of an address holds a session: it opens as it was made, in the units it was made in. */
export const holdsSession = (hash: string): boolean => hash !== "" && hash !== "#" && !hash.startsWith("#example=");

/** The browser's languages, the one it likes best first. */
export const browserLanguages = (): readonly string[] => globalThis.navigator?.languages ?? [];
