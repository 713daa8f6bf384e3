/**
 * Tests under way, any number: each shot is a record of its own, appended; what is taken back is marked and stays.
 *
 * Whoever writes says which revision it has seen. After another tab has written, that is refused, and read anew.
 */
import type { LoggedShot } from "../core/planner.js";
import { MARK, OTHER, TEST } from "../state/under-way.js";
import type { Book, Clock } from "./book.js";
import { changed, isKept, isKeptShot, type Kept, type KeptShot, made, type TestData } from "./records.js";
import { allOf, type Reader, type Writer } from "./store.js";

/** What is written down of a test while it is logged. */
export interface Log extends Omit<TestData, "person" | "visit" | "line" | "version" | "isOver"> {
  shots: LoggedShot[];
}

/** A test as it stands in the book. */
export interface Standing {
  test: Kept<"test">;
  log: Log;
}

/** Another tab has written to the test, or it is gone: nothing was written. */
export class Overtaken extends Error {}

/** Writes a test down as it goes on. */
export interface Keeper {
  readonly id: string;
  /** Settled once it is on the device. */
  keep(log: Log): Promise<void>;
  /** Says something of the test that is no shot. */
  note(patch: Partial<TestData>): Promise<void>;
  /** As another tab has left it; null when it is gone. */
  reload(): Promise<Standing | null>;
}

export const newId = (): string =>
  // Only a page that came by a safe way has the first.
  crypto.randomUUID?.() ?? Array.from(crypto.getRandomValues(new Uint32Array(4)), (part) => part.toString(36)).join("");

/** A test that begins now, of somebody or of nobody. */
export async function begin(book: Book, log: Log, of: { person: string; visit: string }): Promise<Keeper> {
  const { shots: _, ...head } = log;
  const data: TestData = { ...head, ...of, line: "", version: "", isOver: false };
  const test = await book.change(async (to, next) => {
    const begun = made("test", newId(), data, next());
    await to.put("records", begun);
    return begun;
  });
  marked(book);
  return keeper(book, { test, log: { ...log, shots: [] } });
}

/** Goes on with a test as it stands. */
export function keeper(book: Book, from: Standing): Keeper {
  let { test, log: written } = from;
  let before: Promise<unknown> = Promise.resolve();
  /** One after the other, however fast the thumbs are: each knows what the last has written. */
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const done = before.then(work, work);
    before = done.catch(() => undefined);
    return done;
  };
  const put = (log: Log, patch: Partial<TestData>): Promise<void> =>
    inTurn(async () => {
      const { shots, ...head } = log;
      const now = await book.change(async (to, next) => {
        const found = await to.get("records", test.id);
        if (!isKept(found) || found.gone !== undefined || found.revision !== test.revision)
          throw new Overtaken(test.id);
        await follow(to, next, test.id, written.shots, shots);
        // Written anew with every shot: a revision says whether somebody else was here.
        const after = { ...changed(test, { ...head, ...patch }, next()), revision: next() };
        await to.put("records", after);
        return after;
      });
      test = now;
      written = log;
      marked(book);
    });
  return {
    id: test.id,
    keep: (log) => put(log, {}),
    note: (patch) => put(written, patch),
    reload: () =>
      inTurn(async () => {
        const now = await standing(book, test.id);
        if (now) [test, written] = [now.test, now.log];
        return now;
      }),
  };
}

/** The shots as they are now, from those that are written: appended, taken back, or with another note. */
async function follow(
  to: Writer,
  next: Clock,
  test: string,
  before: readonly LoggedShot[],
  after: readonly LoggedShot[],
): Promise<void> {
  let same = 0;
  while (same < before.length && same < after.length && before[same] === after[same]) same += 1;
  const last = await to.find("shots", { index: "live", ...allOf(test), newest: true, most: before.length - same });
  const old = last.filter(isKeptShot).reverse();
  for (const [at, logged] of after.slice(same).entries()) {
    const kept = old[at];
    const isNoted = kept && JSON.stringify({ ...kept.data, note: null }) === JSON.stringify({ ...logged, note: null });
    if (isNoted) await to.put("shots", { ...kept, data: logged, revision: next() });
    else {
      if (kept) await to.put("shots", takenBack(kept, next()));
      const revision = next();
      const shot: KeptShot = { test, at: revision, live: revision, revision, data: logged };
      await to.put("shots", shot);
    }
  }
  for (const kept of old.slice(after.length - same)) await to.put("shots", takenBack(kept, next()));
}

const takenBack = ({ live: _, ...shot }: KeptShot, revision: number): KeptShot => ({
  ...shot,
  gone: Date.now(),
  revision,
});

/** A test with its shots; null when there is none that can be gone on with. */
export const standing = (book: Book, id: string): Promise<Standing | null> =>
  book.store.read((from) => standingIn(from, id));

export async function standingIn(from: Reader, id: string): Promise<Standing | null> {
  const found = await from.get("records", id);
  if (!isKept(found) || found.kind !== "test" || found.gone !== undefined) return null;
  const test = found as Kept<"test">;
  const shots = (await from.find("shots", { index: "live", ...allOf(id) })).filter(isKeptShot).map(({ data }) => data);
  const { plan, measures, warm, ended, looks, hand, say } = test.data;
  return { test, log: { plan, measures, warm, ended, looks, hand, say, shots } };
}

/** Tests that somebody goes on with, the newest first. */
export const underWay = (book: Book): Promise<Kept<"test">[]> =>
  book.store.read(async (from) => {
    const open = await from.find("records", { index: "open", newest: true, most: 20 });
    return open.filter((one): one is Kept<"test"> => isKept(one) && one.kind === "test");
  });

/** Says it for those who may not open the store to know. */
export async function mark(book: Book): Promise<void> {
  if (book.store.where !== "device") return;
  const [open] = await underWay(book);
  marked(book, open ? TEST : OTHER);
}

function marked(book: Book, as = TEST): void {
  if (book.store.where !== "device") return;
  try {
    localStorage.setItem(MARK, as);
  } catch {
    // Without the mark the store is asked.
  }
}
