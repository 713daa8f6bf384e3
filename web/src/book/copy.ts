/** The whole book as one file, and such a file as what a book holds. The site publishes its form as `book.schema.json`. */
import type { Book } from "./book.js";
import { withMeta } from "./book.js";
import { isLocked, type Locked, locked } from "./lock.js";
import { type Contents, mergedWith, readable } from "./merge.js";
import type { Kept, KeptShot } from "./records.js";
import type { Reader } from "./store.js";

export const FORMAT = "straight-answer-book";
export const LOCKED_FORMAT = "straight-answer-book-locked";
export const VERSION = 1;

export interface BookFile {
  format: typeof FORMAT;
  version: typeof VERSION;
  /** The version of the page that wrote it. */
  page: string;
  /** The last revision in it. */
  revision: number;
  records: Kept[];
  bodies: unknown[];
  shots: KeptShot[];
  /** Records that could not be read, as they lie in the store. */
  damaged: unknown[];
}

/** All of it, what was deleted and can be taken back too; records that cannot be read lie beside. */
export const contentsOf = (book: Book): Promise<Contents & { damaged: unknown[] }> => book.store.read(contentsIn);

async function contentsIn(from: Reader): Promise<Contents & { damaged: unknown[] }> {
  const raw = {
    records: await from.find("records", {}),
    bodies: await from.find("bodies", {}),
    shots: await from.find("shots", {}),
  };
  const { records, bodies, shots } = readable(raw);
  const sound = new Set<unknown>([...records, ...bodies, ...shots]);
  return {
    records,
    bodies,
    shots,
    damaged: Object.values(raw)
      .flat()
      .filter((one) => !sound.has(one)),
  };
}

/** What belongs to one visit: the person, the day, and all that was kept of it. */
function ofVisit({ records, bodies, shots }: Contents, visit: string): Contents {
  const own = records.filter(({ id, data }) => id === visit || ("visit" in data && data.visit === visit));
  const people = new Set(own.map(({ data }) => ("person" in data ? data.person : "")));
  const all = [...records.filter(({ id }) => people.has(id)), ...own];
  const ids = new Set(all.map(({ id }) => id));
  return {
    records: all,
    bodies: bodies.filter(({ id }) => ids.has(id)),
    shots: shots.filter(({ test }) => ids.has(test)),
  };
}

/** The text of a copy, of the whole book or of one visit, locked where a passphrase is given. */
export async function copyOf(
  book: Book,
  page: string,
  passphrase: string,
  visit?: string,
): Promise<{ text: string; revision: number }> {
  const { revision } = await book.meta();
  const whole = await contentsOf(book);
  const { records, bodies, shots } = visit === undefined ? whole : ofVisit(whole, visit);
  const damaged = visit === undefined ? whole.damaged : [];
  // What a record is found by is made anew where it is opened.
  const bare = records.map(({ live: _l, row: _r, open: _o, words: _w, ...kept }) => kept as Kept);
  const file: BookFile = {
    format: FORMAT,
    version: VERSION,
    page,
    revision,
    records: bare,
    bodies: [...bodies],
    shots: shots.map(({ live: _, ...shot }) => shot),
    damaged,
  };
  const text = JSON.stringify(file);
  if (passphrase === "") return { text, revision };
  return {
    text: JSON.stringify({ format: LOCKED_FORMAT, version: VERSION, ...(await locked(text, passphrase)) }),
    revision,
  };
}

/** Why a file is no copy that this page opens. */
export type NoCopy = "no_copy" | "later_version";

export type Found =
  | { is: "book"; contents: Contents & { unreadable: number } }
  | { is: "locked"; file: Locked }
  | { is: NoCopy };

export function found(text: string): Found {
  let file: Partial<Omit<BookFile, "format" | "version">> & { format?: unknown; version?: unknown };
  try {
    file = JSON.parse(text.replace(/^\uFEFF/, "")) ?? {};
  } catch {
    return { is: "no_copy" };
  }
  if (file.format !== FORMAT && file.format !== LOCKED_FORMAT) return { is: "no_copy" };
  if (typeof file.version !== "number" || file.version > VERSION) return { is: "later_version" };
  if (file.format === LOCKED_FORMAT) return isLocked(file) ? { is: "locked", file } : { is: "no_copy" };
  const { records, bodies, shots } = file;
  if (!Array.isArray(records) || !Array.isArray(bodies) || !Array.isArray(shots)) return { is: "no_copy" };
  return { is: "book", contents: readable({ records, bodies, shots }) };
}

/** Puts a copy in as its preview has shown; what was written here meanwhile is minded too. */
export const takeOver = (book: Book, copy: Contents): Promise<void> =>
  book.change(async (to, next) => {
    const { records, bodies, shots } = mergedWith(await contentsIn(to), copy).put;
    for (const one of records) await to.put("records", one);
    for (const one of bodies) await to.put("bodies", one);
    for (const one of shots) await to.put("shots", one);
    // Revisions given out from here on are after those that came.
    const last = [...records, ...shots].reduce((most, { revision }) => Math.max(most, revision), next());
    await withMeta(to, { revision: last });
  });
