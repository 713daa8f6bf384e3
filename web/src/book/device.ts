/**
 * Shelves on the device, in IndexedDB: every write is one transaction, and is over when it is on the disk.
 *
 * The store is opened with the first use. It lets go of it when another tab wants to empty it or has a newer version.
 */
import { deleteDB, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import { DATABASE } from "../state/under-way.js";
import { migrate, VERSION } from "./migrations.js";
import { type Key, NAMES, type Part, type Reader, type Shelf, type Store, type Writer } from "./store.js";

/** A tab with a newer version of the page has taken the store over: this one may read and write nothing of it. */
export class NewerVersion extends Error {}

/** The store was there and is not any more: the browser has cleared it, or another tab has. It is not made anew in silence. */
export class Gone extends Error {}

/** Whether the store is there, without making one; true also where a newer page has it. */
export async function isThere(name = DATABASE): Promise<boolean> {
  try {
    const database = await openDB(name, VERSION, { upgrade: orNot(() => undefined) });
    database.close();
    return true;
  } catch (failed) {
    return failed instanceof DOMException && failed.name === "VersionError";
  }
}

type Upgrading = NonNullable<NonNullable<Parameters<typeof openDB>[2]>["upgrade"]>;

/** Brings an older store up to date, and leaves none where there was none. */
const orNot =
  (none: () => void): Upgrading =>
  (database, from, _to, during) => {
    if (from > 0) return migrate(database, from, during);
    none();
    during.done.catch(() => undefined);
    during.abort();
  };

export function onDevice(name = DATABASE, version = VERSION): Store {
  let opened: Promise<IDBPDatabase> | null = null;
  let hasBeen = false;
  const open = (): Promise<IDBPDatabase> => {
    let isGone = false;
    opened ??= openDB(name, version, {
      upgrade: hasBeen
        ? orNot(() => (isGone = true))
        : (database, from, _to, during) => migrate(database, from, during),
      // Another tab waits for this one: to empty the store, or with a newer version of it.
      blocking: (_current, _blocked, event) => {
        (event.target as IDBDatabase).close();
        opened = null;
      },
      terminated: () => {
        opened = null;
      },
    }).catch((failed: unknown) => {
      opened = null;
      if (isGone) throw new Gone(name);
      throw failed instanceof DOMException && failed.name === "VersionError"
        ? new NewerVersion(failed.message)
        : failed;
    });
    return opened;
  };
  /** Once more where the connection was lost, as after the browser emptied the store. */
  const begun = async <Mode extends IDBTransactionMode>(mode: Mode) => {
    try {
      const database = await open();
      hasBeen = true;
      return database.transaction(NAMES, mode, { durability: "strict" });
    } catch (failed) {
      if (!(failed instanceof DOMException) || failed.name !== "InvalidStateError") throw failed;
      opened = null;
      return (await open()).transaction(NAMES, mode, { durability: "strict" });
    }
  };
  return {
    where: "device",
    read: async (use) => use(reader(await begun("readonly"))),
    write: (use) =>
      alone(async () => {
        const during = await begun("readwrite");
        try {
          const done = await use(writer(during));
          await during.done;
          return done;
        } catch (failed) {
          // What the transaction itself says of its end is said by what failed.
          during.done.catch(() => undefined);
          try {
            during.abort();
          } catch {
            // It has ended already.
          }
          throw failed;
        }
      }),
    empty: async () => {
      await opened?.then((database) => database.close()).catch(() => undefined);
      opened = null;
      await deleteDB(name);
    },
  };
}

/** One tab writes at a time, also over what it reads before. */
const alone = <T>(work: () => Promise<T>): Promise<T> =>
  typeof navigator !== "undefined" && navigator.locks
    ? (navigator.locks.request(DATABASE, work) as Promise<T>)
    : work();

type During<Mode extends IDBTransactionMode> = IDBPTransaction<unknown, Shelf[], Mode>;

function reader(during: During<IDBTransactionMode>): Reader {
  const at = (shelf: Shelf, { index }: Part) => {
    const store = during.objectStore(shelf);
    return index ? store.index(index) : store;
  };
  return {
    get: (shelf, key) => during.objectStore(shelf).get(key as IDBValidKey),
    count: (shelf, part) => at(shelf, part).count(range(part)),
    find: async (shelf, part) => {
      const { newest, most } = part;
      if (!newest) return at(shelf, part).getAll(range(part), most);
      const found: unknown[] = [];
      let cursor = await at(shelf, part).openCursor(range(part), "prev");
      while (cursor && found.length < (most ?? Infinity)) {
        found.push(cursor.value);
        // What nobody asks for is not read.
        cursor = found.length < (most ?? Infinity) ? await cursor.continue() : null;
      }
      return found;
    },
  };
}

const writer = (during: During<"readwrite">): Writer => ({
  ...reader(during),
  put: async (shelf, value) => {
    await during.objectStore(shelf).put(value);
  },
  remove: (shelf, key: Key) => during.objectStore(shelf).delete(key as IDBValidKey),
});

function range({ from, to, isBelow = false }: Part): IDBKeyRange | undefined {
  if (from !== undefined && to !== undefined) return IDBKeyRange.bound(from, to, false, isBelow);
  if (from !== undefined) return IDBKeyRange.lowerBound(from);
  return to === undefined ? undefined : IDBKeyRange.upperBound(to, isBelow);
}
