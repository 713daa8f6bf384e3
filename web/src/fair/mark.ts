/** What opens the fair test by itself. */
import { exampleIn } from "../state/examples.js";
import { isLink } from "../state/link.js";

/** Whether the address holds a session, of a link or an invented one. */
export const isSessionLink = (): boolean => isLink(location.hash) || exampleIn(location.hash) !== undefined;

/** Whether the address holds a plan; the core says whether it is one. */
export const isPlanLink = (fragment = location.hash): boolean => fragment.startsWith("#plan=");
