/** When a number that is typed is whole, and when it is asked about before it is kept. Pure. */
import type { Measure } from "../core/engine.js";
import { shownIn } from "../text/units.js";
import { type Entry, isStrike, type Key, nextEmpty, pressed, turnedTo } from "./entry.js";
import type { Values } from "./log.js";

/** What a measure usually holds, in the units shown. */
interface Usual {
  low: number;
  high: number;
  decimals: number;
}

/** A value that is asked about, in the units shown. */
export interface Odd {
  measure: string;
  value: number;
}

/** Shorter numbers are pressed on purpose: a slip would be kept before it is seen. */
const FEWEST_DIGITS = 3;

/**
 * The entry after a key. A number that can only be whole goes on to the next one; the shot is complete with the last of
 * everything that is written down.
 */
export function afterKey(
  before: Entry,
  key: Key,
  record: readonly string[],
  measures: readonly Measure[],
): { entry: Entry; isComplete: boolean } {
  const entry = pressed(before, key);
  if (key === "back" || !isWhole(entry.typed, usualOf(entry.active, measures))) return { entry, isComplete: false };
  const next = nextEmpty(
    entry,
    record.filter((id) => !isStrike(id)),
  );
  if (next !== null) return { entry: turnedTo(entry, next), isComplete: false };
  return { entry, isComplete: record.every((id) => (entry.values[id] ?? null) !== null) };
}

/** The first value of these shots that is outside what is usual of its measure. */
export function oddIn(rows: readonly Values[], measures: readonly Measure[]): Odd | null {
  for (const row of rows) {
    for (const [measure, value] of Object.entries(row)) {
      const { low, high } = usualOf(measure, measures);
      if (value !== null && (value < low || value > high)) return { measure, value };
    }
  }
  return null;
}

/** Whether nothing usual begins with these digits and has one more. */
const isWhole = (typed: string, { low, high, decimals }: Usual): boolean =>
  decimals === 0 && low >= 0 && /^\d+$/.test(typed) && typed.length >= FEWEST_DIGITS && Number(typed) * 10 > high;

function usualOf(id: string, measures: readonly Measure[]): Usual {
  const measure = measures.find((one) => one.id === id);
  if (!measure) return { low: -Infinity, high: Infinity, decimals: 1 };
  const { scale } = shownIn(measure.unit);
  const { low, high } = measure.plausible;
  return { low: low * scale, high: high * scale, decimals: measure.decimals };
}
