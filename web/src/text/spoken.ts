/** Which language the page speaks, and the catalogues of all but English, loaded when that language is spoken. */

import { browserLanguages, unitsOfRegion } from "./region.js";
import { type Language, language, learn, type PlainId, say, turnTo } from "./say.js";
import { units } from "./units.js";

/** Every language there are catalogues for, by its own name. */
export const LANGUAGES: Readonly<Record<Language, string>> = { en: "English", es: "Español" };

/** Of every language but English; each file is a download of its own. */
const CATALOGUES = import.meta.glob<string>("./es/*.ftl", { query: "?raw", import: "default" });

/** The language an address asks for: `?lang=es`. */
export function languageIn(query: string): Language {
  const said = new URLSearchParams(query).get("lang")?.toLowerCase().split("-")[0];
  return said !== undefined && Object.hasOwn(LANGUAGES, said) ? (said as Language) : "en";
}

/** The page's own address in a language and in units, without what follows the mark: links that are given away open as they were made. */
export function pageIn(wanted = language(), shown = units()): string {
  const address = new URL("./", location.href);
  if (wanted !== "en") address.searchParams.set("lang", wanted);
  // Yards go unsaid, save where the page would take something else for granted.
  if (shown !== null && (shown !== "imperial" || unitsOfRegion(browserLanguages()) !== null))
    address.searchParams.set("units", shown);
  return address.href;
}

/** Turns to a language; what the page says first is known when this is settled. */
export async function speak(next: Language, ...parts: readonly string[]): Promise<void> {
  turnTo(next);
  document.documentElement.lang = next;
  await spoken(...parts);
  translate(document);
}

/** The catalogues of these parts, known before anything is drawn that says them. English needs none: parts bring it along. */
export async function spoken(...parts: readonly string[]): Promise<void> {
  const now = language();
  if (now === "en") return;
  const files = parts.map((part) => CATALOGUES[`./${now}/${part}.ftl`]?.());
  for (const catalogue of await Promise.all(files)) if (catalogue !== undefined) learn(catalogue, now);
}

/** A part behind a door: its texts, then itself. */
export const withTexts = async <Part>(parts: readonly string[], load: () => Promise<Part>): Promise<Part> => {
  await spoken(...parts);
  return load();
};

/** The page's own file is written in English; its texts carry their ids. */
function translate(within: ParentNode): void {
  for (const element of within.querySelectorAll<HTMLElement>("[data-text]"))
    element.textContent = say(element.dataset["text"] as PlainId);
  for (const link of within.querySelectorAll<HTMLAnchorElement>("[data-address]"))
    link.href = say(link.dataset["address"] as PlainId);
  for (const element of within.querySelectorAll<HTMLElement>("[data-label]"))
    element.ariaLabel = say(element.dataset["label"] as PlainId);
}
