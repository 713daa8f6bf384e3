/** Files into texts: decoded, workbooks opened, sheets offered by name where there are several. */
import type { Engine, Refusal } from "../core/engine.js";
import { asRefusal } from "../core/refusal.js";
import { say } from "../text/say.js";
import type { NewText, Workbook } from "./texts.js";
import { textsOf } from "./texts.js";

/** What came of files: texts, sheets to choose from, or why there is nothing. */
export type Taken = { texts: NewText[] } | { workbook: Workbook } | { refusal: Refusal };

/** Files larger than this are refused before they are read: far beyond any session, and a phone's memory is small. */
const LARGEST_FILE = 50_000_000;

/** Takes files in, in their order; one that cannot be read stops the rest. */
export async function take(files: readonly File[], engine: Pick<Engine, "decode">): Promise<Taken> {
  const texts: NewText[] = [];
  for (const file of files) {
    const taken = await takeOne(file, engine);
    if ("refusal" in taken) return taken;
    // Of several files nobody wants to choose among sheets: all that hold something are taken.
    if ("workbook" in taken && files.length === 1) return taken;
    texts.push(
      ...("workbook" in taken
        ? textsOf(
            taken.workbook,
            taken.workbook.sheets.map((_, at) => at),
          )
        : taken.texts),
    );
  }
  return { texts };
}

async function takeOne(file: File, engine: Pick<Engine, "decode">): Promise<Taken> {
  const { name } = file;
  if (file.size > LARGEST_FILE) return { refusal: tooLarge(name) };
  const bytes = new Uint8Array(await file.arrayBuffer());
  try {
    const text = await engine.decode(bytes, name);
    return text === undefined ? await workbook(bytes, name) : { texts: [{ source: { kind: "file", name, text } }] };
  } catch (thrown) {
    return { refusal: asRefusal(thrown) };
  }
}

async function workbook(bytes: Uint8Array, name: string): Promise<Taken> {
  try {
    const { openWorkbook } = await import("../core/workbook.js");
    const opened = await openWorkbook(bytes, name);
    if ("refusal" in opened) return { refusal: { ...opened.refusal, place: opened.refusal.place || name } };
    const filled = { name, sheets: opened.sheets.filter(({ rows }) => rows > 0) };
    return filled.sheets.length > 1 ? { workbook: filled } : { texts: textsOf(filled, [0]) };
  } catch {
    return { refusal: notLoaded(name) };
  }
}

const tooLarge = (place: string): Refusal => ({
  kind: "too_large",
  place,
  message: say("file-too-large"),
  remedy: say("file-too-large-remedy"),
});

const notLoaded = (place: string): Refusal => ({
  kind: "not_loaded",
  place,
  message: say("workbooks-not-loaded"),
  remedy: say("workbooks-not-loaded-remedy"),
});
