/**
 * What is kept, as records: each field knows the revision it was said in, so that two copies merge field by field. Pure.
 *
 * A revision is the time, or one more than the last where the clock was set back: order never depends on the clock alone.
 */
import type { Question } from "../core/engine.js";
import type { Hand } from "../core/flights.js";
import type { Claimed, LoggedShot, LookTaken, OwnSay, PlanRequest } from "../core/planner.js";

export interface PersonData {
  name: string;
}

export interface VisitData {
  person: string;
  /** The day as the golfer counts it: `2026-05-30`. */
  date: string;
  place: string;
  /** What the coach adds in words. */
  note: string;
  /** What was new on this day, marked on the season's line. */
  mark: "" | "lesson" | "ball";
}

/** The answer's one line, and the version of the page that gave it. */
export interface Line {
  line: string;
  version: string;
}

export interface SessionData extends Line {
  person: string;
  visit: string;
  question: Question;
  clubs: string[];
  shots: number;
}

export interface TestData extends Line {
  person: string;
  visit: string;
  plan: PlanRequest;
  measures: string[];
  warm: boolean;
  ended: number[];
  looks: LookTaken[];
  hand: Hand | null;
  say: OwnSay | null;
  /** Nobody goes on with it. */
  isOver: boolean;
}

export interface ClaimData extends Line {
  person: string;
  visit: string;
  claimed: Claimed;
  measure: string;
}

export interface Datas {
  person: PersonData;
  visit: VisitData;
  session: SessionData;
  test: TestData;
  claim: ClaimData;
}
export type Kind = keyof Datas;

export interface Kept<K extends Kind = Kind> {
  id: string;
  kind: K;
  data: Datas[K];
  /** The revision in which each field was said. */
  stamps: Record<string, number>;
  /** The first revision, by which records are in order, and the last. */
  made: number;
  revision: number;
  /** When it was deleted, in milliseconds; taken back until a month is over. */
  gone?: number;
  live?: number;
  row?: number;
  open?: number;
  words?: string[];
}

/** A shot of a test, as it was logged. */
export interface KeptShot {
  test: string;
  /** The revision in which it was logged: shots are in this order. */
  at: number;
  data: LoggedShot;
  revision: number;
  gone?: number;
  live?: number;
}

/** What stands in the list of rows. */
const ROWS: readonly Kind[] = ["session", "test", "claim"];

export const PERSON_OF_NOBODY = "";

/** The revision after the last one. */
export const nextRevision = (last: number, now: number): number => Math.max(last + 1, now);

/** A record with all that it is found by. */
export function findable<K extends Kind>({ live: _l, row: _r, open: _o, words: _w, ...kept }: Kept<K>): Kept<K> {
  if (kept.gone !== undefined) return kept as Kept<K>;
  const isOpen = kept.kind === "test" && !(kept.data as TestData).isOver;
  return {
    ...(kept as Kept<K>),
    live: kept.made,
    words: wordsIn(kept as Kept),
    ...(ROWS.includes(kept.kind) ? { row: kept.made } : {}),
    ...(isOpen ? { open: kept.made } : {}),
  };
}

export function made<K extends Kind>(kind: K, id: string, data: Datas[K], revision: number): Kept<K> {
  const stamps = Object.fromEntries(Object.keys(data).map((field) => [field, revision]));
  return findable({ id, kind, data, stamps, made: revision, revision });
}

/** The record with these fields said anew; what is the same was not said again. */
export function changed<K extends Kind>(kept: Kept<K>, patch: Partial<Datas[K]>, revision: number): Kept<K> {
  const news = Object.entries(patch).filter(
    ([field, value]) =>
      JSON.stringify(value) !== JSON.stringify((kept.data as unknown as Record<string, unknown>)[field]),
  );
  if (news.length === 0) return kept;
  return findable({
    ...kept,
    data: { ...kept.data, ...Object.fromEntries(news) },
    stamps: { ...kept.stamps, ...Object.fromEntries(news.map(([field]) => [field, revision])) },
    revision,
  });
}

/** Deleted, or taken back. */
export function withGone<K extends Kind>(
  { gone: _, ...kept }: Kept<K>,
  gone: number | null,
  revision: number,
): Kept<K> {
  const stamps = { ...kept.stamps, gone: revision };
  return findable({ ...(kept as Kept<K>), ...(gone === null ? {} : { gone }), stamps, revision });
}

/** What a search finds it by: words without accents, in small letters. */
export function wordsOf(...texts: readonly string[]): string[] {
  const plain = texts.join(" ").normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return [...new Set(plain.split(/[^\p{L}\p{N}-]+/u).filter((word) => word !== ""))].slice(0, 40);
}

function wordsIn({ kind, data }: Kept): string[] {
  if (kind === "person") return wordsOf((data as PersonData).name);
  if (kind === "visit") return wordsOf((data as VisitData).date, (data as VisitData).place);
  if (kind === "session") return wordsOf(...(data as SessionData).clubs);
  if (kind === "test") return wordsOf(...(data as TestData).plan.builds);
  return [];
}

const KINDS: readonly Kind[] = ["person", "visit", "session", "test", "claim"];
const TEXTS: Readonly<Record<Kind, readonly string[]>> = {
  person: ["name"],
  visit: ["person", "date", "place", "note"],
  session: ["person", "visit", "line"],
  test: ["person", "visit", "line"],
  claim: ["person", "visit", "line"],
};

/** Whether something out of a store or a file is a record that can be used. */
export function isKept(value: unknown): value is Kept {
  const kept = value as Partial<Kept> | null | undefined;
  if (typeof kept !== "object" || kept === null || typeof kept.id !== "string") return false;
  if (!KINDS.includes(kept.kind as Kind) || typeof kept.data !== "object" || kept.data === null) return false;
  if (typeof kept.stamps !== "object" || kept.stamps === null || !isRevision(kept.made) || !isRevision(kept.revision))
    return false;
  if (!Object.values(kept.stamps).every(isRevision) || !(kept.gone === undefined || isRevision(kept.gone)))
    return false;
  const data = kept.data as unknown as Record<string, unknown>;
  if (TEXTS[kept.kind!].some((field) => typeof data[field] !== "string")) return false;
  if (kept.kind === "session") return Array.isArray(data["clubs"]) && isObject(data["question"]);
  if (kept.kind === "claim") return isObject(data["claimed"]) && typeof data["measure"] === "string";
  if (kept.kind !== "test") return true;
  const lists = [data["measures"], data["ended"], data["looks"]];
  return lists.every(Array.isArray) && Array.isArray((data["plan"] as Partial<PlanRequest> | undefined)?.builds);
}

export function isKeptShot(value: unknown): value is KeptShot {
  const shot = value as Partial<KeptShot> | null | undefined;
  return (
    isObject(shot) &&
    typeof shot!.test === "string" &&
    isRevision(shot!.at) &&
    isRevision(shot!.revision) &&
    isObject(shot!.data) &&
    Number.isInteger(shot!.data?.turn) &&
    isObject(shot!.data?.values)
  );
}

const isObject = (value: unknown): boolean => typeof value === "object" && value !== null && !Array.isArray(value);
/** The last moment that a clock can show: revisions beyond it would run out of whole numbers. */
const LAST_MOMENT = 8.64e15;
const isRevision = (value: unknown): value is number =>
  Number.isSafeInteger(value) && (value as number) >= 0 && (value as number) <= LAST_MOMENT;
