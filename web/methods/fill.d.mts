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
  /** The error that the page promises not to pass. */
  promised_at_most?: number | null;
  /** The chance of finding something that it promises. */
  promised_at_least?: number | null;
  /** What a figure that is no share is measured in. */
  unit?: string | null;
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
  /** What a golfer reads in two minutes, or everything. */
  part: "first" | "full";
  language: string;
  /** The same part in the other language, by its file. */
  other: { language: string; name: string; file: string };
  /** The language's `words.ftl`. */
  words: string;
  /** What was counted, where the language is not that of the tests. */
  figures: Figures | null;
  /** The files of both parts in this language. */
  firstPage: string;
  fullPage: string;
  /** The first part's text. */
  first: string;
  sections: string[];
  measures: Measure[];
  rows: Row[] | null;
  rivals: Rival[] | null;
}

export function fill(frame: string, content: Content): string;
