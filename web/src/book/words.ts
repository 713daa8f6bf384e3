/** How the book writes a day, and a size of bytes. */
import { number } from "../format/values.js";
import { language, say } from "../text/say.js";

/** `May 30, 2026`, whatever the clock of the device says its zone is. */
export function dayOf(date: string): string {
  const [year = 0, month = 0, day = 0] = date.split("-").map(Number);
  const at = new Date(year, month - 1, day);
  return Number.isNaN(at.getTime())
    ? date
    : at.toLocaleDateString(language(), { year: "numeric", month: "short", day: "numeric" });
}

export const sizeOf = (bytes: number): string =>
  bytes < 100_000
    ? say("book-kilobytes", { size: number(Math.max(1, bytes / 1000), 0) })
    : say("book-megabytes", { size: number(bytes / 1_000_000, 1) });
