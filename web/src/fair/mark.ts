/** What opens the fair test by itself. */
import { exampleIn } from "../state/examples.js";
import { isLink } from "../state/link.js";

/** The store of the test under way; it is there only while there is one. */
export const DATABASE = "straight-answer";

/** The one word that says the same in browsers that do not list their stores. */
export const MARK = "straight-answer-test";

/**
 * Whether a test is under way on this device, without opening a store: opening would make one.
 *
 * The mark alone would not do. Browsers write it down seconds later, and a battery may be dead by then.
 */
export async function isUnderWay(): Promise<boolean> {
  try {
    if (localStorage.getItem(MARK) !== null) return true;
    return (await indexedDB.databases()).some(({ name }) => name === DATABASE);
  } catch {
    // Stores are blocked, and nothing can have been kept; or the browser does not list them, and there is no mark.
    return false;
  }
}

/** Whether the address holds a session, of a link or an invented one. */
export const isSessionLink = (): boolean => isLink(location.hash) || exampleIn(location.hash) !== undefined;

/** Whether the address holds a plan; the core says whether it is one. */
export const isPlanLink = (fragment = location.hash): boolean => fragment.startsWith("#plan=");
