/**
 * Shelves of records behind one small interface: on the device where it keeps them, in this page's memory where it does not.
 *
 * A record holds in itself what it is found by. Inside of `read` and `write` nothing else may be waited for.
 */

/** The shelves, what names a record on each, and by what else it is found. */
export const SHELVES = {
  meta: { key: "id", indexes: {} },
  records: {
    key: "id",
    indexes: {
      row: { path: "row" },
      rowOf: { path: ["data.person", "row"] },
      kind: { path: ["kind", "live"] },
      ofPerson: { path: ["kind", "data.person", "live"] },
      ofVisit: { path: ["data.visit", "live"] },
      words: { path: "words", isList: true },
      open: { path: "open" },
      gone: { path: "gone" },
    },
  },
  bodies: { key: "id", indexes: {} },
  shots: { key: ["test", "at"], indexes: { live: { path: ["test", "live"] }, gone: { path: "gone" } } },
} as const satisfies Record<string, { key: Path; indexes: Record<string, { path: Path; isList?: boolean }> }>;

export type Path = string | readonly string[];
export type Shelf = keyof typeof SHELVES;
export const NAMES = Object.keys(SHELVES) as Shelf[];
export type Key = number | string | readonly Key[];

/** What is found by an index: between two keys, at most so many, the highest first if so wanted. */
export interface Part {
  index?: string;
  from?: Key;
  to?: Key;
  /** Without the highest key itself, to go on from there. */
  isBelow?: boolean;
  newest?: boolean;
  most?: number;
}

export interface Reader {
  get(shelf: Shelf, key: Key): Promise<unknown>;
  find(shelf: Shelf, part: Part): Promise<unknown[]>;
  count(shelf: Shelf, part: Part): Promise<number>;
}

export interface Writer extends Reader {
  put(shelf: Shelf, value: object): Promise<void>;
  remove(shelf: Shelf, key: Key): Promise<void>;
}

export interface Store {
  /** Where the records lie; in memory they are gone with the page. */
  where: "device" | "memory";
  read<T>(use: (from: Reader) => Promise<T>): Promise<T>;
  /** All of it or nothing; settled once it is on the disk. */
  write<T>(use: (to: Writer) => Promise<T>): Promise<T>;
  /** Takes the store itself away, not only what is in it. */
  empty(): Promise<void>;
}

/** Keys from one that begin alike: `[person]` up to the last row of that person. */
export const allOf = (...beginning: Key[]): Pick<Part, "from" | "to"> => ({
  from: beginning,
  to: [...beginning, []],
});

/** What a record has at a path, if that can be a key. */
export function keyAt(value: unknown, path: Path): Key | undefined {
  if (typeof path !== "string") {
    const keys = path.map((one) => keyAt(value, one));
    return keys.every((key) => key !== undefined) ? (keys as Key[]) : undefined;
  }
  const found = path
    .split(".")
    .reduce<unknown>((at, name) => (at as Record<string, unknown> | undefined)?.[name], value);
  const isKey =
    typeof found === "string" || Array.isArray(found) || (typeof found === "number" && !Number.isNaN(found));
  return isKey ? (found as Key) : undefined;
}

/** The order of keys on a device: numbers, then texts, then lists. */
export function compare(a: Key, b: Key): number {
  const rank = (key: Key) => (typeof key === "number" ? 0 : typeof key === "string" ? 1 : 2);
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  if (typeof a !== "object" || typeof b !== "object") return a < b ? -1 : a > b ? 1 : 0;
  for (const [at, one] of a.entries()) {
    const other = b[at];
    const order = other === undefined ? 1 : compare(one, other);
    if (order !== 0) return order;
  }
  return a.length - b.length;
}
