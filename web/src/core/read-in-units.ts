/** Reads a text of which the address says in what units it is: what a column does not say itself is believed of it. */
import { type System, units } from "../text/units.js";
import type { ColumnReading, Engine, Hints, ReadResult } from "./engine.js";

/** What each system takes columns for that name no unit. */
const TAKEN: Readonly<Record<System, readonly string[]>> = {
  metric: ["m", "km/h", "mm"],
  mixed: ["m", "mph", "mm"],
  imperial: ["yd", "mph", "in"],
};

/** Reads a text; columns that say no unit are in the units that the address names. */
export async function readIn(engine: Pick<Engine, "read">, text: string, hints: Hints): Promise<ReadResult> {
  const result = await engine.read(text, hints);
  const asked = units();
  const more = asked === null ? {} : unitsOf(result.reading.columns, asked);
  return Object.keys(more).length === 0 ? result : engine.read(text, { ...hints, units: { ...more, ...hints.units } });
}

/** By column; nothing where one says its unit, or has none of that system. */
export function unitsOf(columns: readonly ColumnReading[], system: System): Record<number, string> {
  const said = columns
    .filter(({ unit_source }) => unit_source === "assumed")
    .flatMap(({ index, unit, units: known }) => {
      const found = TAKEN[system].find((one) => one === unit || known.includes(one));
      return found === undefined || found === unit ? [] : [[index, found] as const];
    });
  return Object.fromEntries(said);
}
