/** What lies in a book, or would go or come, in words: only what there is of. */
import { language, say } from "../text/say.js";
import type { Counts } from "./shelf.js";

const OF = ["people", "visits", "sessions", "tests", "claims", "shots"] as const;

export function listOf(counts: Counts & { shots?: number }): string {
  const there = OF.filter((one) => (counts[one] ?? 0) > 0).map((one) => say(`kept-${one}`, { count: counts[one]! }));
  return new Intl.ListFormat(language(), { type: "conjunction" }).format(there);
}
