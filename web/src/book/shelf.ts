/** People, visits and what was kept of them: put in, found again as one types, deleted and taken back. */
import type { Session } from "../core/engine.js";
import { type Book, type Clock, withMeta } from "./book.js";
import {
  changed,
  type Datas,
  isKept,
  isKeptShot,
  type Kept,
  type Kind,
  made,
  type SessionData,
  withGone,
  wordsOf,
} from "./records.js";
import { allOf, type Part, type Reader, type Writer } from "./store.js";
import { mark, newId } from "./tests.js";

/** Of whom and when something is kept; a person without a name is nobody's. */
export interface Whose {
  name: string;
  date: string;
  place: string;
  note: string;
}

/** A row of the list, with what it is drawn from; or what lies in its place and cannot be read. */
export type Row =
  | { kept: Kept<"session"> | Kept<"test"> | Kept<"claim">; person: Kept<"person"> | null; visit: Kept<"visit"> | null }
  | { damaged: unknown };

/** A shot, a day, a month: how long what was deleted can be taken back. */
export const TAKEN_BACK_FOR_MS = 30 * 24 * 3_600_000;

/** Today, as the device counts days. */
export const today = (now = new Date()): string =>
  `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`;

const of = <K extends Kind>(value: unknown, kind: K): Kept<K> | null =>
  isKept(value) && value.kind === kind ? (value as Kept<K>) : null;

/** The person and the visit of that day, made where they are not there yet. */
export async function visitOf(to: Writer, next: Clock, { name, date, place, note }: Whose) {
  const person =
    name.trim() === ""
      ? ""
      : ((await personNamed(to, name)) ?? (await put(to, made("person", newId(), { name: name.trim() }, next()))));
  const ofPerson = await to.find("records", { index: "ofPerson", ...allOf("visit", person), newest: true, most: 200 });
  const same = ofPerson
    .map((one) => of(one, "visit"))
    .find((one) => one && one.data.date === date && (place === "" || one.data.place === place));
  if (!same)
    return { person, visit: await put(to, made("visit", newId(), { person, date, place, note, mark: "" }, next())) };
  if (note !== "" && note !== same.data.note) await put(to, changed(same, { note }, next()));
  return { person, visit: same.id };
}

async function put(to: Writer, kept: Kept): Promise<string> {
  await to.put("records", kept);
  return kept.id;
}

async function personNamed(from: Reader, name: string): Promise<string | null> {
  const [first = ""] = wordsOf(name);
  const like = await from.find("records", { index: "words", from: first, to: first, most: 500 });
  const plain = (text: string) => wordsOf(text).join(" ");
  return like.map((one) => of(one, "person")).find((one) => one && plain(one.data.name) === plain(name))?.id ?? null;
}

/** What stands on the page, as it is kept. */
export interface Shown extends Pick<SessionData, "question" | "line" | "version"> {
  session: Session;
  csv: string;
}

/** Keeps what stands on the page. The same shots, kept again, are the same record: they must not count twice. */
export async function keepSession(
  book: Book,
  whose: Whose,
  { session, csv, question, line, version }: Shown,
  before?: string,
): Promise<Kept<"session">> {
  const kept = await book.change(async (to, next) => {
    const { person, visit } = await visitOf(to, next, whose);
    const clubs = session.builds.map(({ name }) => name);
    const shots = session.columns ? session.columns.build.length : session.shots.length;
    const data: SessionData = { person, visit, question, clubs, shots, line, version };
    const same = of(before === undefined ? null : await to.get("records", before), "session");
    const old = same?.gone === undefined && same ? same : await sameIn(to, visit, csv);
    const record = old ? changed(old, data, next()) : made("session", newId(), data, next());
    await to.put("records", record);
    await to.put("bodies", { id: record.id, csv });
    return record;
  });
  await mark(book);
  return kept;
}

async function sameIn(from: Reader, visit: string, csv: string): Promise<Kept<"session"> | null> {
  for (const one of await from.find("records", { index: "ofVisit", ...allOf(visit) })) {
    const session = of(one, "session");
    if (session && ((await from.get("bodies", session.id)) as { csv?: unknown } | undefined)?.csv === csv)
      return session;
  }
  return null;
}

/** The person and the visit that a test begun now belongs to. */
export const visitNow = (book: Book, name: string): Promise<{ person: string; visit: string }> =>
  book.change((to, next) => visitOf(to, next, { name, date: today(), place: "", note: "" }));

export const keepClaim = (book: Book, whose: Whose, claim: Omit<Datas["claim"], "person" | "visit">): Promise<string> =>
  book.change(async (to, next) =>
    put(to, made("claim", newId(), { ...(await visitOf(to, next, whose)), ...claim }, next())),
  );

/** The shots of a session that was kept, as the tool's own CSV; null where they cannot be read. */
export const bodyOf = (book: Book, id: string): Promise<{ csv: string | null; raw: unknown }> =>
  book.store.read(async (from) => {
    const raw = await from.get("bodies", id);
    const csv = (raw as { csv?: unknown } | undefined)?.csv;
    return { csv: typeof csv === "string" ? csv : null, raw };
  });

/** Rows, the newest first, from below a revision on: as many as are drawn, and no more are read. */
export const rows = (book: Book, most: number, below?: number): Promise<Row[]> =>
  book.store.read((from) =>
    drawn(from, { index: "row", newest: true, most, ...(below ? { to: below, isBelow: true } : {}) }),
  );

export const rowsOf = (book: Book, person: string, most = 500): Promise<Row[]> =>
  book.store.read((from) => drawn(from, { index: "rowOf", ...allOf(person), newest: true, most }));

async function drawn(from: Reader, part: Part): Promise<Row[]> {
  const found = await from.find("records", part);
  const once = new Map<string, unknown>();
  const got = async (id: string) => {
    if (id !== "" && !once.has(id)) once.set(id, await from.get("records", id));
    return once.get(id);
  };
  const all: Row[] = [];
  for (const one of found) {
    if (!isKept(one) || one.kind === "person" || one.kind === "visit") {
      all.push({ damaged: one });
      continue;
    }
    const kept = one as Kept<"session" | "test" | "claim">;
    const person = of(await got(kept.data.person), "person");
    all.push({ kept: kept as Kept<"session">, person, visit: of(await got(kept.data.visit), "visit") });
  }
  return all;
}

/** How many records with a word that begins so are looked at. */
const LOOKED_AT = 100;

/** Rows of people, days, places and clubs with words that begin like those that were typed, the newest first. */
export async function search(book: Book, text: string, most: number): Promise<Row[]> {
  const words = wordsOf(text);
  if (words.length === 0) return rows(book, most);
  const beginning = (word: string) => ({ index: "words", from: word, to: `${word}\uffff` });
  return book.store.read(async (from) => {
    // The word that the fewest have is looked for, the others in what that finds.
    const counted: { word: string; many: number }[] = [];
    for (const word of words) counted.push({ word, many: await from.count("records", beginning(word)) });
    const [first, ...others] = counted.sort((a, b) => a.many - b.many).map(({ word }) => word);
    const like = await from.find("records", { ...beginning(first!), most: LOOKED_AT });
    const found = new Map<string, Row>();
    const add = async (part: Part) => {
      for (const row of await drawn(from, part)) if ("kept" in row) found.set(row.kept.id, row);
    };
    for (const one of like.filter(isKept)) {
      if (one.kind === "person") await add({ index: "rowOf", ...allOf(one.id), newest: true, most });
      else if (one.kind === "visit") for (const id of await idsOf(from, one.id)) await add({ from: id, to: id });
      else await add({ from: one.id, to: one.id });
    }
    return [...found.values()]
      .filter((row) => "kept" in row && row.kept.row !== undefined && others.every((word) => has(row, word)))
      .sort((a, b) => ("kept" in a && "kept" in b ? b.kept.made - a.kept.made : 0))
      .slice(0, most);
  });
}

const has = (row: Row, word: string): boolean =>
  "kept" in row &&
  [row.kept, row.person, row.visit].some((one) => one?.words?.some((its) => its.startsWith(word)) ?? false);

const idsOf = async (from: Reader, visit: string): Promise<string[]> =>
  (await from.find("records", { index: "ofVisit", ...allOf(visit), most: LOOKED_AT }))
    .filter(isKept)
    .map(({ id }) => id);

/** People, the newest first. */
export const people = (book: Book, most = 500): Promise<Kept<"person">[]> =>
  book.store.read(async (from) => {
    const found = await from.find("records", { index: "kind", ...allOf("person"), newest: true, most });
    return found.map((one) => of(one, "person")).filter((one) => one !== null);
  });

/** Says something of a record anew. */
export const say = <K extends Kind>(book: Book, kind: K, id: string, patch: Partial<Datas[K]>): Promise<void> =>
  book.change(async (to, next) => {
    const found = of(await to.get("records", id), kind);
    if (found) await to.put("records", changed(found, patch, next()));
  });

/** Marks a record as deleted, with all that belongs to it; gives what takes exactly that back. */
export async function remove(book: Book, id: string, now = Date.now()): Promise<number> {
  await book.change(async (to, next) => {
    const first = await to.get("records", id);
    const all = [first, ...(await belonging(to, first))].filter(isKept);
    // Two at one moment would be taken back together.
    while ((await to.find("records", { index: "gone", from: now, to: now, most: 1 })).length > 0) now += 1;
    for (const one of all) await to.put("records", withGone(one, now, next()));
  });
  await mark(book);
  return now;
}

async function belonging(from: Reader, one: unknown): Promise<unknown[]> {
  if (!isKept(one) || (one.kind !== "person" && one.kind !== "visit")) return [];
  if (one.kind === "visit") return from.find("records", { index: "ofVisit", ...allOf(one.id) });
  const visits = await from.find("records", { index: "ofPerson", ...allOf("visit", one.id) });
  return [...visits, ...(await from.find("records", { index: "rowOf", ...allOf(one.id) }))];
}

export async function takeBack(book: Book, gone: number): Promise<void> {
  await book.change(async (to, next) => {
    const found = await to.find("records", { index: "gone", from: gone, to: gone });
    for (const one of found.filter(isKept)) await to.put("records", withGone(one, null, next()));
  });
  await mark(book);
}

/** What can still be taken back, the last first: each deletion with what it took. */
export const deleted = (book: Book): Promise<{ gone: number; kept: Kept[] }[]> =>
  book.store.read(async (from) => {
    const found = (await from.find("records", { index: "gone", newest: true, most: LOOKED_AT })).filter(isKept);
    const moments = [...new Set(found.map(({ gone }) => gone!))];
    return moments.map((gone) => ({ gone, kept: found.filter((one) => one.gone === gone) }));
  });

/** Throws away for good what was deleted longer ago than it can be taken back. */
export async function throwAway(book: Book, now = Date.now()): Promise<void> {
  const old: Part = { index: "gone", to: now - TAKEN_BACK_FOR_MS };
  const some = await book.store.read(
    async (from) => (await from.count("records", old)) + (await from.count("shots", old)),
  );
  if (some === 0) return;
  await book.change(async (to) => {
    for (const one of (await to.find("records", old)).filter(isKept)) {
      for (const shot of (await to.find("shots", allOf(one.id))).filter(isKeptShot))
        await to.remove("shots", [shot.test, shot.at]);
      await to.remove("bodies", one.id);
      await to.remove("records", one.id);
    }
    for (const shot of (await to.find("shots", old)).filter(isKeptShot)) await to.remove("shots", [shot.test, shot.at]);
  });
}

/** How much lies here. */
export interface Counts {
  people: number;
  visits: number;
  sessions: number;
  tests: number;
  claims: number;
}

export const counts = (book: Book): Promise<Counts> =>
  book.store.read(async (from) => {
    const many = (kind: Kind) => from.count("records", { index: "kind", ...allOf(kind) });
    const [people, visits, sessions] = [await many("person"), await many("visit"), await many("session")];
    return { people, visits, sessions, tests: await many("test"), claims: await many("claim") };
  });

/** As long as what was kept waits for the browser's word on it: some ask the person first, who need not answer. */
const PATIENCE_MS = 1_500;

/** Asks the browser, once something is kept, not to clear it by itself; its answer is kept too, whenever it comes. */
export async function askToPersist(book: Book): Promise<boolean | null> {
  if (book.store.where !== "device" || typeof navigator.storage?.persist !== "function") return null;
  const asked = async (): Promise<boolean | null> => {
    try {
      const isPersistent = (await navigator.storage.persisted()) || (await navigator.storage.persist());
      await book.change((to) => withMeta(to, { isPersistent }));
      return isPersistent;
    } catch {
      return null;
    }
  };
  return Promise.race([asked(), new Promise<null>((resolve) => setTimeout(() => resolve(null), PATIENCE_MS))]);
}

/** The name of a person, or nothing. */
export const personOf = (book: Book, id: string): Promise<string> =>
  book.store.read(async (from) => of(id === "" ? null : await from.get("records", id), "person")?.data.name ?? "");
