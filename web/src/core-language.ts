/**
 * The language of the core: a text for each but English stands beside the packages, and each package, in each thread, is
 * handed it before its first call. English needs nothing and fetches nothing.
 */
const TABLES: Readonly<Record<string, URL>> = { es: new URL("../pkg/straight_answer_es.txt", import.meta.url) };

/** What every package of the core has. */
interface Speaking {
  speak(table: string): boolean;
}

/** Loads a package and, beside it, the words of a language; one whose words cannot be had answers in English. */
export async function loadedIn(language: string, core: Speaking, loading: Promise<unknown>): Promise<void> {
  const [table] = await Promise.all([tableOf(language), loading]);
  if (table !== null) core.speak(table);
}

async function tableOf(language: string): Promise<string | null> {
  const address = TABLES[language];
  if (!address) return null;
  const response = await fetch(address).catch(() => null);
  return response?.ok ? response.text() : null;
}
