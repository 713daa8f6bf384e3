/**
 * The book: the store of this device with its clock, its copies and what other tabs are told.
 *
 * Where the device keeps nothing it lies in memory, and whoever shows it says so.
 */

import { SHELF } from "../state/shelf-name.js";
import { isAnythingKept, MARK } from "../state/under-way.js";
import { isThere, NewerVersion, onDevice } from "./device.js";
import { inMemory } from "./memory.js";
import { nextRevision } from "./records.js";
import type { Store, Writer } from "./store.js";
import { onTold, tell } from "./told.js";

/** What the store says of itself. */
export interface Meta {
  id: "book";
  /** The last revision that was given out. */
  revision: number;
  /** The last revision that is in a copy. */
  copied?: number;
  /** Whether the browser promised not to clear the store by itself; not there before it was asked. */
  isPersistent?: boolean;
}

/** Gives out revisions, each after the last. */
export type Clock = () => number;

export interface Book {
  store: Store;
  /** Changes something, all of it or nothing, and tells other tabs of it. */
  change<T>(use: (to: Writer, next: Clock) => Promise<T>): Promise<T>;
  meta(): Promise<Meta>;
}

export function bookIn(store: Store, now: () => number = Date.now): Book {
  return {
    store,
    meta: () => store.read(async (from) => metaOf(await from.get("meta", "book"))),
    change: async (use) => {
      let last = 0;
      const done = await store.write(async (to) => {
        const meta = metaOf(await to.get("meta", "book"));
        last = meta.revision;
        const next = () => (last = nextRevision(last, now()));
        const value = await use(to, next);
        const after = metaOf(await to.get("meta", "book"));
        if (last > after.revision) await to.put("meta", { ...after, revision: last });
        return value;
      });
      tell({ kind: "changed" });
      return done;
    },
  };
}

const metaOf = (value: unknown): Meta => {
  const meta = value as Partial<Meta> | undefined;
  return { ...meta, id: "book", revision: typeof meta?.revision === "number" ? meta.revision : 0 };
};

export const withMeta = (to: Writer, patch: Partial<Meta>): Promise<void> =>
  to.get("meta", "book").then((value) => to.put("meta", { ...metaOf(value), ...patch }));

let opened: Promise<Book> | null = null;

/** The book of this device. A device that keeps nothing gives one that lies in memory until the page is closed. */
export function openBook(): Promise<Book> {
  opened ??= begin();
  return opened;
}

/** How often a store that is there is opened before the book goes on in memory. */
const ATTEMPTS = 4;

async function begin(): Promise<Book> {
  const store = onDevice();
  // What another tab has emptied is not opened again by this one.
  const listening = onTold(({ kind }) => {
    if (kind !== "emptied") return;
    opened = null;
    listening();
  });
  for (let attempt = 1; ; attempt += 1) {
    try {
      await store.read(async (from) => from.get("meta", "book"));
      return bookIn(store);
    } catch (failed) {
      // Somebody newer has the store: what lies there must not look as if it were gone.
      if (failed instanceof NewerVersion) {
        opened = null;
        throw failed;
      }
      // After a crash a store may need a moment before it opens.
      if (attempt >= ATTEMPTS || !(await isAnythingKept())) return bookIn(inMemory());
      await new Promise((done) => setTimeout(done, 300 * attempt));
    }
  }
}

/** The book, if anything is in it: looking leaves nothing behind. */
export async function openIfKept(): Promise<Book | null> {
  if (opened && (await opened).store.where === "memory") return opened;
  if ((await isAnythingKept()) && (await isThere())) return openBook();
  opened = null;
  return null;
}

/** Empties everything the page has ever kept of the golfer, in every tab; nothing is left, not even an empty store. */
export async function forgetEverything(book: Book): Promise<void> {
  await book.store.empty();
  opened = null;
  try {
    localStorage.removeItem(MARK);
    sessionStorage.clear();
    await caches.delete(SHELF);
  } catch {
    // Where they are blocked nothing is in them.
  }
  tell({ kind: "emptied" });
}

/** The browser has cleared the store: what is written next makes a new one. */
export function begunAnew(): void {
  opened = null;
}
