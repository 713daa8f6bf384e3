/**
 * The log of a test under way: what is stored, and how each event changes it. Pure: no storage, no core, no clock.
 *
 * Whose turn it is, what may be looked at and what is asked of the shots is worked out by the core from this record.
 */
import type { Measure } from "../core/engine.js";
import type { Hand } from "../core/flights.js";
import type { FollowRequest, LoggedShot, LookTaken, OwnSay, PlanRequest } from "../core/planner.js";
import { say } from "../text/say.js";
import { shownIn } from "../text/units.js";

/** The shape that is stored; a record of another version is not opened. */
export const VERSION = 1;

export interface TestLog {
  version: typeof VERSION;
  plan: PlanRequest;
  /** Measures written down for each shot, in the order of the keys. */
  measures: string[];
  /** Whether the warm-up is done. */
  warm: boolean;
  shots: LoggedShot[];
  /** Sets that were ended before their last shot. */
  ended: number[];
  looks: LookTaken[];
  /** Which hand the golfer plays with; null is taken for the right one. */
  hand: Hand | null;
  /** What the golfer felt, asked once before any number is shown; null until then. */
  say: OwnSay | null;
}

export type Values = Record<string, number | null>;

/** Numbers as they were typed, in the units shown, as they are kept. */
export const inCanonicalUnits = (values: Values, measures: readonly Measure[]): Values =>
  each(values, measures, (value, scale) => value / scale);

/** Numbers as they are kept, to be typed on. */
export const inUnitsShown = (values: Values, measures: readonly Measure[]): Values =>
  each(values, measures, (value, scale) => Number((value * scale).toPrecision(12)));

function each(values: Values, measures: readonly Measure[], change: (value: number, scale: number) => number): Values {
  const scaleOf = (id: string) => shownIn(measures.find((measure) => measure.id === id)?.unit ?? "").scale;
  return Object.fromEntries(
    Object.entries(values).map(([id, value]) => [id, value === null ? null : change(value, scaleOf(id))]),
  );
}

export const begun = (plan: PlanRequest, measures: readonly string[], hand: Hand | null = null): TestLog => ({
  version: VERSION,
  plan,
  measures: [...measures],
  warm: false,
  shots: [],
  ended: [],
  looks: [],
  hand,
  say: null,
});

/** Whether something out of a store is a log that this version can go on with. */
export function isLog(value: unknown): value is TestLog {
  const log = value as Partial<TestLog> | null | undefined;
  return (
    typeof log === "object" &&
    log !== null &&
    log.version === VERSION &&
    Array.isArray(log.shots) &&
    Array.isArray(log.measures)
  );
}

export const warmedUp = (log: TestLog): TestLog => ({ ...log, warm: true });

export function withShot(log: TestLog, turn: number, values: Values, mishit: boolean): TestLog {
  return { ...log, shots: [...log.shots, { turn, values, note: mishit ? say("log-mishit-note") : null }] };
}

/** Ends a set before its last shot. */
export const withSetEnded = (log: TestLog, turn: number): TestLog => ({ ...log, ended: [...log.ended, turn] });

/** Takes back what was done last: an ended set, else the last shot, which comes back into the hand. */
export function undone(log: TestLog): { log: TestLog; back: LoggedShot | null } {
  const last = log.shots.at(-1);
  const ended = log.ended.at(-1);
  if (ended !== undefined && (!last || ended >= last.turn)) {
    return { log: { ...log, ended: log.ended.slice(0, -1) }, back: null };
  }
  return last ? { log: { ...log, shots: log.shots.slice(0, -1) }, back: last } : { log, back: null };
}

/** The last shot called a mishit, or not one after all. It stays and counts. */
export function withMishit(log: TestLog, mishit: boolean): TestLog {
  const shots = log.shots.map((shot, at) =>
    at === log.shots.length - 1 ? { ...shot, note: mishit ? say("log-mishit-note") : null } : shot,
  );
  return { ...log, shots };
}

export const withSay = (log: TestLog, say: OwnSay): TestLog => ({ ...log, say });

/** A look counts once, however often the page is drawn. */
export function withLook(log: TestLog, look: LookTaken): TestLog {
  const same = (one: LookTaken) => one.after_round === look.after_round && one.within_a_round === look.within_a_round;
  return log.looks.some(same) ? log : { ...log, looks: [...log.looks, look] };
}

/** What the core is asked about it. */
export const asked = ({ plan, shots, ended, looks }: TestLog): FollowRequest => ({ plan, shots, ended, looks });
