/** How events change what the page knows: overtaken outcomes, corrections, a margin changed late. */
import { describe, expect, test } from "vitest";
import type { Session } from "../src/core/engine.js";
import { type Message, reduce, type State, start } from "../src/state/state.js";
import { MEASURES, readResult, report, session } from "./fake-engine.js";

const run = (state: State, ...messages: Message[]): State => messages.reduce(reduce, state);
const opened = run(start, { type: "opened", measures: MEASURES });
const text = (words: string) => ({ source: { kind: "pasted", name: "t", text: words } as const });
const given = (words: string): Message => ({ type: "texts_given", texts: [text(words)] });
/** The reading of a single text arrives. */
const arrived = (turn: number, of: Session): Message => ({
  type: "read",
  turn,
  results: [readResult(of)],
  session: of,
});

/** A state whose reading and answer have arrived. */
function answered(of = session(2, 3, ["carry", "ball_speed"]), from: State = run(opened, given("x"))): State {
  const read = run(from, arrived(from.turn, of));
  return run(read, { type: "answered", turn: read.turn, report: report() });
}

describe("work follows wishes", () => {
  test("a text wants to be read, a reading wants to be checked, an answer wants nothing", () => {
    const one = run(opened, given("x"));
    expect(one.wants).toBe("read");
    const two = run(one, arrived(one.turn, session(2)));
    expect(two.wants).toBe("check");
    const three = run(two, { type: "answered", turn: two.turn, report: report() });
    expect(three.wants).toBeNull();
    expect(three.report?.answer.words.headline).toBe("Not settled.");
  });

  test("an outcome overtaken by a newer text is dropped", () => {
    const one = run(opened, given("old"));
    const two = run(one, given("new"));
    const late = run(two, arrived(one.turn, session(2)));
    expect(late.read).toBeNull();
    expect(late.wants).toBe("read");
  });

  test("a question asked while a correction is still to be read keeps the reading wanted, and is answered after it", () => {
    const corrected = run(
      answered(),
      { type: "hinted", hints: { decimal_mark: "," } },
      { type: "asked", patch: { margin: 3 } },
    );
    expect(corrected.wants).toBe("read");
    const read = run(corrected, arrived(corrected.turn, session(2, 3, ["carry", "ball_speed"])));
    expect(read.wants).toBe("check");
    expect(read.question?.margin).toBe(3);
  });

  test("a refusal says why and keeps the text and the reading", () => {
    const before = run(answered(), { type: "asked", patch: { margin: 3 } });
    const refusal = { kind: "k", place: "question.margin", message: "m", remedy: "r" };
    const after = run(before, { type: "refused", turn: before.turn, refusal });
    expect(after).toMatchObject({ trouble: refusal, report: null, wants: null });
    expect(after.read).toBe(before.read);
    expect(after.given[0]?.source.text).toBe("x");
  });

  test("a new text forgets everything said about the old one", () => {
    const after = run(answered(), { type: "hinted", hints: { decimal_mark: "," } }, given("y"));
    expect(after).toMatchObject({ given: [{ hints: {} }], read: null, report: null, question: null, seen: null });
  });

  test("starting again drops what is still being worked on", () => {
    const one = run(opened, given("x"));
    const again = run(one, { type: "started_again" });
    expect(run(again, arrived(one.turn, session(2))).read).toBeNull();
    expect(again.measures).toBe(MEASURES);
  });
});

describe("starting again", () => {
  test("can be taken back, and done again", () => {
    const before = answered();
    const away = run(before, { type: "started_again" });
    expect(away).toMatchObject({ given: [], read: null, report: null, wants: null });
    const back = run(away, { type: "undone" });
    expect(back.given).toEqual(before.given);
    expect(back.question).toEqual(before.question);
    expect(back.wants).toBe("read");
    const again = run(back, { type: "redone" });
    expect(again).toMatchObject({ given: [], read: null, wants: null });
    expect(run(again, { type: "undone" }).given).toEqual(before.given);
  });

  test("what a test covers while it is hit leaves nothing to take back", () => {
    expect(run(answered(), { type: "started_again", covered: true }).past).toEqual([]);
  });
});

describe("corrections add up", () => {
  test("column and unit corrections are kept side by side", () => {
    const after = run(
      answered(),
      { type: "hinted", hints: { columns: { 0: "build" } } },
      { type: "hinted", hints: { columns: { 2: { measure: "carry" } }, units: { 2: "m" } } },
      { type: "hinted", hints: { order: "interleaved" } },
    );
    expect(after.given[0]?.hints).toEqual({ columns: { 0: "build", 2: { measure: "carry" } }, units: { 2: "m" } });
    expect(after.order).toBe("interleaved");
    expect(after.wants).toBe("read");
  });

  test("the question survives a new reading as far as it still fits", () => {
    const asked = run(answered(session(3)), { type: "asked", patch: { baseline: 2, candidate: 0, margin: 8 } });
    const same = answered(session(3), run(asked, { type: "hinted", hints: { order: "blocked" } }));
    expect(same.question).toMatchObject({ baseline: 2, candidate: 0, margin: 8 });
    const fewer = answered(session(2), run(asked, { type: "hinted", hints: { order: "blocked" } }));
    expect(fewer.question).toEqual({ baseline: 0, measure: "carry", stopping: "unknown", margin: 8 });
  });
});

describe("a margin changed after its answer was seen says so", () => {
  const seen = run(answered(), { type: "answer_in_view", is: true });

  test("not before the answer was on the screen", () => {
    expect(run(answered(), { type: "asked", patch: { margin: 8 } }).question).not.toHaveProperty("first_margin");
  });

  test("after it was, with the margin it was seen under", () => {
    expect(run(seen, { type: "asked", patch: { margin: 8 } }).question).toMatchObject({ margin: 8, first_margin: 5 });
  });

  test("no more once it is back where it was", () => {
    const back = run(seen, { type: "asked", patch: { margin: 8 } }, { type: "asked", patch: { margin: 5 } });
    expect(back.question).not.toHaveProperty("first_margin");
  });

  test("not for another measure, whose answer nobody has seen", () => {
    const other = run(
      seen,
      { type: "asked", patch: { margin: 8 } },
      { type: "asked", patch: { measure: "ball_speed" } },
    );
    expect(other.question).toEqual({ baseline: 0, measure: "ball_speed", stopping: "unknown" });
    expect(run(other, { type: "asked", patch: { margin: 3 } }).question).not.toHaveProperty("first_margin");
  });
});

describe("a margin in yards never becomes a ratio of scatter", () => {
  const inYards = run(answered(), { type: "asked", patch: { margin: 8 } });

  test("it stays behind when scatter is asked for, and the ratio when averages are again", () => {
    const spread = run(inYards, { type: "asked", patch: { goal: "tighter" } });
    expect(spread.question).toEqual({ baseline: 0, measure: "carry", stopping: "unknown", goal: "tighter" });
    const back = run(spread, { type: "asked", patch: { margin: 1.5 } }, { type: "asked", patch: { goal: "higher" } });
    expect(back.question).not.toHaveProperty("margin");
  });

  test("it stays between goals about averages", () => {
    expect(run(inYards, { type: "asked", patch: { goal: "different" } }).question).toMatchObject({ margin: 8 });
  });

  test("an answer seen about averages says nothing about margins of scatter", () => {
    const seen = run(answered(), { type: "answer_in_view", is: true });
    const spread = run(seen, { type: "asked", patch: { goal: "tighter" } }, { type: "asked", patch: { margin: 1.5 } });
    expect(spread.question).not.toHaveProperty("first_margin");
  });
});

test("a choice can be handed back to the core", () => {
  const chosen = run(answered(session(3)), { type: "asked", patch: { candidate: 2 } });
  expect(run(chosen, { type: "asked", patch: { candidate: undefined } }).question).not.toHaveProperty("candidate");
});

test("without carry the first measure of the trade's list is asked about", () => {
  expect(answered(session(2, 3, ["own column", "spin_rate", "ball_speed"])).question?.measure).toBe("ball_speed");
  expect(answered(session(2, 3, ["own column"])).question?.measure).toBe("own column");
});

describe("a shot left out", () => {
  const out = run(answered(), { type: "left_out", shot: 1, reason: "mishit" });

  test("keeps its place and its reason, and the answer is asked for again", () => {
    expect(out.read?.session.shots.map(({ left_out }) => left_out)).toEqual([null, "mishit", null, null, null, null]);
    expect(out.wants).toBe("check");
    expect(run(out, { type: "left_out", shot: 1, reason: null }).read?.session.shots[1]?.left_out).toBeNull();
  });

  test("one that the text leaves out can be put back, and stays so", () => {
    const marked = session(2);
    marked.shots[2]!.left_out = "no reason given";
    const back = run(answered(marked), { type: "left_out", shot: 2, reason: null });
    const again = run(back, { type: "hinted", hints: { order: "blocked" } });
    const read = run(again, arrived(again.turn, marked));
    expect(read.read?.session.shots[2]?.left_out).toBeNull();
  });

  test("stays out when the same shots are read again, and not when they are others", () => {
    const again = run(out, { type: "hinted", hints: { order: "blocked" } });
    const same = run(again, arrived(again.turn, session(2, 3, ["carry", "ball_speed"])));
    expect(same.read?.session.shots[1]?.left_out).toBe("mishit");
    const other = run(again, arrived(again.turn, session(2, 4)));
    expect(other.read?.session.shots.every(({ left_out }) => left_out === null)).toBe(true);
  });
});
