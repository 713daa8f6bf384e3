/** Where the golfer is while there are no shots: at the start, or behind one of its ways in. The address says which. Pure. */

import { isPlanLink } from "../fair/mark.js";
import { exampleIn } from "../state/examples.js";
import { isLink } from "../state/link.js";
import type { State } from "../state/state.js";

/** The parts of the page that stand for themselves, by their ids. */
export const DOORS = ["claim", "fair", "fitting", "book"] as const;
export type Door = (typeof DOORS)[number];
export type Place = "start" | "shots" | Door;

/** The place an address asks for; a plan in it is a fair test, anything unknown is the start. */
export function placeIn(fragment: string): Place {
  if (isPlanLink(fragment)) return "fair";
  // What a link or an example brings comes to the place of the shots: a text half typed there stands until it is there.
  if (isLink(fragment) || exampleIn(fragment)) return "shots";
  const said = fragment.replace(/^#/, "");
  return said === "shots" || isDoor(said) ? said : "start";
}

const isDoor = (said: string): said is Door => (DOORS as readonly string[]).includes(said);

/** Where the golfer is while nothing was given; null once there is something to show. What was refused is said beside what was given. */
export function placeOf({ read, wants, entry, trouble, given, cut }: State, asked: Place): Place | null {
  if (read || wants || entry) return null;
  return asked === "start" && (trouble || cut || given.length > 0) ? "shots" : asked;
}
