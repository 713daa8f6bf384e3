/**
 * How the core speaks. A text for each language but English stands beside the packages, and each package, in each thread,
 * is handed it before its first call; English needs nothing and fetches nothing. It shows yards unless told otherwise.
 */

const TABLES: Readonly<Record<string, URL>> = { es: new URL("../../pkg/straight_answer_es.txt", import.meta.url) };

/** What packages of the core have; one that says no sizes needs no units. */
interface Speaking {
  speak(table: string): boolean;
  show_metric?(metric: boolean): void;
}

/** Loads a package and, beside it, the words of a language; one whose words cannot be had answers in English. */
export async function loadedIn(manner: string, core: Speaking, loading: Promise<unknown>): Promise<void> {
  const [language = "", units] = manner.split(" ");
  const [table] = await Promise.all([tableOf(language), loading]);
  if (table !== null) core.speak(table);
  if (units === "metric") core.show_metric?.(true);
}

async function tableOf(language: string): Promise<string | null> {
  const address = TABLES[language];
  if (!address) return null;
  const response = await fetch(address).catch(() => null);
  return response?.ok ? response.text() : null;
}
