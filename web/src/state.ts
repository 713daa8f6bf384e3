/**
 * Everything the page knows, and how each event changes it. Pure: no engine, no browser, no clock.
 *
 * What has to be computed next stands in `wants`; `page.ts` does it and sends the outcome back with
 * the `turn` it was asked in, so that an outcome overtaken by a newer wish is dropped.
 */
import type { Hints, Measure, Question, ReadResult, Refusal, Report, Shot } from "./engine.js";
import { isSpread } from "./margin.js";
import { openingQuestion, settled } from "./question.js";

/** Where the text came from. */
export interface Source {
  kind: "pasted" | "file" | "example";
  name: string;
  text: string;
}

export type AnswerPlace = "above" | "in view" | "below";

/** The margin under which an answer was first seen, and what it was an answer to. */
interface Seen {
  measure: string;
  /** Whether it was about scatter, where margins are ratios. */
  spread: boolean;
  margin: number | null;
}

export interface State {
  measures: readonly Measure[];
  source: Source | null;
  hints: Hints;
  read: ReadResult | null;
  question: Question | null;
  report: Report | null;
  /** Why the last request was refused or failed; what was there before stays. */
  trouble: Refusal | null;
  /** The next piece of work for the engine. */
  wants: "read" | "check" | null;
  /** Grows with every wish; outcomes of older turns are dropped. */
  turn: number;
  /** Where the answer is, seen from the screen. */
  answerIs: AnswerPlace;
  /** What was said by hand of single shots, by their place: why one is left out, or null that it counts. */
  setAside: Readonly<Record<number, string | null>>;
  /** Rows of the list of shots that are open to view. */
  shotsShown: number;
  seen: Seen | null;
}

export type Message =
  | { type: "opened"; measures: readonly Measure[] }
  | { type: "text_given"; source: Source; question?: Partial<Question> | undefined }
  | { type: "hinted"; hints: Hints }
  | { type: "read"; turn: number; result: ReadResult }
  | { type: "left_out"; shot: number; reason: string | null }
  | { type: "more_shots" }
  | { type: "asked"; patch: QuestionPatch }
  | { type: "answered"; turn: number; report: Report }
  | { type: "refused"; turn: number; refusal: Refusal }
  | { type: "file_refused"; refusal: Refusal }
  | { type: "answer_is"; place: AnswerPlace }
  | { type: "started_again" };

/** A change to the question; `undefined` leaves the choice to the core again. */
export type QuestionPatch = { [K in keyof Question]?: Question[K] | undefined };

/** A phone slows down with thousands of rows, each with its choice. */
const SHOTS_AT_ONCE = 200;

export const start: State = {
  measures: [],
  source: null,
  hints: {},
  read: null,
  question: null,
  report: null,
  trouble: null,
  wants: null,
  turn: 0,
  answerIs: "below",
  setAside: {},
  shotsShown: SHOTS_AT_ONCE,
  seen: null,
};

export function reduce(state: State, message: Message): State {
  return noteWhatWasSeen(step(state, message));
}

function step(state: State, message: Message): State {
  switch (message.type) {
    case "opened":
      return { ...state, measures: message.measures };
    case "text_given":
      return {
        ...start,
        measures: state.measures,
        source: message.source,
        question: message.question ? openingQuestion(message.question) : null,
        ...wish(state, "read"),
      };
    case "hinted":
      return state.source ? { ...state, hints: mergeHints(state.hints, message.hints), ...wish(state, "read") } : state;
    case "read":
      return message.turn === state.turn ? afterReading(state, message.result) : state;
    case "left_out":
      return state.read ? afterLeavingOut(state, state.read, message) : state;
    case "more_shots":
      return { ...state, shotsShown: state.shotsShown + SHOTS_AT_ONCE };
    case "asked":
      return state.question ? afterAsking(state, state.question, message.patch) : state;
    case "answered":
      return message.turn === state.turn ? { ...state, report: message.report, trouble: null, wants: null } : state;
    case "refused":
      return message.turn === state.turn ? { ...state, report: null, trouble: message.refusal, wants: null } : state;
    case "file_refused":
      return { ...state, trouble: message.refusal };
    case "answer_is":
      return { ...state, answerIs: message.place };
    case "started_again":
      return { ...start, measures: state.measures, turn: state.turn + 1 };
  }
}

function wish(state: State, wants: "read" | "check"): Pick<State, "wants" | "turn"> {
  return { wants, turn: state.turn + 1 };
}

function afterReading(state: State, read: ReadResult): State {
  const question = settled(state.question, read.session, state.measures);
  const setAside = isSameShots(read.session.shots, state.read?.session.shots ?? []) ? state.setAside : {};
  return { ...state, read: withReasons(read, setAside), setAside, question, trouble: null, ...wish(state, "check") };
}

/** The text read again, in another unit say, may hold the same shots or quite others. */
function isSameShots(shots: readonly Shot[], before: readonly Shot[]): boolean {
  const same = (one: Shot, other: Shot | undefined) => one.number === other?.number && one.build === other.build;
  return shots.length === before.length && shots.every((shot, index) => same(shot, before[index]));
}

/** What was said by hand goes before what stands in the text. */
function withReasons(read: ReadResult, setAside: State["setAside"]): ReadResult {
  const shots = read.session.shots.map((shot, index) => {
    const said = setAside[index];
    return said === undefined ? shot : { ...shot, left_out: said };
  });
  return { ...read, session: { ...read.session, shots } };
}

function afterLeavingOut(state: State, read: ReadResult, { shot, reason }: { shot: number; reason: string | null }): State {
  const setAside = { ...state.setAside, [shot]: reason };
  return { ...state, read: withReasons(read, setAside), setAside, ...wish(state, "check") };
}

function afterAsking(state: State, before: Question, patch: QuestionPatch): State {
  const changed = withoutBlanks({ ...before, ...patch });
  const question = ownMargin(before, changed);
  return { ...state, question: withFirstMargin(question, state.seen), ...wish(state, "check") };
}

/** Goal and margin belong to a measure, and a margin to averages or to scatter: they do not travel. */
function ownMargin(before: Question, changed: Question): Question {
  const { margin: _margin, first_margin: _first, ...noMargin } = changed;
  if (changed.measure !== before.measure) {
    const { goal: _goal, ...noGoal } = noMargin;
    return noGoal;
  }
  return isSpread(changed) === isSpread(before) ? changed : noMargin;
}

/** A margin changed after its answer was seen says so in the question itself. */
function withFirstMargin({ first_margin: _old, ...question }: Question, seen: Seen | null): Question {
  const changed = isOf(seen, question) && seen.margin !== null && question.margin !== undefined;
  return changed && question.margin !== seen.margin ? { ...question, first_margin: seen.margin! } : question;
}

function isOf(seen: Seen | null, asked: Pick<Question, "measure" | "goal">): seen is Seen {
  return seen !== null && seen.measure === asked.measure && seen.spread === isSpread(asked);
}

function noteWhatWasSeen(state: State): State {
  const asked = state.report?.asked;
  if (state.answerIs !== "in view" || state.wants || !asked || isOf(state.seen, asked)) return state;
  return { ...state, seen: { measure: asked.measure, spread: isSpread(asked), margin: asked.margin } };
}

/** Corrections add up: those keyed by column, line or name one by one, the others as a whole. */
function mergeHints(before: Hints, more: Hints): Hints {
  const merged = Object.entries(more).map(([part, value]) => {
    const old = before[part as keyof Hints];
    const keyed = typeof value === "object" && typeof old === "object";
    return [part, keyed ? { ...old, ...value } : value];
  });
  return { ...before, ...(Object.fromEntries(merged) as Hints) };
}

function withoutBlanks(question: QuestionPatch): Question {
  return Object.fromEntries(Object.entries(question).filter(([, value]) => value !== undefined)) as unknown as Question;
}
