/**
 * In which voice the core answers: a plain object that goes along with every call. A text for each language but English
 * stands beside the core; English needs nothing and fetches nothing. Sizes are shown in yards unless told otherwise.
 */
import type { Voice } from "../../pkg/straight_answer.js";
import { hasPoint } from "../text/region.js";

const TABLES: Readonly<Record<string, URL>> = { es: new URL("../../pkg/straight_answer_es.txt", import.meta.url) };

const UNITS: Readonly<Record<string, Voice["units"]>> = { metric: "meters", mixed: "meters_and_mph" };

/** The words of a language and the units that go with them; where the words cannot be had, English. */
export async function voiceOf(manner: string): Promise<Voice> {
  const [tag = "", units = ""] = manner.split(" ");
  const [language = ""] = tag.split("-");
  return { table: await tableOf(language), units: UNITS[units] ?? "yards", point: tag !== "" && hasPoint(tag) };
}

async function tableOf(language: string): Promise<string | null> {
  const address = TABLES[language];
  if (!address) return null;
  const response = await fetch(address).catch(() => null);
  return response?.ok ? response.text() : null;
}
