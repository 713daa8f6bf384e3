/** What the book keeps, through everything that can go wrong with a store. */
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, test } from "vitest";
import { bookIn } from "../src/book/book.js";
import { Gone, isThere, NewerVersion, onDevice } from "../src/book/device.js";
import { inMemory } from "../src/book/memory.js";
import { isKept, isKeptShot, nextRevision } from "../src/book/records.js";
import { compare, type Store } from "../src/book/store.js";
import { begin, keeper, type Log, Overtaken, standing, underWay } from "../src/book/tests.js";
import { begun, undone, warmedUp, withMishit, withShot } from "../src/fair/log.js";
import { DATABASE } from "../src/state/under-way.js";

const plan = { builds: ["Own", "New"], measure: "carry", same_club: false };
const start = begun(plan, ["carry"]);
const nobody = { person: "", visit: "" };
const carries = (log: Log | undefined) => log?.shots.map(({ values }) => (values as Record<string, number>)["carry"]);
const hit = (log: Log, carry: number, turn = 0) => withShot(log as typeof start, turn, { carry }, false);

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe.each<[string, () => Store]>([
  ["on the device", () => onDevice()],
  ["in memory", () => inMemory()],
])("%s", (_, store) => {
  test("a test comes back as it was left, shot by shot", async () => {
    const book = bookIn(store());
    const test = await begin(book, start, nobody);
    let log: Log = warmedUp(start);
    for (const carry of [250, 251, 252]) {
      log = hit(log, carry);
      await test.keep(log);
    }
    expect((await standing(book, test.id))?.log).toEqual(withoutVersion(log));
    const { log: back } = undone(log as typeof start);
    await test.keep(back);
    await test.keep(hit(back, 260, 1));
    expect(carries((await standing(book, test.id))?.log)).toEqual([250, 251, 260]);
  });

  test("a shot that is taken back is marked and stays, a note is no new shot", async () => {
    const book = bookIn(store());
    const test = await begin(book, start, nobody);
    const one = hit(start, 250);
    await test.keep(one);
    await test.keep(withMishit(one, true));
    await test.keep(undone(withMishit(one, true)).log);
    const all = await book.store.read((from) => from.find("shots", {}));
    expect(all).toHaveLength(1);
    expect(all.every(isKeptShot)).toBe(true);
    expect(all[0]).toMatchObject({ data: { note: "mishit", values: { carry: 250 } }, gone: expect.any(Number) });
    expect(carries((await standing(book, test.id))?.log)).toEqual([]);
  });

  test("any number of tests are under way, the newest first", async () => {
    const book = bookIn(store());
    const ids = [];
    for (let n = 0; n < 3; n += 1) ids.unshift((await begin(book, start, nobody)).id);
    expect((await underWay(book)).map(({ id }) => id)).toEqual(ids);
  });

  test("keys stand in the order of a device", async () => {
    const keys = [["b", 2], "z", 10, ["a", []], 2, ["a", 5], "a"];
    expect([...keys].sort(compare as never)).toEqual([2, 10, "a", "z", ["a", 5], ["a", []], ["b", 2]]);
    expect([...keys].sort((a, b) => indexedDB.cmp(a, b))).toEqual([...keys].sort(compare as never));
  });
});

const withoutVersion = ({ version: _, ...log }: Log & { version?: number }): Log => log;

test("two tabs: the one that is behind cannot overwrite, reads anew, and loses nothing", async () => {
  const [one, other] = [bookIn(onDevice()), bookIn(onDevice())];
  const here = await begin(one, start, nobody);
  const there = keeper(other, (await standing(other, here.id))!);
  await here.keep(hit(start, 250));
  await expect(there.keep(hit(start, 199))).rejects.toBeInstanceOf(Overtaken);
  const now = (await there.reload())!;
  expect(carries(now.log)).toEqual([250]);
  await there.keep(hit(now.log, 199));
  await expect(here.keep(hit(hit(start, 250), 251))).rejects.toBeInstanceOf(Overtaken);
  expect(carries((await standing(one, here.id))?.log)).toEqual([250, 199]);
});

test("two tabs that write at once leave every shot that either was told is kept", async () => {
  const [one, other] = [bookIn(onDevice()), bookIn(onDevice())];
  const here = await begin(one, start, nobody);
  const there = keeper(other, (await standing(other, here.id))!);
  const told: number[] = [];
  const hits = async (tab: typeof here, first: number) => {
    for (let n = 0; n < 20; n += 1) {
      for (let done = false; !done; ) {
        const { log } = (await tab.reload())!;
        done = await tab.keep(hit(log, first + n)).then(
          () => told.push(first + n) > 0,
          () => false,
        );
      }
    }
  };
  await Promise.all([hits(here, 100), hits(there, 300)]);
  expect(carries((await standing(one, here.id))?.log)?.sort()).toEqual(told.sort());
  expect(told).toHaveLength(40);
});

test("a test that was forgotten elsewhere is not brought back by a tab that still shows it", async () => {
  const [one, other] = [bookIn(onDevice()), bookIn(onDevice())];
  const here = await begin(one, start, nobody);
  await other.store.empty();
  expect(await indexedDB.databases()).toEqual([]);
  await expect(here.keep(hit(start, 250))).rejects.toBeInstanceOf(Gone);
  expect(await indexedDB.databases()).toEqual([]);
});

test("a write that dies at any moment leaves all of the shots before it, a hundred times at random", async () => {
  const seed = mulberry(20_260_530);
  for (let run = 0; run < 100; run += 1) {
    globalThis.indexedDB = new IDBFactory();
    const dying = { in: 2 + Math.floor(seed() * 60) };
    const book = bookIn(mortal(onDevice(), dying));
    let log: Log = start;
    let told = 0;
    let id = "";
    try {
      const test = await begin(book, start, nobody);
      id = test.id;
      for (let n = 0; n < 12; n += 1) {
        const more = seed() < 0.2 && log.shots.length > 0 ? undone(log as typeof start).log : hit(log, 200 + n);
        await test.keep(more);
        [log, told] = [more, more.shots.length];
      }
    } catch (thrown) {
      expect((thrown as Error).message).toBe("dead");
    }
    const after = id === "" ? null : await standing(bookIn(onDevice()), id);
    if (id !== "") expect(carries(after?.log)).toEqual(carries(log));
    expect(after?.log.shots.length ?? 0).toBe(told);
  }
});

test("a full store says so, and what it did not take is written with the next shot", async () => {
  const book = bookIn(onDevice());
  const test = await begin(book, start, nobody);
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = () => {
    throw new DOMException("full", "QuotaExceededError");
  };
  await expect(test.keep(hit(start, 250))).rejects.toMatchObject({ name: "QuotaExceededError" });
  IDBObjectStore.prototype.put = put;
  await test.keep(hit(hit(start, 250), 251));
  expect(carries((await standing(book, test.id))?.log)).toEqual([250, 251]);
});

test("a clock that is set back changes no order", async () => {
  let now = 1_800_000_000_000;
  const book = bookIn(onDevice(), () => now);
  const test = await begin(book, start, nobody);
  let log: Log = start;
  for (const [n, carry] of [250, 251, 252, 253].entries()) {
    now -= n * 3_600_000;
    log = hit(log, carry);
    await test.keep(log);
  }
  expect(carries((await standing(book, test.id))?.log)).toEqual([250, 251, 252, 253]);
  expect(nextRevision(10, 3)).toBe(11);
});

test("looking whether anything is kept leaves nothing behind", async () => {
  expect(await isThere()).toBe(false);
  expect(await indexedDB.databases()).toEqual([]);
  await begin(bookIn(onDevice()), start, nobody);
  expect(await isThere()).toBe(true);
});

describe("from every earlier version", () => {
  const first = (value: unknown) =>
    new Promise<void>((done, failed) => {
      const request = indexedDB.open(DATABASE);
      request.onupgradeneeded = () => request.result.createObjectStore("log");
      request.onsuccess = () => {
        const during = request.result.transaction("log", "readwrite");
        if (value !== undefined) during.objectStore("log").put(value, "test");
        during.oncomplete = () => done(request.result.close());
        during.onerror = () => failed(during.error);
      };
    });

  test("nothing", async () => {
    expect(await underWay(bookIn(onDevice()))).toEqual([]);
  });

  test("1: the test under way survives, with its shots in order, and goes on", async () => {
    const log = hit(hit(warmedUp(start), 250), 251, 1);
    await first(log);
    const book = bookIn(onDevice());
    const [open] = await underWay(book);
    const now = (await standing(book, open!.id))!;
    expect(now.log).toEqual(withoutVersion(log));
    expect(isKept(now.test)).toBe(true);
    const test = keeper(book, now);
    await test.keep(hit(now.log, 252, 1));
    expect(carries((await standing(bookIn(onDevice()), open!.id))?.log)).toEqual([250, 251, 252]);
  });

  test("1, with nothing in it or a record that cannot be read: the rest opens, and the record is kept as it is", async () => {
    await first(undefined);
    expect(await underWay(bookIn(onDevice()))).toEqual([]);
    globalThis.indexedDB = new IDBFactory();
    await first({ version: 1, shots: "none" });
    const book = bookIn(onDevice());
    expect(await underWay(book)).toEqual([]);
    const raw = await book.store.read((from) => from.get("bodies", "first"));
    expect(raw).toEqual({ id: "first", damaged: { version: 1, shots: "none" } });
  });

  test("a tab of version 1 finds nowhere to write", async () => {
    await first(start);
    await underWay(bookIn(onDevice()));
    const shelves = await new Promise<string[]>((done) => {
      const request = indexedDB.open(DATABASE);
      request.onsuccess = () => done([...request.result.objectStoreNames]);
    });
    expect(shelves).not.toContain("log");
  });

  test("a later version: this one neither reads nor writes, and says why", async () => {
    await new Promise((done) => (indexedDB.open(DATABASE, 99).onsuccess = done));
    await expect(underWay(bookIn(onDevice()))).rejects.toBeInstanceOf(NewerVersion);
  });
});

/** A store whose browser dies after so many writes to a shelf: in the middle of one, as a battery would. */
function mortal(store: Store, dying: { in: number }): Store {
  return {
    ...store,
    write: (use) =>
      store.write((to) =>
        use({
          ...to,
          put: async (shelf, value) => {
            dying.in -= 1;
            if (dying.in < 0) throw new Error("dead");
            await to.put(shelf, value);
          },
        }),
      ),
  };
}

function mulberry(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}
