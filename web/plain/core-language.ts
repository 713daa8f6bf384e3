/** The words of the core in other languages, out of the script itself. */
import type { Voice } from "../pkg/straight_answer.js";
import spanish from "../pkg/straight_answer_es.txt?raw";
import { hasPoint } from "../src/text/region.js";

const TABLES: Readonly<Record<string, string>> = { es: spanish };
const UNITS: Readonly<Record<string, Voice["units"]>> = { metric: "meters", mixed: "meters_and_mph" };

export async function voiceOf(manner: string): Promise<Voice> {
  const [tag = "", units = ""] = manner.split(" ");
  const [language = ""] = tag.split("-");
  return {
    table: TABLES[language] ?? null,
    units: UNITS[units] ?? "yards",
    point: tag !== "" && hasPoint(tag),
  };
}
