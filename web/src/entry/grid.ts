/**
 * What is typed into the grid, as a text for the reader: rows of cells for each club. Pure.
 *
 * No number is understood here. `written` makes the text and says what its columns and lines are; the core reads it
 * like any other, and `mistakes` brings what it says of a place back to the cell.
 */
import type { Hints, Measure, ReadResult, Role } from "../core/engine.js";
import { say } from "../text/say.js";
import { shownIn } from "../text/units.js";

export interface Club {
  name: string;
  /** Cells as typed, in the order of the grid's columns. */
  rows: readonly (readonly string[])[];
}

export interface Grid {
  clubs: readonly Club[];
  /** Ids of measures, or `round`. */
  columns: readonly string[];
  /** Units by column, where they are not the usual ones. */
  units: Readonly<Record<string, string>>;
}

export interface Cell {
  club: number;
  row: number;
  column: number;
}

/** What the core says of a cell, or of a whole row (`column` −1). */
export interface Mistake extends Cell {
  message: string;
  suggestion: string | null;
}

/** The column that tells the rounds. */
export const ROUND = "round";
/** As many columns as a phone shows without being pushed aside. */
const USUAL_COLUMNS = ["carry", "offline"];
/** Clubs of an empty grid or form; their names wait to be typed over. */
const names = (): readonly [string, string] => [say("sample-mine"), say("sample-new")];

/** An empty grid for the clubs that are known and one more, or for two. */
export const emptyGrid = (names: readonly string[]): Grid => ({
  clubs: namesFor(names).map((name) => ({ name, rows: [] })),
  columns: USUAL_COLUMNS,
  units: {},
});

/** A session of one club lacks the other one. */
export const namesFor = (known: readonly string[]): readonly string[] =>
  known.length === 1 ? [...known, names()[1]] : known.length > 1 ? known : names();

/** A column's heading. */
export function headingOf(
  column: string,
  { units }: Grid,
  measures: readonly Measure[],
): { name: string; unit: string } {
  const measure = measures.find(({ id }) => id === column);
  return { name: measure?.name ?? say("entry-round"), unit: units[column] ?? shownIn(measure?.unit ?? "").unit };
}

/** The cell with other text; rows and cells up to it come into being. */
export function withCell(grid: Grid, { club, row, column }: Cell, text: string): Grid {
  const clubs = grid.clubs.map((one, at) => {
    if (at !== club) return one;
    const rows = Array.from({ length: Math.max(one.rows.length, row + 1) }, (_, index) => one.rows[index] ?? []);
    const cells = Array.from({ length: grid.columns.length }, (_, index) => rows[row]?.[index] ?? "");
    cells[column] = text;
    rows[row] = cells;
    return { ...one, rows };
  });
  return { ...grid, clubs };
}

/** Cells of a spreadsheet set in from a cell on, and how many columns found no place. */
export function withPasted(grid: Grid, from: Cell, text: string): { grid: Grid; left: number } {
  const rows = text
    .replace(/\r\n?/g, "\n")
    .replace(/\n+$/, "")
    .split("\n")
    .map((line) => line.split("\t"));
  const room = grid.columns.length - from.column;
  const filled = rows.reduce(
    (before, cells, down) =>
      cells
        .slice(0, room)
        .reduce(
          (now, cell, across) =>
            withCell(now, { ...from, row: from.row + down, column: from.column + across }, cell.trim()),
          before,
        ),
    grid,
  );
  return { grid: filled, left: Math.max(0, ...rows.map((cells) => cells.length - room)) };
}

/** Whether a paste is several cells rather than one. */
export const isSeveralCells = (text: string): boolean => /[\t\n\r]/.test(text.trim());

export const withName = (grid: Grid, club: number, name: string): Grid => ({
  ...grid,
  clubs: grid.clubs.map((one, at) => (at === club ? { ...one, name } : one)),
});

export const withClub = (grid: Grid): Grid => ({
  ...grid,
  clubs: [...grid.clubs, { name: say("entry-club", { number: grid.clubs.length + 1 }), rows: [] }],
});

export const withColumn = (grid: Grid, column: string): Grid =>
  grid.columns.includes(column) ? grid : { ...grid, columns: [...grid.columns, column] };

/** The grid without a column and what was typed in it. */
export function withoutColumn(grid: Grid, column: string): Grid {
  const out = grid.columns.indexOf(column);
  if (out < 0) return grid;
  const clubs = grid.clubs.map((one) => ({
    ...one,
    rows: one.rows.map((cells) => cells.filter((_, at) => at !== out)),
  }));
  return { ...grid, clubs, columns: grid.columns.filter((one) => one !== column) };
}

/** The first cell below or beside this one that comes next when typing. */
export const nextCell = ({ club, row, column }: Cell, { columns }: Grid): Cell =>
  column + 1 < columns.length ? { club, row, column: column + 1 } : { club, row: row + 1, column: 0 };

/** Rows with anything in them. */
export const shotsOf = ({ rows }: Club): number => rows.filter(isFilled).length;

const isFilled = (cells: readonly string[]): boolean => cells.some((cell) => cell.trim() !== "");

/** The text, what the reader is told of it, and which row of which club stands on each line after the first. */
export interface Written {
  text: string;
  hints: Hints;
  rows: readonly { club: number; row: number }[];
}

export function written(grid: Grid, measures: readonly Measure[]): Written {
  const headings = grid.columns.map((column) => {
    const { name, unit } = headingOf(column, grid, measures);
    return unit === "" ? name : `${name} (${unit})`;
  });
  const rows = grid.clubs.flatMap(({ rows }, club) =>
    rows.flatMap((cells, row) => (isFilled(cells) ? [{ club, row }] : [])),
  );
  const lines = rows.map(({ club, row }) => {
    const { name, rows } = grid.clubs[club]!;
    return [
      name.trim() || say("entry-club", { number: club + 1 }),
      ...grid.columns.map((_, at) => rows[row]?.[at] ?? ""),
    ];
  });
  const roles = grid.columns.map((column): Role => (column === ROUND ? "round" : { measure: column }));
  const hasRounds = grid.columns.includes(ROUND);
  const hints: Hints = {
    delimiter: "tab",
    layout: "rows",
    columns: keyed(["build", ...roles], 0),
    units: Object.fromEntries(
      grid.columns.flatMap((column, at) => (grid.units[column] ? [[at + 1, grid.units[column]]] : [])),
    ),
    lines: keyed(["headings", ...rows.map(() => "shot" as const)], 1),
    // One club's shots stand below the other's here, however they were hit.
    ...(hasRounds ? {} : { order: "unknown" }),
  };
  return { text: textOf([[say("role-build"), ...headings], ...lines]), hints, rows };
}

/** Lines of cells set apart by tabs; what would break a line is written as a blank. */
export const textOf = (lines: readonly (readonly string[])[]): string =>
  lines.map((cells) => `${cells.map(quoted).join("\t")}\n`).join("");

function quoted(cell: string): string {
  const plain = cell.replace(/[\t\r\n]+/g, " ");
  return plain.includes('"') ? `"${plain.replaceAll('"', '""')}"` : plain;
}

/** Values by position, as hints have them. */
export const keyed = <T>(values: readonly T[], from: number): Record<number, T> =>
  Object.fromEntries(values.map((value, at) => [at + from, value]));

/** What the core says of the text, at the cells it says it of. */
export function mistakes(result: ReadResult, { rows }: Written, grid: Grid, measures: readonly Measure[]): Mistake[] {
  const names = grid.columns.map((column) => headingOf(column, grid, measures));
  const columnOf = (said: string | null) =>
    names.findIndex(({ name, unit }) => said === name || said === `${name} (${unit})`);
  const said = [
    ...result.problems.map(({ place, message, suggestion }) => ({ place, message, suggestion })),
    ...result.notices
      .filter(({ kind }) => kind === "implausible")
      .map(({ place, message }) => ({ place, message, suggestion: null })),
  ];
  return said.flatMap(({ place, message, suggestion }) => {
    const at = rows[place.line - 2];
    return at ? [{ ...at, column: columnOf(place.column), message, suggestion }] : [];
  });
}
