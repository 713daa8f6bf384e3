/** The visits of one person with the same two clubs, each by its shots, and what they say together. The core says both. */
import type { Engine, Question, Session } from "../core/engine.js";
import type { Planner } from "../core/planner.js";
import { shotCount } from "../state/shots.js";
import type { Book } from "./book.js";
import type { Kept, TestData } from "./records.js";
import { bodyOf, type Row } from "./shelf.js";
import type { Opened, Season, SeasonDay } from "./state.js";
import { standing } from "./tests.js";

/** What was hit, and what was asked of it. */
export interface Shown {
  session: Session;
  question: Question;
}

/** The shots behind a row; null where there are none, or they cannot be read. */
export async function shotsOf(book: Book, row: Row, engine: Engine, planner: Planner): Promise<Shown | null> {
  if ("damaged" in row || row.kept.kind === "claim") return null;
  if (row.kept.kind === "session") {
    const { csv } = await bodyOf(book, row.kept.id);
    const read = csv === null ? null : (await engine.read(csv, {})).session;
    if (!read || shotCount(read) + read.summaries.length === 0) return null;
    return { session: read, question: (row.kept as Kept<"session">).data.question };
  }
  const found = await standing(book, row.kept.id);
  if (!found || found.log.shots.length === 0) return null;
  const { plan, shots, ended, looks } = found.log;
  const { session, question } = planner.follow({ plan, shots, ended, looks });
  return { session, question };
}

/** More visits than a season has are no picture. */
const MOST = 24;

export async function seasonOf(
  book: Book,
  rows: readonly Row[],
  engine: Engine,
  planner: Planner,
): Promise<Season | null> {
  const visits = new Map<string, { row: Row; shown: Shown }[]>();
  for (const row of rows) {
    const shown = await shotsOf(book, row, engine, planner).catch(() => null);
    if (!shown || !("kept" in row)) continue;
    const id = row.kept.data.visit || row.kept.id;
    visits.set(id, [...(visits.get(id) ?? []), { row, shown }]);
  }
  const newest = [...visits.values()][0]?.[0]?.shown;
  const clubs = newest && pairOf(newest);
  if (!clubs) return null;
  const { measure, goal, margin } = newest.question;
  const asked = { measure, ...(goal ? { goal } : {}), ...(margin === undefined ? {} : { margin }) };
  const sessions: Session[] = [];
  const days: SeasonDay[] = [];
  for (const all of [...visits.values()].slice(0, MOST).reverse()) {
    const session = await oneOf(
      all.map(({ shown }) => shown.session),
      engine,
    );
    const [baseline, candidate] = clubs.map((name) => session.builds.findIndex((one) => one.name === name));
    if ((baseline! < 0 && candidate! < 0) || !session.measures.includes(measure)) continue;
    sessions.push(session);
    if (baseline! < 0 || candidate! < 0) continue;
    const { stopping } = all.length === 1 ? all[0]!.shown.question : { stopping: "unknown" as const };
    const question: Question = { ...asked, baseline: baseline!, candidate: candidate!, stopping };
    const report = await engine.check({ session, question });
    const { row } = all[0]!;
    days.push({ visit: "kept" in row ? row.visit : null, report, candidate: candidate! });
  }
  return { days, measure, clubs, pair: together(sessions, clubs, asked, planner) };
}

/** What all of them say; null of fewer than two, or where the core puts nothing together. */
function together(
  sessions: Session[],
  [baseline, candidate]: readonly [string, string],
  asked: Pick<Question, "measure" | "goal" | "margin">,
  planner: Planner,
): Season["pair"] {
  // The question is put to the first that holds both.
  const at = (session: Session, name: string) => session.builds.findIndex((one) => one.name === name);
  const first = sessions.find((one) => at(one, baseline) >= 0 && at(one, candidate) >= 0);
  if (!first || sessions.length < 2) return null;
  const ordered = [first, ...sessions.filter((one) => one !== first)];
  const question: Question = {
    ...asked,
    baseline: at(first, baseline),
    candidate: at(first, candidate),
    stopping: "unknown",
  };
  try {
    return planner.together({ sessions: ordered, question }).find(({ name }) => name === candidate) ?? null;
  } catch {
    return null;
  }
}

/** The club asked about and the one it is held against. */
function pairOf({ session, question }: Shown): [string, string] | null {
  const baseline = session.builds[question.baseline]?.name;
  const other = question.candidate ?? session.builds.findIndex((_, at) => at !== question.baseline);
  const candidate = session.builds[other]?.name;
  return baseline === undefined || candidate === undefined || baseline === candidate ? null : [baseline, candidate];
}

/** Several sessions of one visit are one day. */
async function oneOf(sessions: Session[], engine: Engine): Promise<Session> {
  const [first] = sessions;
  if (sessions.length === 1) return first!;
  const isSame = sessions.every(({ order }) => order === first!.order);
  return engine.join(sessions, isSame ? first!.order : null);
}

/** What was claimed to a person, each held against the latest shots of the same measure. */
export async function claimsOf(
  book: Book,
  rows: readonly Row[],
  engine: Engine,
  planner: Planner,
): Promise<Opened["claims"]> {
  const claims = rows.flatMap((row) => ("kept" in row && row.kept.kind === "claim" ? [row] : []));
  if (claims.length === 0) return [];
  const told: { visit: Kept<"visit"> | null; said: string }[] = [];
  for (const { kept, visit } of claims) {
    const { claimed, measure, line } = (kept as unknown as Kept<"claim">).data;
    let said = line;
    for (const row of rows) {
      const shown = await shotsOf(book, row, engine, planner).catch(() => null);
      if (!shown?.session.measures.includes(measure)) continue;
      try {
        const { session, question } = shown;
        // Goal and margin belong to a measure.
        const { goal: _goal, margin: _margin, first_margin: _first, ...others } = question;
        const asked = question.measure === measure ? question : { ...others, measure };
        said = planner.claim({ claimed, session, question: asked }).words.headline;
      } catch {
        // Shots that cannot be held against it leave it as it was told.
      }
      break;
    }
    told.push({ visit, said });
  }
  return told;
}

/** The plan of a next visit: the clubs and the margin of this one. */
export function planAfter(row: Row, shown: Shown | null): TestData["plan"] | null {
  if ("kept" in row && row.kept.kind === "test") return (row.kept as Kept<"test">).data.plan;
  const clubs = shown && pairOf(shown);
  if (!clubs || !shown) return null;
  const { measure, goal, margin } = shown.question;
  return {
    builds: [...clubs],
    measure,
    same_club: false,
    ...(goal ? { goal } : {}),
    ...(margin === undefined ? {} : { margin }),
  };
}
