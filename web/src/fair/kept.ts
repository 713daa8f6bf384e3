/** The test on the screen as it is kept: begun, written down, taken over from another tab, and forgotten. */
import { begunAnew, forgetEverything, openBook, openIfKept } from "../book/book.js";
import { Gone, NewerVersion } from "../book/device.js";
import type { TestData } from "../book/records.js";
import { askToPersist, type Counts, counts, people, personOf, visitNow } from "../book/shelf.js";
import { begin, type Keeper, keeper, mark, Overtaken, type Standing, standing, underWay } from "../book/tests.js";
import { type TestLog, VERSION } from "./log.js";

/** What became of a log that was to be written down. */
export type Outcome =
  | { is: "kept"; isPersistent: boolean | null }
  /** In this page alone: the device keeps nothing, its store is full, or a newer page has it. */
  | { is: "not_kept"; isNewer: boolean }
  /** Another tab has gone on with it, as it stands now; null when it is gone. */
  | { is: "overtaken"; log: TestLog | null };

export interface KeptTest {
  /** The test that was asked for, or the newest that somebody goes on with. */
  resume(wanted: string | null): Promise<{ log: TestLog; name: string } | null>;
  begin(log: TestLog, name: string): Promise<Outcome>;
  keep(log: TestLog): Promise<Outcome>;
  /** As another tab left it, when that has written; null when it is gone. */
  reload(): Promise<TestLog | null>;
  note(patch: Partial<TestData>): Promise<void>;
  /** The names of the people in the book. */
  names(): Promise<string[]>;
  counts(): Promise<Counts | null>;
  forget(): Promise<void>;
  /** Nothing is on the screen any more that would be kept. */
  leave(): void;
}

const logOf = ({ log }: Standing): TestLog => ({ version: VERSION, ...log });

export function keptTest(): KeptTest {
  let started: { keeper: Promise<Keeper>; log: TestLog; name: string } | null = null;
  let isPersistent: boolean | null = null;

  const start = async (log: TestLog, name: string): Promise<Keeper> => {
    const book = await openBook();
    const test = await begin(book, log, await visitNow(book, name));
    isPersistent = await askToPersist(book);
    return test;
  };
  const keep = async (log: TestLog): Promise<Outcome> => {
    if (!started) return { is: "not_kept", isNewer: false };
    const { name, log: first } = started;
    // What could not be begun is begun again, and so is what the browser has cleared: all of it is still on the screen.
    const anew = () => start({ ...first, shots: [] }, name);
    started.keeper = started.keeper.catch(anew);
    try {
      await (await started.keeper).keep(log).catch(async (thrown: unknown) => {
        if (!(thrown instanceof Gone) || !started) throw thrown;
        begunAnew();
        started.keeper = anew();
        await (await started.keeper).keep(log);
      });
      const { store } = await openBook();
      return store.where === "device" ? { is: "kept", isPersistent } : { is: "not_kept", isNewer: false };
    } catch (thrown) {
      if (!(thrown instanceof Overtaken)) return { is: "not_kept", isNewer: thrown instanceof NewerVersion };
      return { is: "overtaken", log: await reload() };
    }
  };
  const reload = async (): Promise<TestLog | null> => {
    if (!started || !(await openIfKept())) return null;
    const now = await (await started.keeper).reload();
    return now && logOf(now);
  };
  return {
    resume: async (wanted) => {
      const book = await openIfKept();
      if (!book) return null;
      const id = wanted ?? (await underWay(book))[0]?.id;
      const found = id === undefined ? null : await standing(book, id);
      if (!found) return null;
      const name = await personOf(book, found.test.data.person);
      started = { keeper: Promise.resolve(keeper(book, found)), log: logOf(found), name };
      return { log: logOf(found), name };
    },
    begin: (log, name) => {
      started = { keeper: start(log, name), log, name };
      return keep(log);
    },
    keep,
    reload,
    note: async (patch) => {
      await (await started?.keeper)?.note(patch);
      const book = await openIfKept();
      if (book) await mark(book);
    },
    names: async () => {
      const book = await openIfKept();
      return book ? (await people(book)).map(({ data }) => data.name) : [];
    },
    counts: async () => {
      const book = await openIfKept();
      return book && counts(book);
    },
    forget: async () => {
      const book = await openIfKept();
      started = null;
      if (book) await forgetEverything(book);
    },
    leave: () => {
      started = null;
    },
  };
}
