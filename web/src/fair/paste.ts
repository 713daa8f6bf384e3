/**
 * Shots pasted into the log: one row per shot, numbers in the order of the chosen measures. Pure.
 *
 * A heading line or anything else belongs to the reader of the core; here only plain numbers are taken, so that
 * nothing is guessed in the bay.
 */
import { typedNumber } from "../format/values.js";
import { say } from "../text/say.js";
import type { Values } from "./log.js";

export type Pasted = { rows: Values[] } | { trouble: string };

/** `12 R`, `8L`, `-3.5`, `left 4`: a number with a side; right is positive. */
export function sided(text: string): number | null {
  const bare = text.trim();
  const side = /^(?:l|left)\b|(?:\d|\s)(?:l|left)$/i.test(bare)
    ? -1
    : /^(?:r|right)\b|(?:\d|\s)(?:r|right)$/i.test(bare)
      ? 1
      : 0;
  if (side === 0) return typedNumber(bare);
  const size = typedNumber(bare.replace(/left|right|[lr]/gi, ""));
  return size === null ? null : side * Math.abs(size);
}

/** Rows of as many numbers as there are measures; a blank or a dash is a value that was not read. */
export function pastedRows(text: string, measures: readonly string[]): Pasted {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== "");
  if (lines.length === 0) return { trouble: say("paste-nothing") };
  const rows: Values[] = [];
  for (const [at, line] of lines.entries()) {
    const cells = cellsOf(line, measures.length);
    if (cells.length !== measures.length) {
      const said = { count: cells.length, wanted: measures.length };
      return {
        trouble: lines.length > 1 ? say("paste-row-has", { ...said, row: at + 1 }) : say("paste-there-are", said),
      };
    }
    const values = cells.map((cell) => (/^[-–—]*$/.test(cell.trim()) ? null : sided(cell)));
    const wrong = cells.findIndex((cell, index) => values[index] === null && !/^[-–—]*$/.test(cell.trim()));
    if (wrong >= 0) return { trouble: say("paste-no-number", { cell: cells[wrong]!.trim().slice(0, 30) }) };
    rows.push(Object.fromEntries(measures.map((measure, index) => [measure, values[index] ?? null])));
  }
  return { rows };
}

/** The same, for a set with so much room left. */
export function pastedInto(
  text: string,
  measures: readonly string[],
  turn: { of: number; shot: number } | null,
): Pasted {
  const pasted = pastedRows(text, measures);
  if ("trouble" in pasted) return pasted;
  const room = turn ? turn.of - turn.shot + 1 : 0;
  return pasted.rows.length > room ? { trouble: say("paste-no-room", { count: pasted.rows.length, room }) } : pasted;
}

/** By tab, semicolon, comma followed by no digit or enough commas, else by blanks. */
function cellsOf(line: string, wanted: number): string[] {
  for (const mark of ["\t", ";", ","]) {
    const cells = line.split(mark);
    if (cells.length === wanted || (mark !== "," && cells.length > 1)) return cells;
  }
  return wanted === 1 ? [line] : line.trim().split(/\s+(?![lr]\b|left\b|right\b)/i);
}
