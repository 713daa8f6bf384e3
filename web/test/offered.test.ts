/** The margin that the form offers: round in the units shown, in the question before it is asked, and never put into one that came without. */
import { describe, expect, test } from "vitest";
import type { Measure, Question, Report } from "../src/core/engine.js";
import { marginScale } from "../src/format/margin.js";
import { measureView } from "../src/format/values.js";
import { marginAsked, withOffered } from "../src/state/question.js";
import { type Message, reduce, type State, start } from "../src/state/state.js";
import { MEASURES, readResult, report, session } from "./fake-engine.js";

/** Five meters and two kilometers an hour, in canonical units. */
const FIVE_METERS = 5 / 0.9144;
const TWO_KMH = 2 / 1.609344;
const offers: Record<string, number> = { carry: FIVE_METERS, offline: FIVE_METERS, ball_speed: TWO_KMH };
const IN_METERS: Measure[] = MEASURES.map((one) => ({ ...one, offered_margin: offers[one.id] ?? one.margin }));

const run = (state: State, ...messages: Message[]): State => messages.reduce(reduce, state);
const of = session(2, 3, ["carry", "ball_speed", "spin_rate"]);

/** A question as it is asked first, of a session that has just been read. */
function first(measures: Measure[], message: Message): State {
  const one = run(start, { type: "opened", measures }, message);
  return run(one, { type: "read", turn: one.turn, results: [readResult(of)], session: of });
}

const pasted: Message = { type: "texts_given", texts: [{ source: { kind: "pasted", name: "t", text: "x" } }] };
const linked = (question: Question): Message => ({
  type: "link_opened",
  source: { kind: "link", name: "t", text: "" },
  session: of,
  sent: { question, view: {}, notices: [] },
});

describe("a new question", () => {
  test("asks with a round number of meters, and in yards leaves the margin to the core", () => {
    expect(first(IN_METERS, pasted).question).toEqual({
      baseline: 0,
      measure: "carry",
      stopping: "unknown",
      margin: FIVE_METERS,
    });
    expect(first(MEASURES, pasted).question).toEqual({ baseline: 0, measure: "carry", stopping: "unknown" });
  });

  test("of which something is known is offered the margin of its measure, save one that was said", () => {
    const opening = (said: Partial<Question>) => first(IN_METERS, { ...pasted, opening: said }).question?.margin;
    expect(opening({ stopping: "fixed" })).toBe(FIVE_METERS);
    expect(opening({ measure: "ball_speed" })).toBe(TWO_KMH);
    expect(opening({ margin: 8 })).toBe(8);
    expect(opening({ measure: "spin_rate" })).toBeUndefined();
    expect(opening({ goal: "tighter" })).toBeUndefined();
    expect(opening({ measure: "not there" })).toBe(FIVE_METERS);
  });

  test("also when the measures arrive after the text", () => {
    const one = run(start, { ...pasted, opening: { stopping: "fixed" } }, { type: "opened", measures: IN_METERS });
    const read = run(one, { type: "read", turn: one.turn, results: [readResult(of)], session: of });
    expect(read.question).toMatchObject({ stopping: "fixed", margin: FIVE_METERS });
  });
});

describe("a question that was asked elsewhere", () => {
  const question: Question = { baseline: 1, measure: "carry", stopping: "fixed" };

  test("keeps having none, however often its shots are read", () => {
    const state = first(IN_METERS, linked(question));
    expect(state.question).toEqual(question);
    const corrected = run(state, { type: "hinted", hints: { decimal_mark: "," } });
    const again = run(corrected, { type: "read", turn: corrected.turn, results: [readResult(of)], session: of });
    expect(again.question).toEqual(question);
    expect(run(again, { type: "as_sent" }).question).toEqual(question);
    expect(first(IN_METERS, { ...pasted, question }).question).toEqual(question);
  });

  test("keeps the one that it has", () => {
    expect(first(IN_METERS, linked({ ...question, margin: 4.5 })).question?.margin).toBe(4.5);
  });

  test("of a measure that these shots lack is asked anew of another", () => {
    const state = first(IN_METERS, linked({ ...question, margin: 2, measure: "offline" }));
    expect(state.question).toMatchObject({ measure: "carry", margin: FIVE_METERS });
  });
});

describe("a change in the form", () => {
  const link = first(IN_METERS, linked({ baseline: 0, measure: "carry", stopping: "fixed" }));
  const own = first(IN_METERS, pasted);
  const ask = (state: State, ...patches: Extract<Message, { type: "asked" }>["patch"][]) =>
    run(state, ...patches.map((patch): Message => ({ type: "asked", patch }))).question;

  test("of the measure brings the margin offered for it, of a link too", () => {
    for (const state of [link, own]) {
      expect(ask(state, { measure: "ball_speed" })?.margin).toBe(TWO_KMH);
      expect(ask(state, { measure: "ball_speed" }, { measure: "carry" })?.margin).toBe(FIVE_METERS);
      expect(ask(state, { measure: "spin_rate" })).not.toHaveProperty("margin");
    }
  });

  test("to an emptied margin brings back what is offered; in yards what the core takes", () => {
    expect(ask(own, { margin: 8 }, { margin: undefined })?.margin).toBe(FIVE_METERS);
    expect(ask(link, { margin: undefined })?.margin).toBe(FIVE_METERS);
    expect(ask(first(MEASURES, pasted), { margin: 8 }, { margin: undefined })).not.toHaveProperty("margin");
  });

  test("of anything else leaves the margin as it was asked with", () => {
    expect(ask(link, { stopping: "unknown" }, { baseline: 1 }, { goal: "different" })).not.toHaveProperty("margin");
    expect(ask(own, { stopping: "fixed" }, { baseline: 1 }, { goal: "different" })?.margin).toBe(FIVE_METERS);
  });

  test("to scatter and back never takes yards for a ratio", () => {
    expect(ask(own, { goal: "tighter" })).not.toHaveProperty("margin");
    expect(ask(own, { goal: "tighter" }, { margin: undefined })).not.toHaveProperty("margin");
    expect(ask(own, { goal: "tighter" }, { margin: 1.5 }, { goal: "higher" })?.margin).toBe(FIVE_METERS);
  });
});

describe("the field of a question without a margin", () => {
  const question: Question = { baseline: 0, measure: "carry", stopping: "fixed" };
  const view = (id: string) => measureView(id, IN_METERS, of);
  const shownOf = (said: Report | null, of = question) => marginAsked(said, view(of.measure), of);

  test("shows what the report says was asked, not what would be offered", () => {
    expect(shownOf(report("carry", 5.25))).toBe(5.25);
    expect(marginScale(question, { ...view("carry"), unit: "m", scale: 0.9144 }).shown(5)).toBe(4.6);
  });

  test("shows the measure's own while there is no report, or one of another question", () => {
    expect(shownOf(null)).toBe(5);
    expect(shownOf(report("ball_speed", 1.5))).toBe(5);
    expect(shownOf(report("carry", 1.25), { ...question, goal: "tighter" })).toBeNull();
    const chosen = report("carry", 8);
    expect(shownOf({ ...chosen, asked: { ...chosen.asked, margin_is_default: false } })).toBe(5);
  });

  test("shows what only the report knows of scatter", () => {
    const said = report("carry", 1.25);
    const spread = { ...said, asked: { ...said.asked, goal: "tighter" as const } };
    expect(shownOf(spread, { ...question, goal: "tighter" })).toBe(1.25);
    expect(shownOf(spread)).toBe(5);
  });
});

test("a plan of a test is offered it as a question is", () => {
  const request = { builds: ["A", "B"], measure: "carry", same_club: false };
  expect(withOffered(request, IN_METERS)).toEqual({ ...request, margin: FIVE_METERS });
  expect(withOffered({ ...request, margin: 3 }, IN_METERS).margin).toBe(3);
  expect(withOffered({ ...request, goal: "tighter" as const }, IN_METERS)).not.toHaveProperty("margin");
  expect(withOffered(request, MEASURES)).toEqual(request);
});
