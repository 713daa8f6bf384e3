/**
 * How the core speaks. A text for each language but English stands beside the core, which is handed it before its first
 * call, in each thread; English needs nothing and fetches nothing. It shows yards unless told otherwise.
 */

const TABLES: Readonly<Record<string, URL>> = { es: new URL("../pkg/straight_answer_es.txt", import.meta.url) };

/** What a package has that speaks; one that says no sizes needs no units. */
interface Speaking {
  speak(table: string): boolean;
  show_metric?(metric: boolean): void;
}

/** Tells a package how to speak, once it is there and whenever it starts again. */
export type Voice = (core: Speaking) => void;

/** The words of a language and the units that go with them; where the words cannot be had, English. */
export async function voiceOf(manner: string): Promise<Voice> {
  const [language = "", units] = manner.split(" ");
  const table = await tableOf(language);
  return (core) => {
    if (table !== null) core.speak(table);
    if (units === "metric") core.show_metric?.(true);
  };
}

async function tableOf(language: string): Promise<string | null> {
  const address = TABLES[language];
  if (!address) return null;
  const response = await fetch(address).catch(() => null);
  return response?.ok ? response.text() : null;
}
