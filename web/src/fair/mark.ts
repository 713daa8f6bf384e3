/** What opens the fair test by itself. */

/** The one word that says, without opening a store, that a test is under way on this device. */
export const MARK = "straight-answer-test";

export function isMarked(): boolean {
  try {
    return localStorage.getItem(MARK) !== null;
  } catch {
    // Stores are blocked: then nothing can have been kept.
    return false;
  }
}

/** Whether the address holds a plan; the core says whether it is one. */
export const isPlanLink = (): boolean => location.hash.startsWith("#plan=");
