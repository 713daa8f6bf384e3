/**
 * A copy of the book put into this one: by identity, the newer of each field, twice the same as once. Pure.
 *
 * What goes into it and what of here it changes is known before anything is written.
 */
import { findable, isKept, isKeptShot, type Kept, type KeptShot, type Kind } from "./records.js";

/** All that a book holds. */
export interface Contents {
  records: readonly Kept[];
  bodies: readonly Body[];
  shots: readonly KeptShot[];
}

export interface Body {
  id: string;
  /** The session as the tool's own CSV. */
  csv: string;
}

/** A field that both say differently; the newer one is taken. */
export interface Change {
  kind: Kind;
  field: string;
  here: unknown;
  there: unknown;
  taken: "here" | "there";
}

export interface Preview {
  /** Records that are not here yet, by their kinds. */
  news: Readonly<Record<Kind, number>>;
  shots: number;
  changes: readonly Change[];
  /** Tests that went on in both: both are kept. */
  branches: number;
  /** What of the copy cannot be read. */
  unreadable: number;
  /** What is written when it is taken over. */
  put: Contents;
}

export const isNothingNew = ({ put }: Preview): boolean =>
  put.records.length + put.bodies.length + put.shots.length === 0;

/** What of a file's lists can be used, and how much of it cannot. */
export function readable(lists: {
  records: unknown[];
  bodies: unknown[];
  shots: unknown[];
}): Contents & { unreadable: number } {
  const records = lists.records.filter(isKept);
  const bodies = lists.bodies.filter(isBody);
  const shots = lists.shots.filter(isKeptShot);
  const unreadable = [lists.records, lists.bodies, lists.shots].flat().length - [records, bodies, shots].flat().length;
  return { records, bodies, shots, unreadable };
}

const isBody = (value: unknown): value is Body => {
  const body = value as Partial<Body> | null | undefined;
  return typeof body?.id === "string" && typeof body.csv === "string";
};

export function mergedWith(here: Contents, copy: Contents & { unreadable?: number }): Preview {
  const there = withBranches(here, copy);
  const news: Record<Kind, number> = { person: 0, visit: 0, session: 0, test: 0, claim: 0 };
  const changes: Change[] = [];
  const records: Kept[] = [];
  const own = new Map(here.records.map((kept) => [kept.id, kept]));
  for (const kept of there.records) {
    const before = own.get(kept.id);
    if (!before) {
      if (kept.gone === undefined) news[kept.kind] += 1;
      records.push(findable(kept));
    } else if (before.kind === kept.kind) {
      const after = fieldByField(before, kept, changes);
      if (JSON.stringify(after) !== JSON.stringify(findable(before))) records.push(after);
    }
  }
  const shots = newerShots(here.shots, there.shots);
  const bodies = new Set(here.bodies.map(({ id }) => id));
  return {
    news,
    shots: shots.filter(({ gone }) => gone === undefined).length,
    changes,
    branches: there.branches,
    unreadable: copy.unreadable ?? 0,
    put: { records, shots, bodies: there.bodies.filter(({ id }) => !bodies.has(id)) },
  };
}

function fieldByField(here: Kept, there: Kept, changes: Change[]): Kept {
  const data: Record<string, unknown> = { ...here.data };
  const stamps = { ...here.stamps };
  for (const [field, value] of Object.entries(there.data)) {
    const [own, its] = [stamps[field] ?? 0, there.stamps[field] ?? 0];
    const isSame = JSON.stringify(data[field]) === JSON.stringify(value);
    const isNewer = its > own || (its === own && JSON.stringify(value) > JSON.stringify(data[field]));
    if (!isSame)
      changes.push({ kind: here.kind, field, here: data[field], there: value, taken: isNewer ? "there" : "here" });
    if (!isNewer) continue;
    data[field] = value;
    stamps[field] = its;
  }
  const goes = (there.stamps["gone"] ?? 0) > (stamps["gone"] ?? 0);
  const gone = goes ? there.gone : here.gone;
  if (goes) {
    if ((there.gone === undefined) !== (here.gone === undefined))
      changes.push({ kind: here.kind, field: "gone", here: here.gone, there: there.gone, taken: "there" });
    stamps["gone"] = there.stamps["gone"]!;
  }
  const { gone: _, ...kept } = here;
  return findable({
    ...kept,
    data: data as unknown as Kept["data"],
    stamps,
    ...(gone === undefined ? {} : { gone }),
    made: Math.min(here.made, there.made),
    revision: Math.max(here.revision, there.revision),
  });
}

function newerShots(here: readonly KeptShot[], there: readonly KeptShot[]): KeptShot[] {
  const own = new Map(here.map((shot) => [nameOf(shot), shot]));
  return there.flatMap(({ live: _, ...shot }) => {
    const before = own.get(nameOf(shot));
    if (before && before.revision >= shot.revision) return [];
    return [shot.gone === undefined ? { ...shot, live: shot.at } : shot];
  });
}

const nameOf = ({ test, at }: KeptShot): string => `${test} ${at}`;

/** A test that both went on with is two from there on: shots of one must not count as shots of the other. */
function withBranches(here: Contents, copy: Contents): Contents & { branches: number } {
  const of = (contents: Contents, test: string) =>
    contents.shots.filter((shot) => shot.test === test).map(({ at }) => at);
  const names = new Map<string, string>();
  for (const { id, kind } of copy.records) {
    if (kind !== "test" || !here.records.some((one) => one.id === id)) continue;
    const [own, its] = [of(here, id), of(copy, id)];
    const extra = its.filter((at) => !own.includes(at));
    if (extra.length > 0 && own.some((at) => !its.includes(at))) names.set(id, `${id}~${Math.min(...extra)}`);
  }
  const known = new Set(here.records.map(({ id }) => id));
  const named = (id: string) => names.get(id) ?? id;
  return {
    records: copy.records.map((kept) => ({ ...kept, id: named(kept.id) })),
    bodies: copy.bodies,
    shots: copy.shots.map((shot) => ({ ...shot, test: named(shot.test) })),
    branches: [...names.values()].filter((id) => !known.has(id)).length,
  };
}
