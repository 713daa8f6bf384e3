/** What a host knows of the units of its file, as corrections for the columns that say none. Pure. */
import type { ColumnReading, Hints } from "../engine.js";

const METRIC = ["m", "km/h", "mm"];
const IMPERIAL = ["yd", "mph", "in"];

/** Nothing where a column says its unit, or has none of that system. */
export function unitHints(columns: readonly ColumnReading[], system: "metric" | "imperial"): Hints {
  const wanted = system === "metric" ? METRIC : IMPERIAL;
  const said = columns
    .filter(({ unit_source }) => unit_source === "assumed")
    .flatMap(({ index, unit, units }) => {
      const found = wanted.find((one) => one === unit || units.includes(one));
      return found === undefined || found === unit ? [] : [[index, found] as const];
    });
  return said.length > 0 ? { units: Object.fromEntries(said) } : {};
}
