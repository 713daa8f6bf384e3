/**
 * Yards and miles an hour, or meters and kilometers an hour: the address says it, `?units=metric`.
 *
 * The core's numbers are canonical (yd, mph) whichever is shown; here is the edge at which they are converted.
 */
export type System = "metric" | "imperial";

/** A unit as it is shown, and what one of the canonical unit is in it. */
export interface Shown {
  unit: string;
  scale: number;
}

const METRIC: Readonly<Record<string, Shown>> = {
  yd: { unit: "m", scale: 0.9144 },
  ft: { unit: "m", scale: 0.3048 },
  mph: { unit: "km/h", scale: 1.609344 },
};

let asked: System | null = null;

/** What the address asks for; null when it leaves it to the page. */
export function unitsIn(query: string): System | null {
  const said = new URLSearchParams(query).get("units");
  return said === "metric" || said === "imperial" ? said : null;
}

/** Shows and takes numbers so from here on. */
export function showUnits(next: System | null): void {
  asked = next;
}

export const units = (): System | null => asked;
export const isMetric = (): boolean => asked === "metric";

/** How the core is to speak, for `core-language.ts`: a language and, after a blank, these units. Workers are named so. */
export const manner = (language: string): string => `${language} ${asked ?? ""}`;

/** How a canonical unit is shown. */
export const shownIn = (unit: string): Shown => (isMetric() ? METRIC[unit] : undefined) ?? { unit, scale: 1 };

/** The unit of lengths, for sentences that name it. */
export const lengthUnit = (): "m" | "yd" => (isMetric() ? "m" : "yd");
