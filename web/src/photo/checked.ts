/** What was said of the numbers of a photo by hand, and what is still to be looked at. Pure. */
import type { PhotoCell, PhotoReading } from "../core/photo.js";

/** A photo that was read; what was said of its cells, by their place in the reading. */
export interface Checked {
  name: string;
  reading: PhotoReading;
  said: Readonly<Record<number, string>>;
}

export const begun = (name: string, reading: PhotoReading): Checked => ({ name, reading, said: {} });

/** A number as it stands now: as typed or accepted, else as read. */
export const textAt = ({ reading, said }: Checked, at: number): string => said[at] ?? reading.cells[at]?.text ?? "";

export const isOpen = ({ reading, said }: Checked, at: number): boolean =>
  (reading.cells[at]?.doubts.length ?? 0) > 0 && said[at] === undefined;

/** The cells that are in doubt, most telling first: where a sign may be lost, what is out of line, then the others as they stand. */
export function doubtful({ reading }: Checked): number[] {
  const weight = ({ doubts }: PhotoCell) =>
    doubts.includes("sign") || doubts.includes("missing") ? 0 : doubts.includes("out_of_line") ? 1 : 2;
  const all = reading.cells.map((cell, at) => ({ cell, at })).filter(({ cell }) => cell.doubts.length > 0);
  return all.sort((one, other) => weight(one.cell) - weight(other.cell) || one.at - other.at).map(({ at }) => at);
}

export const openIn = (checked: Checked): number => doubtful(checked).filter((at) => isOpen(checked, at)).length;

export const withSaid = (checked: Checked, at: number, text: string): Checked => ({
  ...checked,
  said: { ...checked.said, [at]: text.trim() },
});

/** The cells of a column of numbers, from the top. */
export const cellsOf = ({ reading }: Checked, column: number): number[] =>
  reading.cells.flatMap((cell, at) => (cell.column === column ? [at] : []));

/** Rows of cells, empty ones too. */
export function rowsOf(checked: Checked): string[][] {
  const { reading } = checked;
  const rows = Array.from({ length: reading.rows }, () => reading.columns.map(() => ""));
  reading.cells.forEach(({ row, column }, at) => {
    rows[row]![column] = textAt(checked, at);
  });
  return rows;
}
