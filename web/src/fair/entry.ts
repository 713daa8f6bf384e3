/** The numbers of the shot that is being written down, key by key. Pure. */
import type { Values } from "./log.js";

export interface Entry {
  /** By measure, in the units shown; null where nothing is written yet. */
  values: Values;
  /** The measure that the keys write to. */
  active: string;
  /** What was typed so far for it, which may be no number yet: `-`, `12.`. */
  typed: string;
  mishit: boolean;
}

/** Measures that are tapped on the face and not typed. */
export const isStrike = (measure: string): boolean => measure === "strike_offset" || measure === "strike_height";

/** The longest number anyone measures: `-12345.67`. */
const LONGEST = 9;

export const emptyEntry = (measures: readonly string[]): Entry => ({
  values: Object.fromEntries(measures.map((measure) => [measure, null])),
  active: measures[0] ?? "",
  typed: "",
  mishit: false,
});

/** A shot that comes back into the hand, in the units shown. */
export function filledEntry(measures: readonly string[], values: Values, mishit: boolean): Entry {
  const empty = emptyEntry(measures);
  return turnedTo({ ...empty, values: { ...empty.values, ...values }, mishit }, empty.active);
}

export type Key = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "." | "back" | "side";

/** The entry after a key. */
export function pressed(entry: Entry, key: Key): Entry {
  const { typed } = entry;
  const text = key === "back" ? typed.slice(0, -1) : key === "side" ? turned(typed) : extended(typed, key);
  const value = text === "" || text === "-" ? null : Number(text);
  return { ...entry, typed: text, values: { ...entry.values, [entry.active]: value } };
}

/** The entry with another measure under the keys; what it has so far can be typed on. */
export function turnedTo(entry: Entry, measure: string): Entry {
  const value = entry.values[measure] ?? null;
  return { ...entry, active: measure, typed: value === null ? "" : String(value) };
}

/** The next measure without a value, from the active one on; null when all have one. */
export function nextEmpty(entry: Entry, measures: readonly string[]): string | null {
  const from = measures.indexOf(entry.active) + 1;
  const around = [...measures.slice(from), ...measures.slice(0, from)];
  return around.find((measure) => measure !== entry.active && (entry.values[measure] ?? null) === null) ?? null;
}

const turned = (typed: string): string => (typed.startsWith("-") ? typed.slice(1) : `-${typed}`);

function extended(typed: string, key: string): string {
  if (typed.length >= LONGEST || (key === "." && typed.includes("."))) return typed;
  if (key === "." && /^-?$/.test(typed)) return `${typed}0.`;
  return /^-?0$/.test(typed) && key !== "." ? typed.replace("0", key) : typed + key;
}
