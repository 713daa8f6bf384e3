/** Photos that were read, as texts for the reader: one table over several photos, and big numbers as the form of averages. Pure. */
import type { Measure, ReadResult } from "../core/engine.js";
import type { Averages, AveragesOfClub } from "../entry/averages.js";
import type { NewText } from "../state/texts.js";
import { shownIn } from "../text/units.js";
import { type Checked, rowsOf } from "./checked.js";

/** One line for each row, cells set apart by tabs. */
const lineOf = (cells: readonly string[]): string => cells.map((cell) => cell.replace(/[\t\n\r"]/g, " ")).join("\t");

const headingsOf = ({ reading }: Checked): string[] => reading.columns.map(({ heading }) => heading);

const isSame = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((text, at) => text === other[at]);

const bare = (headings: readonly string[]): string[] =>
  headings.map((text) => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, ""));

/** Whether a photo shows more of the table of another: the same headings, or none and as many columns. */
function goesOn(before: Checked, next: Checked): boolean {
  const [one, other] = [bare(headingsOf(before)), bare(headingsOf(next))];
  const isSilent = other.every((text) => text === "");
  return one.length === other.length && (isSilent || isSame(one, other));
}

/** Rows of a photo after those of another; what both show at the seam stands once. */
export function joined(before: readonly string[][], next: readonly string[][]): string[][] {
  const most = Math.min(before.length, next.length);
  for (let shared = most; shared > 0; shared--) {
    const end = before.slice(-shared);
    if (end.every((row, at) => isSame(row, next[at]!))) return [...before, ...next.slice(shared)];
  }
  return [...before, ...next];
}

/** A text for each table. */
export function textsOf(photos: readonly Checked[]): NewText[] {
  const tables: { names: string[]; first: Checked; rows: string[][] }[] = [];
  for (const photo of photos) {
    const last = tables.at(-1);
    if (last && goesOn(last.first, photo)) {
      last.rows = joined(last.rows, rowsOf(photo));
      last.names.push(photo.name);
    } else tables.push({ names: [photo.name], first: photo, rows: rowsOf(photo) });
  }
  return tables.map(({ names, first, rows }) => {
    const { above, below } = first.reading;
    const headings = headingsOf(first);
    const lines = [...above, ...(headings.some((text) => text !== "") ? [lineOf(headings)] : []), ...rows.map(lineOf)];
    const text = `${[...lines, ...below].join("\n")}\n`;
    return { source: { kind: "photo", name: names.join(", "), text } };
  });
}

/** The big numbers of a screen as a table of one row: by its headings the reader tells what they are. */
export const tileText = (photo: Checked): string => `${[headingsOf(photo), ...rowsOf(photo)].map(lineOf).join("\n")}\n`;

/** The form of averages, filled with what was read of each screen; how many shots they stand for is left to say. */
export function averagesOf(
  photos: readonly { photo: Checked; read: ReadResult }[],
  measures: readonly Measure[],
  named: (number: number) => string,
): Averages {
  const columns: string[] = [];
  const units: Record<string, string> = {};
  const clubs = photos.map(({ photo, read }, at): AveragesOfClub => {
    const [numbers = []] = rowsOf(photo);
    const values: Record<string, { average: string; deviation: string }> = {};
    for (const { index, role, unit } of read.reading.columns) {
      const measure = typeof role === "object" && "measure" in role ? role.measure : null;
      const number = numbers[index] ?? "";
      if (measure === null || number === "" || values[measure] || !measures.some(({ id }) => id === measure)) continue;
      if (!columns.includes(measure)) columns.push(measure);
      const shown = shownIn(measures.find(({ id }) => id === measure)?.unit ?? "").unit;
      if (unit !== "" && unit !== shown) units[measure] = unit;
      values[measure] = { average: number, deviation: "" };
    }
    return { name: nameOf(photo) || named(at + 1), shots: "", of: "all", values };
  });
  return { clubs, columns, units };
}

/** What stands above the numbers, up to its first comma. */
const nameOf = ({ reading }: Checked): string => (reading.above[0] ?? "").split(",")[0]!.trim().slice(0, 80);
