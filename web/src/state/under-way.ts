/** Whether a test is under way on this device, found out without opening a store: opening would make one. */

/** The store of all that is kept; it is there only while something is. */
export const DATABASE = "straight-answer";

/** What says the same in browsers that do not list their stores, and whether a test is under way. */
export const MARK = "straight-answer-test";
/** Its values: a test is under way, or something else is kept. */
export const TEST = "1";
export const OTHER = "0";

/**
 * `perhaps`: something is kept, and only the store knows whether a test is among it.
 *
 * The mark alone would not do. Browsers write it down seconds later, and a battery may be dead by then.
 */
export async function isUnderWay(): Promise<"yes" | "perhaps" | "no"> {
  try {
    if (localStorage.getItem(MARK) === TEST) return "yes";
    return (await isAnythingKept()) ? "perhaps" : "no";
  } catch {
    // Stores are blocked, and nothing can have been kept.
    return "no";
  }
}

/** Whether there is a store. */
export async function isAnythingKept(): Promise<boolean> {
  try {
    return localStorage.getItem(MARK) !== null || (await indexedDB.databases()).some(({ name }) => name === DATABASE);
  } catch {
    return false;
  }
}
