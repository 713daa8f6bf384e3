/**
 * Where a test under way is kept on this device: one record, written whole after every shot.
 *
 * Nothing is written before the golfer starts logging. A store that is full or blocked rejects; the test goes on in
 * the page's own memory, and the page says so. The mark in the other store tells browsers that do not list their stores to look here.
 */
import { get, promisifyRequest, set, type UseStore } from "idb-keyval";
import { isLog, type TestLog } from "./log.js";
import { DATABASE, isUnderWay, MARK } from "./mark.js";

const SHELF = "log";
const KEY = "test";

/** Opened for every use and closed again: an open store cannot be forgotten. */
const store: UseStore = async (mode, use) => {
  const request = indexedDB.open(DATABASE);
  request.onupgradeneeded = () => request.result.createObjectStore(SHELF);
  const database = await promisifyRequest(request);
  try {
    // Strict: a shot counts as kept when it is on the disk, so that a battery may die in the next second.
    return await use(database.transaction(SHELF, mode, { durability: "strict" }).objectStore(SHELF));
  } finally {
    database.close();
  }
};

/** Resolves when the record is on the device. */
export async function keep(log: TestLog): Promise<void> {
  await set(KEY, log, store);
  localStorage.setItem(MARK, "1");
}

/** The record of the last visit; null where there is none that can be gone on with. */
export async function kept(): Promise<TestLog | null> {
  if (!(await isUnderWay())) return null;
  const found: unknown = await get(KEY, store);
  return isLog(found) ? found : null;
}

/** Empties everything the page has ever stored of the golfer; nothing is left, not even an empty store. */
export async function forgetEverything(): Promise<void> {
  localStorage.removeItem(MARK);
  await promisifyRequest(indexedDB.deleteDatabase(DATABASE));
}
