/**
 * Everything the page knows, and how each event changes it. Pure: no engine, no browser, no clock.
 *
 * What has to be computed next stands in `wants`; `page.ts` does it and sends the outcome back with
 * the `turn` it was asked in, so that an outcome overtaken by a newer wish is dropped.
 */
import type {
  Hints,
  Measure,
  Order,
  Question,
  ReadResult,
  Refusal,
  Report,
  Session,
  Unpacked,
} from "../core/engine.js";
import { isSpread } from "../format/margin.js";
import { say } from "../text/say.js";
import { holding } from "./doubts.js";
import { formDraft } from "./form.js";
import { isSameShots, type Joined, joinedWith } from "./joined.js";
import { type Past, remembered, standing } from "./past.js";
import { type Patch, patched } from "./patch.js";
import { opened, questionIn, settled, withOffered } from "./question.js";
import type { SetAside } from "./shots.js";
import {
  again,
  asCame,
  type Given,
  type NewText,
  nothingIn,
  renamed,
  type Source,
  type Workbook,
  withMore,
  writtenOut,
} from "./texts.js";

export type { Source };

/** The margin under which an answer was first seen, and what it was an answer to. */
interface Seen {
  measure: string;
  /** Whether it was about scatter, where margins are ratios. */
  spread: boolean;
  margin: number | null;
}

/** What stands in the place of the shots while something is entered; `at` is the text that it will replace. */
export type Entry =
  /** `draft` is what it opens with, when that came from elsewhere. */
  | { kind: "grid" | "averages"; at: number | null; draft?: unknown }
  | { kind: "photos"; files: readonly File[]; adding: boolean }
  | { kind: "sheets"; workbook: Workbook; adding: boolean };

/** What came with a link: how its sender asked, and what is worth knowing of it. */
export type Sent = Pick<Unpacked, "question" | "view" | "notices">;

/** A link that could not be opened, and why. */
export interface Cut {
  link: string;
  refusal: Refusal;
}

export interface State {
  measures: readonly Measure[];
  /** The texts, in the order given. */
  given: readonly Given[];
  /** The session of all texts together, and how many there were. */
  read: Joined | null;
  /** How the clubs were hit, when the golfer says it. */
  order: Order | null;
  entry: Entry | null;
  /** What was being entered when it was left without being read, by `entryKey`. */
  unfinished: Readonly<Record<string, unknown>>;
  past: readonly Past<State>[];
  /** What was taken back, to be done again: the last one first taken back. */
  ahead: readonly Past<State>[];
  question: Question | null;
  /** What is known of the question before there is one. */
  opening: Partial<Question>;
  /** What came with the link that the shots came in. */
  sent: Sent | null;
  report: Report | null;
  /** Why the last request was refused or failed; what was there before stays. */
  trouble: Refusal | null;
  /** The link that could not be opened last; what was there before stays. */
  cut: Cut | null;
  /** Why the last text was not added to those that are there. */
  notAdded: Refusal | null;
  /** The next piece of work for the engine. */
  wants: "read" | "check" | null;
  /** Grows with every wish; outcomes of older turns are dropped. */
  turn: number;
  /** Whether the answer's sentence is on the screen. */
  answerInView: boolean;
  /** The last sentence that was. */
  lastInView: string | null;
  /** What was said by hand of single shots, by their place: why one is left out, or null that it counts. */
  setAside: SetAside;
  /** Shots that were asked about and said to be right. */
  confirmed: readonly number[];
  /** Rows of the list of shots that are open to view. */
  shotsShown: number;
  seen: Seen | null;
}

export type Message =
  | { type: "opened"; measures: readonly Measure[] }
  /** `opening` is what is known of a question that the page begins; `question` one that was asked elsewhere. */
  | { type: "texts_given"; texts: readonly NewText[]; opening?: Partial<Question>; question?: Question }
  /** `isOwn`: it is the page's own session, on its way to another language or other units. */
  | { type: "link_opened"; source: Source; session: Session; sent: Sent; isOwn?: boolean }
  /** The shots of a link as a text, and what reading it says: they can be corrected from then on as any. */
  | { type: "link_written"; source: Source; text: string; result: ReadResult }
  | { type: "link_cut"; cut: Cut | null }
  | { type: "as_sent" }
  | { type: "texts_added"; texts: readonly NewText[] }
  | { type: "text_replaced"; at: number; text: NewText }
  | { type: "text_removed"; at: number }
  | { type: "entry"; entry: Entry | null }
  | { type: "entry_left"; draft: unknown }
  | { type: "hinted"; hints: Hints; at?: number | "all" }
  | { type: "renamed"; build: string; name: string }
  | { type: "undone" | "redone" }
  | { type: "read"; turn: number; results: readonly ReadResult[]; session: Session }
  | { type: "left_out"; shot: number; reason: string | null }
  | { type: "confirmed"; shot: number }
  | { type: "more_shots" }
  | { type: "asked"; patch: Patch<Question> }
  | { type: "answered"; turn: number; report: Report }
  | { type: "refused"; turn: number; refusal: Refusal }
  | { type: "file_refused"; refusal: Refusal }
  | { type: "answer_in_view"; is: boolean }
  /** `covered`: for what stands in its place, and comes back by itself. */
  | { type: "started_again"; covered?: boolean };

/** A phone slows down with thousands of rows, each with its choice. */
const SHOTS_AT_ONCE = 200;

export const start: State = {
  measures: [],
  given: [],
  read: null,
  order: null,
  entry: null,
  unfinished: {},
  past: [],
  ahead: [],
  question: null,
  opening: {},
  sent: null,
  report: null,
  trouble: null,
  cut: null,
  notAdded: null,
  wants: null,
  turn: 0,
  answerInView: false,
  lastInView: null,
  setAside: {},
  confirmed: [],
  shotsShown: SHOTS_AT_ONCE,
  seen: null,
};

export function reduce(state: State, message: Message): State {
  return noteWhatWasSeen(unlessInDoubt(step(state, message)));
}

/** While a doubt of the reading could change the answer there is none: it is asked about first. */
function unlessInDoubt(state: State): State {
  if (state.wants !== "check" || holding(state.given, state.question).length === 0) return state;
  return { ...state, report: null, trouble: null, wants: null };
}

function step(state: State, message: Message): State {
  switch (message.type) {
    case "opened":
      return { ...state, measures: message.measures };
    case "texts_given":
      return {
        ...start,
        measures: state.measures,
        past: state.read ? remembered(state, say("done-opened")).past : [],
        given: withMore([], message.texts),
        opening: message.opening ?? {},
        question: message.question ?? null,
        ...wish(state, "read"),
      };
    case "link_opened": {
      const { source, session, sent, isOwn = false } = message;
      const begun = step(state, { type: "texts_given", texts: [{ source }], question: sent.question });
      const came = afterReading({ ...begun, sent: isOwn ? null : sent }, { results: [asCame(session)], session });
      // Nothing was taken apart yet that could be shown.
      return { ...came, given: came.given.map((one) => ({ ...one, shown: null })) };
    }
    case "link_written": {
      const written = <Step extends Pick<State, "given">>(step: Step): Step => ({
        ...step,
        given: writtenOut(step.given, message),
      });
      return { ...written(state), past: state.past.map(written), ahead: state.ahead.map(written) };
    }
    case "link_cut":
      return { ...state, cut: message.cut };
    case "as_sent":
      return state.sent ? { ...state, question: state.sent.question, setAside: {}, ...wish(state, "read") } : state;
    case "texts_added":
      return withTexts(remembered(state, say("done-added")), withMore(state.given, message.texts));
    case "text_replaced":
      return withTexts(remembered(state, say("done-typed")), replaced(state.given, message));
    case "text_removed":
      return withTexts(
        remembered(state, say("done-removed")),
        state.given.filter((_, at) => at !== message.at),
      );
    case "entry":
      return { ...state, entry: message.entry, trouble: null };
    case "entry_left":
      return { ...state, entry: null, unfinished: { ...state.unfinished, [entryKey(state.entry)]: message.draft } };
    case "hinted":
      return state.given.length > 0 ? afterHint(state, message.hints, message.at ?? 0) : state;
    case "renamed":
      return withNames(
        remembered(state, say("done-renamed", { name: message.build })),
        renamed(state.given, message.build, message.name),
      );
    case "undone":
      return moved(state, "past", "ahead");
    case "redone":
      return moved(state, "ahead", "past");
    case "read":
      return message.turn === state.turn ? afterReading(state, message) : state;
    case "left_out":
      return state.read ? afterLeavingOut(remembered(state, say("done-left-out")), state.read, message) : state;
    case "confirmed":
      return { ...state, confirmed: [...state.confirmed, message.shot] };
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
    case "answer_in_view":
      return { ...state, answerInView: message.is };
    case "started_again":
      return emptied(state, state.read && !message.covered ? remembered(state, say("done-started")).past : []);
  }
}

/** What is still to be read is read first; the answer follows it in any case. */
function wish(state: State, wants: "read" | "check"): Pick<State, "wants" | "turn"> {
  return { wants: state.wants === "read" ? "read" : wants, turn: state.turn + 1 };
}

/** Where an entry's draft is kept: by what is entered, and into which text. */
export const entryKey = (entry: Entry | null): string =>
  entry === null ? "" : `${entry.kind} ${"at" in entry ? entry.at : ""}`;

/** One step back, or one of those again. */
function moved(state: State, from: "past" | "ahead", to: "past" | "ahead"): State {
  const step = state[from].at(-1);
  if (!step) return state;
  const { done, ...then } = step;
  const rest = { [from]: state[from].slice(0, -1), [to]: [...state[to], standing(state, done)] };
  if (then.given.length === 0) return { ...emptied(state, []), ...rest };
  return { ...state, ...then, ...rest, entry: null, ...wish(state, "read") };
}

/** Nothing is given any more; what was can be brought back. */
const emptied = (state: State, past: State["past"]): State => ({
  ...start,
  measures: state.measures,
  past,
  turn: state.turn + 1,
});

/** Other texts: what was said of the order of the old ones says nothing of these. */
function withTexts(state: State, given: readonly Given[]): State {
  if (given.length === 0) return emptied(state, state.past);
  const fresh = state.order === null ? given : given.map((one) => ({ ...one, result: null }));
  return { ...state, given: fresh, order: null, entry: null, unfinished: {}, trouble: null, ...wish(state, "read") };
}

const withNames = (state: State, given: readonly Given[]): State => ({ ...state, given, ...wish(state, "read") });

const replaced = (given: readonly Given[], { at, text }: { at: number; text: NewText }): Given[] =>
  given.map((one, index) => (index === at ? { ...withMore([], [text])[0]!, assumed: one.assumed } : one));

function afterHint(state: State, { order, ...hints }: Hints, at: number | "all"): State {
  const before = remembered(state, say("done-corrected"));
  const said = order === undefined ? before.order : order;
  // The order is the session's: of a single text the reader works it out, of several the joining.
  const touched = (index: number) =>
    (order !== undefined && state.given.length === 1) ||
    ((at === "all" || index === at) && Object.keys(hints).length > 0);
  const given = state.given.map((one, index) => (touched(index) ? again(one, hints) : one));
  return { ...before, given, order: said, ...wish(state, "read") };
}

function afterReading(state: State, { results, session }: { results: readonly ReadResult[]; session: Session }): State {
  const given = state.given.map((one, at) => ({ ...one, result: results[at] ?? null, shown: results[at] ?? null }));
  const empty = given.length > 1 ? given.map(nothingIn).find((refusal) => refusal !== null) : undefined;
  if (empty) {
    const kept = given.filter((one) => nothingIn(one) === null);
    if (kept.length > 0)
      return { ...state, given: kept, past: state.past.slice(0, -1), notAdded: empty, ...wish(state, "read") };
  }
  const question = state.question
    ? settled(state.question, session, state.measures)
    : opened({ ...questionIn(results), ...state.opening }, session, state.measures);
  const filledIn = formDraft(results);
  if (filledIn)
    return {
      ...state,
      given: [],
      read: null,
      entry: filledIn.entry,
      unfinished: { [entryKey(filledIn.entry)]: filledIn.draft },
      wants: null,
    };
  const read = { session, texts: given.length };
  const same = isSameShots(read, state.read);
  const [setAside, confirmed] = same ? [state.setAside, state.confirmed] : [{}, []];
  return {
    ...state,
    given,
    read: joinedWith(read, setAside),
    setAside,
    confirmed,
    question,
    trouble: null,
    ...wish({ ...state, wants: null }, "check"),
  };
}

function afterLeavingOut(state: State, read: Joined, { shot, reason }: { shot: number; reason: string | null }): State {
  const setAside = { ...state.setAside, [shot]: reason };
  return { ...state, read: joinedWith(read, setAside), setAside, ...wish(state, "check") };
}

function afterAsking(state: State, before: Question, patch: Patch<Question>): State {
  const own = ownMargin(before, patched(before, patch));
  const isAnew = "margin" in patch || own.measure !== before.measure || isSpread(own) !== isSpread(before);
  const question = isAnew ? withOffered(own, state.measures) : own;
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
  const { report } = state;
  if (!state.answerInView || state.wants || !report) return state;
  const { asked, answer } = report;
  const inView = { ...state, lastInView: answer.words.headline };
  if (isOf(state.seen, asked)) return inView;
  return { ...inView, seen: { measure: asked.measure, spread: isSpread(asked), margin: asked.margin } };
}

/** Whether the answer has changed while it was out of sight. */
export const hasUnseenAnswer = ({ report, entry, answerInView, lastInView }: State): boolean =>
  report !== null && entry === null && !answerInView && report.answer.words.headline !== lastInView;
