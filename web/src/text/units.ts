/**
 * Yards and miles an hour, meters and kilometers an hour, or meters and miles an hour: the address says it, `?units=metric`,
 * or where it leaves it open the region of the browser.
 *
 * The core's numbers are canonical (yd, mph) whichever is shown; here is the edge at which they are converted.
 */
export type System = "metric" | "mixed" | "imperial";

const SYSTEMS: readonly string[] = ["metric", "mixed", "imperial"] satisfies System[];

/** A unit as it is shown, and what one of the canonical unit is in it. */
export interface Shown {
  unit: string;
  scale: number;
}

type Table = Readonly<Record<string, Shown>>;
const LENGTHS: Table = { yd: { unit: "m", scale: 0.9144 }, ft: { unit: "m", scale: 0.3048 } };
const TABLES: Readonly<Record<System, Table>> = {
  imperial: {},
  mixed: LENGTHS,
  metric: { ...LENGTHS, mph: { unit: "km/h", scale: 1.609344 } },
};

let asked: System | null = null;

/** What the address asks for; null when it leaves it to the page. */
export function unitsIn(query: string): System | null {
  const said = new URLSearchParams(query).get("units");
  return said !== null && SYSTEMS.includes(said) ? (said as System) : null;
}

/** Shows and takes numbers so from here on. */
export function showUnits(next: System | null): void {
  asked = next;
}

export const units = (): System | null => asked;

/** How the core is to speak, for `core-language.ts`: a tag of a language and, after a blank, these units. Workers are named so. */
export const manner = (tag: string): string => `${tag} ${asked ?? ""}`;

/** How a canonical unit is shown. */
export const shownIn = (unit: string): Shown => TABLES[asked ?? "imperial"][unit] ?? { unit, scale: 1 };

/** The unit of lengths, for sentences that name it. */
export const lengthUnit = (): "m" | "yd" => (shownIn("yd").unit === "m" ? "m" : "yd");
