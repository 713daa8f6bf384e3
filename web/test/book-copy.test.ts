/** Copies of the book: merged by identity, locked, and as their published form says. */
import "fake-indexeddb/auto";
import Ajv from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import published from "../public/book.schema.json?raw";
import { type Book, bookIn } from "../src/book/book.js";
import { contentsOf, copyOf, found, takeOver } from "../src/book/copy.js";
import { isLocked, locked, unlocked } from "../src/book/lock.js";
import { inMemory } from "../src/book/memory.js";
import { isNothingNew, mergedWith } from "../src/book/merge.js";
import {
  counts,
  deleted,
  keepSession,
  people,
  type Row,
  remove,
  rows,
  rowsOf,
  say,
  search,
  takeBack,
  throwAway,
} from "../src/book/shelf.js";
import { begin, keeper, standing } from "../src/book/tests.js";
import { begun, withShot } from "../src/fair/log.js";

const whose = (name: string, date = "2026-05-30") => ({ name, date, place: "Range", note: "" });
const session = { builds: [{ name: "Own" }, { name: "New" }], shots: [{}, {}], measures: ["carry"] } as never;
const question = { baseline: 0, measure: "carry", stopping: "unknown" } as const;
const kept = {
  session,
  csv: "Straight Answer session,1,unknown\n",
  question,
  line: "It cannot be told.",
  version: "1",
};
const plan = { builds: ["Own", "New"], measure: "carry", same_club: false };

/** A book with a clock of its own: two of them are two devices. */
function device(start: number): Book {
  let now = start;
  return bookIn(inMemory(), () => (now += 1000));
}

const put = async (book: Book, from: Book) => {
  const copy = found((await copyOf(from, "1", "")).text);
  if (copy.is !== "book") throw new Error(copy.is);
  const preview = mergedWith(await contentsOf(book), copy.contents);
  await takeOver(book, copy.contents);
  return preview;
};
const names = async (book: Book) => (await people(book)).map(({ data }) => data.name).sort();
const lines = (all: readonly Row[]) => all.map((row) => ("kept" in row ? row.person?.data.name : "damaged"));

describe("a copy", () => {
  test("on an empty device is the same book, and twice is the same as once", async () => {
    const [one, other] = [device(1000), device(900_000)];
    await keepSession(one, whose("Ada"), kept);
    await keepSession(one, whose("Ben"), kept);
    const first = await put(other, one);
    expect(first.news).toEqual({ person: 2, visit: 2, session: 2, test: 0, claim: 0 });
    expect(await contentsOf(other)).toEqual(await contentsOf(one));
    const second = await put(other, one);
    expect(isNothingNew(second)).toBe(true);
    expect(await contentsOf(other)).toEqual(await contentsOf(one));
    expect(isNothingNew(await put(one, other))).toBe(true);
  });

  test("newer wins field by field, whichever way it is carried, and every such place is said", async () => {
    const [one, other] = [device(1000), device(900_000)];
    const { id } = await keepSession(one, whose("Ada"), kept);
    await put(other, one);
    const [ada] = await people(one);
    const visit = (await contentsOf(one)).records.find(({ kind }) => kind === "visit")!;
    await say(one, "person", ada!.id, { name: "Ada E." });
    await say(one, "visit", visit.id, { place: "Hall" });
    await say(other, "visit", visit.id, { place: "Meadow", note: "windy" });
    const preview = await put(other, one);
    expect([...preview.changes].sort((a, b) => a.kind.localeCompare(b.kind))).toEqual([
      { kind: "person", field: "name", here: "Ada", there: "Ada E.", taken: "there" },
      { kind: "visit", field: "place", here: "Meadow", there: "Hall", taken: "here" },
      { kind: "visit", field: "note", here: "windy", there: "", taken: "here" },
    ]);
    await put(one, other);
    expect(await contentsOf(one)).toEqual(await contentsOf(other));
    expect((await contentsOf(one)).records.find((record) => record.id === visit.id)?.data).toMatchObject({
      place: "Meadow",
      note: "windy",
    });
    expect(await names(one)).toEqual(["Ada E."]);
    expect(id).toBeTruthy();
  });

  test("a test that went on in both is kept twice, shot by shot, and no more with every further copy", async () => {
    const [one, other] = [device(1000), device(900_000)];
    const log = begun(plan, ["carry"]);
    const here = await begin(one, log, { person: "", visit: "" });
    const first = withShot(log, 0, { carry: 250 }, false);
    await here.keep(first);
    await put(other, one);
    const there = keeper(other, (await standing(other, here.id))!);
    const at = (await standing(other, here.id))!.log;
    await there.keep({ ...at, shots: [...at.shots, { turn: 0, values: { carry: 199 }, note: null }] });
    await here.keep(withShot(first, 0, { carry: 251 }, false));
    expect((await put(one, other)).branches).toBe(1);
    expect((await put(one, other)).branches).toBe(0);
    expect((await counts(one)).tests).toBe(2);
    const all = await Promise.all((await rows(one, 9)).map((row) => standing(one, "kept" in row ? row.kept.id : "")));
    const carries = all.map((each) => each!.log.shots.map(({ values }) => values["carry"]));
    expect(carries.sort((a, b) => a[1]! - b[1]!)).toEqual([
      [250, 199],
      [250, 251],
    ]);
  });

  test("what was deleted on one device is deleted on the other, and comes back where it is taken back later", async () => {
    const [one, other] = [device(1000), device(900_000)];
    const { id } = await keepSession(one, whose("Ada"), kept);
    await put(other, one);
    const gone = await remove(other, id);
    await put(one, other);
    expect((await counts(one)).sessions).toBe(0);
    await takeBack(one, gone);
    // The device that deletes is ahead: whoever takes back says it after that.
    await put(other, one);
    expect((await counts(other)).sessions).toBe(1);
  });

  test("a damaged record stays behind, and all others come along", async () => {
    const [one, other] = [device(1000), device(900_000)];
    await keepSession(one, whose("Ada"), kept);
    await one.store.write((to) => to.put("records", { id: "x", row: 5, kind: "session" }));
    expect(lines(await rows(one, 9))).toEqual(["Ada", "damaged"]);
    const { text } = await copyOf(one, "1", "");
    expect(JSON.parse(text).damaged).toEqual([{ id: "x", row: 5, kind: "session" }]);
    await put(other, one);
    expect(lines(await rows(other, 9))).toEqual(["Ada"]);
    const file = JSON.parse(text);
    file.records.push({ id: 7 }, null, { ...file.records[0], revision: 1e300 });
    const copy = found(JSON.stringify(file));
    expect(copy.is === "book" && copy.contents.unreadable).toBe(3);
  });

  test("is as its published form says, locked or not", async () => {
    const book = device(1000);
    await keepSession(book, whose("Ada"), kept);
    await begin(book, begun(plan, ["carry"]), { person: "", visit: "" });
    const schema = JSON.parse(published);
    const isValid = new Ajv({ strict: false }).compile(schema);
    for (const passphrase of ["", "six wooden tees"]) {
      const file = JSON.parse((await copyOf(book, "1", passphrase)).text);
      expect(isValid(file), JSON.stringify(isValid.errors)).toBe(true);
      expect(isValid({ ...file, version: 2 })).toBe(false);
      expect(isValid({ ...file, more: 1 })).toBe(false);
    }
  });

  test("anything else is none, and a later version says so", () => {
    for (const text of ["", "{}", "[]", "null", "no", '{"format":"straight-answer-book","version":1}'])
      expect(found(text).is, text).toBe("no_copy");
    expect(found('{"format":"straight-answer-book","version":2}').is).toBe("later_version");
  });
});

describe("a lock", () => {
  test("opens with its passphrase and no other, and what it was made with stands in it", async () => {
    const file = await locked("Ada’s shots", "six wooden tees");
    expect(file.key).toMatchObject({ derivation: "PBKDF2", hash: "SHA-256", iterations: 600_000 });
    expect(isLocked(JSON.parse(JSON.stringify(file)))).toBe(true);
    expect(await unlocked(file, "six wooden tees")).toBe("Ada’s shots");
    expect(await unlocked(file, "Six wooden tees")).toBeNull();
    expect((await locked("Ada’s shots", "six wooden tees")).data).not.toBe(file.data);
  });

  test("a file that was changed does not open, and one that asks for hours of work is none", async () => {
    const file = await locked("Ada’s shots", "a");
    const data = `${file.data.startsWith("A") ? "B" : "A"}${file.data.slice(1)}`;
    expect(await unlocked({ ...file, data }, "a")).toBeNull();
    expect(isLocked({ ...file, key: { ...file.key, iterations: 1e9 } })).toBe(false);
  });
});

describe("the shelf", () => {
  test("is searched by the beginnings of names, days, places and clubs, without accents", async () => {
    const book = device(1000);
    await keepSession(book, whose("José Ejemplo", "2026-05-23"), kept);
    await keepSession(book, whose("Ada Example", "2026-05-30"), kept);
    for (const [text, expected] of [
      ["jose", ["José Ejemplo"]],
      ["EX", ["Ada Example"]],
      ["2026-05-2", ["José Ejemplo"]],
      ["new", ["Ada Example", "José Ejemplo"]],
      ["range ada", ["Ada Example"]],
      ["ada ejem", []],
      ["", ["Ada Example", "José Ejemplo"]],
    ] as const)
      expect(lines(await search(book, text, 20)), text).toEqual(expected);
  });

  test("one name is one person, one day one visit", async () => {
    const book = device(1000);
    await keepSession(book, whose("Ada Example"), kept);
    await keepSession(book, whose("  ada  example "), kept);
    await keepSession(book, whose("Ada Example", "2026-06-06"), kept);
    // The same shots of one day are one record.
    expect(await counts(book)).toMatchObject({ people: 1, visits: 2, sessions: 2 });
  });

  test("the same shots kept again are the same record, and move where another day is said", async () => {
    const book = device(1000);
    const first = await keepSession(book, whose("Ada"), kept);
    expect((await keepSession(book, whose("Ada"), kept)).id).toBe(first.id);
    await keepSession(book, whose("Ben", "2026-06-06"), { ...kept, line: "Other." }, first.id);
    expect(await counts(book)).toMatchObject({ people: 2, visits: 2, sessions: 1 });
    expect(lines(await rows(book, 9))).toEqual(["Ben"]);
    await keepSession(book, whose("Ada"), { ...kept, csv: "Straight Answer session,1,blocked\n" });
    expect((await counts(book)).sessions).toBe(2);
  });

  test("one visit goes to another device as a file, with its person and nothing of others", async () => {
    const [one, other] = [device(1000), device(900_000)];
    const { data } = await keepSession(one, whose("Ada"), kept);
    await keepSession(one, whose("Ben"), kept);
    const copy = found((await copyOf(one, "1", "", data.visit)).text);
    if (copy.is === "book") await takeOver(other, copy.contents);
    expect(await counts(other)).toMatchObject({ people: 1, visits: 1, sessions: 1 });
    expect(await names(other)).toEqual(["Ada"]);
  });

  test("a deleted person takes all along and brings all back, until a month is over", async () => {
    const book = device(1000);
    await keepSession(book, whose("Ada"), kept);
    await keepSession(book, whose("Ben"), kept);
    const [ada] = (await people(book)).filter(({ data }) => data.name === "Ada");
    const gone = await remove(book, ada!.id, 1_000_000);
    expect(await counts(book)).toMatchObject({ people: 1, visits: 1, sessions: 1 });
    expect(await rowsOf(book, ada!.id)).toEqual([]);
    expect((await deleted(book)).map(({ kept: all }) => all.length)).toEqual([3]);
    await throwAway(book, 1_000_000 + 29 * 24 * 3_600_000);
    await takeBack(book, gone);
    expect(await counts(book)).toMatchObject({ people: 2, visits: 2, sessions: 2 });
    await remove(book, ada!.id, 1_000_000);
    await throwAway(book, 1_000_000 + 31 * 24 * 3_600_000);
    expect(await deleted(book)).toEqual([]);
    expect((await contentsOf(book)).bodies).toHaveLength(1);
  });
});
