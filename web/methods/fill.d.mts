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

/** What was counted in another language, as `es/figures.json` has it. */
export interface Figures {
  words: Record<string, Record<string, string>>;
  figures: string[][];
}

/** All that the page of a language is made of. */
export interface Content {
  language: string;
  /** The page of the other language, by its file. */
  other: { language: string; name: string; file: string };
  /** The language's `words.ftl`. */
  words: string;
  /** What was counted, where the language is not that of the tests. */
  figures: Figures | null;
  sections: string[];
  measures: Measure[];
  rows: Row[] | null;
  rivals: Rival[] | null;
}

export function fill(frame: string, content: Content): string;
