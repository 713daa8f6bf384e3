/** Types of `fill.mjs`. */
import type { Measure } from "../pkg/straight_answer.js";

/** A line of tests/calibration.json. */
export interface Row {
  target: number;
  what: string;
  measured: number;
  se: number;
  sessions: number;
  at_least: number | null;
  at_most: number;
  pass: boolean;
}

/** A figure of tests/rivals.json. */
export interface Rival {
  each: number;
  method: string;
  what: string;
  rate: number;
  se: number;
  sessions: number;
}

export function fill(
  page: string,
  content: { sections: string[]; measures: Measure[]; rows: Row[] | null; rivals: Rival[] | null },
): string;
