/** Files into texts: decoded, workbooks opened, sheets offered by name where there are several. */
import { LARGEST_FILE, decode, tooLarge } from "./decode.js";
import type { Refusal } from "./engine.js";
import type { NewText, Workbook } from "./texts.js";
import { textsOf } from "./texts.js";

/** What came of files: texts, sheets to choose from, or why there is nothing. */
export type Taken = { texts: NewText[] } | { workbook: Workbook } | { refusal: Refusal };

/** Takes files in, in their order; one that cannot be read stops the rest. */
export async function take(files: readonly File[]): Promise<Taken> {
  const texts: NewText[] = [];
  for (const file of files) {
    const taken = await takeOne(file);
    if ("refusal" in taken) return taken;
    // Of several files nobody wants to choose among sheets: all that hold something are taken.
    if ("workbook" in taken && files.length === 1) return taken;
    texts.push(...("workbook" in taken ? textsOf(taken.workbook, taken.workbook.sheets.map((_, at) => at)) : taken.texts));
  }
  return { texts };
}

async function takeOne(file: File): Promise<Taken> {
  const { name } = file;
  if (file.size > LARGEST_FILE) return { refusal: tooLarge(name) };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const decoded = decode(bytes, name);
  if ("refusal" in decoded) return decoded;
  if ("text" in decoded) return { texts: [{ source: { kind: "file", name, text: decoded.text } }] };
  return workbook(bytes, name);
}

async function workbook(bytes: Uint8Array, name: string): Promise<Taken> {
  try {
    const { openWorkbook } = await import("./workbook.js");
    const opened = await openWorkbook(bytes, name);
    if ("refusal" in opened) return { refusal: { ...opened.refusal, place: opened.refusal.place || name } };
    const filled = { name, sheets: opened.sheets.filter(({ rows }) => rows > 0) };
    return filled.sheets.length > 1 ? { workbook: filled } : { texts: textsOf(filled, [0]) };
  } catch {
    return { refusal: notLoaded(name) };
  }
}

const notLoaded = (place: string): Refusal => ({
  kind: "not_loaded",
  place,
  message: "What opens workbooks could not be loaded.",
  remedy: "You seem to be offline. Copy the rows with their headings, and paste them here.",
});
