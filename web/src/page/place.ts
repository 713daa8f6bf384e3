/** Where the golfer is while there are no shots: at the start, or behind one of its ways in. The address says which. Pure. */

/** The parts of the page that stand for themselves, by their ids. */
export const DOORS = ["claim", "fair", "fitting"] as const;
export type Door = (typeof DOORS)[number];
export type Place = "start" | "shots" | Door;

/** The place an address asks for; a plan in it is a fair test, anything unknown is the start. */
export function placeIn(fragment: string): Place {
  const said = fragment.replace(/^#/, "");
  if (said.startsWith("plan=")) return "fair";
  return said === "shots" || isDoor(said) ? said : "start";
}

const isDoor = (said: string): said is Door => (DOORS as readonly string[]).includes(said);
