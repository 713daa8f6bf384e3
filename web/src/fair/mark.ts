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
