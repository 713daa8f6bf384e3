/**
 * The versions of the store on the device, and how each becomes the next. A step once made is never changed.
 *
 * 1: one record, the test under way, written whole after every shot. 2: shelves of records.
 */
import type { IDBPDatabase, IDBPTransaction } from "idb";
import type { LoggedShot } from "../core/planner.js";
import { findable, type KeptShot, made, nextRevision, type TestData } from "./records.js";
import { NAMES, type Path, SHELVES } from "./store.js";

export const VERSION = 2;

type Upgrade = IDBPTransaction<unknown, string[], "versionchange">;

/** From whatever version is there. Nothing but the store itself is waited for: the upgrade would end meanwhile. */
export async function migrate(database: IDBPDatabase, from: number, during: unknown): Promise<void> {
  if (from < 2) await toShelves(database, during as Upgrade);
}

/** What version 1 kept under this name, on this one shelf. */
const FIRST = { shelf: "log", key: "test" };

async function toShelves(database: IDBPDatabase, during: Upgrade): Promise<void> {
  const has = (database.objectStoreNames as DOMStringList).contains(FIRST.shelf);
  const before: unknown = has ? await during.objectStore(FIRST.shelf).get(FIRST.key) : undefined;
  for (const name of NAMES) {
    const { key, indexes } = SHELVES[name];
    const shelf = database.createObjectStore(name, { keyPath: key as string | string[] });
    for (const [index, { path, isList = false }] of Object.entries<{ path: Path; isList?: boolean }>(indexes))
      shelf.createIndex(index, path as string | string[], { multiEntry: isList });
  }
  if (before !== undefined) await moved(before, during);
  // A tab of the older version finds no shelf to write to, and says so.
  if (has) database.deleteObjectStore(FIRST.shelf);
}

interface FirstLog extends Omit<TestData, "person" | "visit" | "line" | "version" | "isOver"> {
  version: 1;
  shots: LoggedShot[];
}

/** The test under way becomes one of many; what cannot be read is kept as it is. */
async function moved(before: unknown, during: Upgrade): Promise<void> {
  const id = "first";
  if (!isFirst(before)) {
    await during.objectStore("bodies").put({ id, damaged: before });
    return;
  }
  const { plan, measures, warm, ended, looks, hand = null, say = null, shots } = before;
  const begun = nextRevision(0, Date.now() - shots.length - 1);
  const last = begun + shots.length;
  const head = { plan, measures, warm, ended, looks, hand, say };
  const data: TestData = { ...head, person: "", visit: "", line: "", version: "", isOver: false };
  await during.objectStore("records").put({ ...findable(made("test", id, data, begun)), revision: last });
  for (const [index, logged] of shots.entries()) {
    const at = begun + 1 + index;
    const shot: KeptShot = { test: id, at, live: at, revision: at, data: logged };
    await during.objectStore("shots").put(shot);
  }
  await during.objectStore("meta").put({ id: "book", revision: last });
}

function isFirst(value: unknown): value is FirstLog {
  const log = value as Partial<FirstLog> | null | undefined;
  return (
    typeof log === "object" &&
    log !== null &&
    log.version === 1 &&
    [log.shots, log.measures, log.ended, log.looks].every(Array.isArray) &&
    Array.isArray(log.plan?.builds)
  );
}
