/** A session that came by a link: the sender's settings, the reader's own, and back. */
import { describe, expect, test } from "vitest";
import type { Question } from "../src/core/engine.js";
import { isChanged, isLink, withoutNames } from "../src/state/link.js";
import { type Message, reduce, type State, start } from "../src/state/state.js";
import { MEASURES, readResult, report, session } from "./fake-engine.js";

const question: Question = { baseline: 1, measure: "carry", margin: 4, stopping: "fixed" };
const run = (state: State, ...messages: Message[]): State => messages.reduce(reduce, state);
const source = { kind: "link", name: "The link", text: "" } as const;
const written: Message = { type: "link_written", source, text: "csv", result: readResult(session(2, 3)) };

const linkOpened = (): Message => ({
  type: "link_opened",
  source,
  session: session(2, 3),
  sent: { question, view: { note: "Saturday" }, notices: [] },
});

function opened(): State {
  const one = run(start, { type: "opened", measures: MEASURES }, linkOpened());
  return run(one, { type: "answered", turn: one.turn, report: report() });
}

describe("a link", () => {
  test("is told from an example and from a part of the page", () => {
    // Also one of which only the beginning is left.
    expect(["#1.AQY", "1.AQY", "#12.x", "#1."].map(isLink)).toEqual([true, true, true, true]);
    expect(["", "#answer", "#example=fair", "#v1.AQY"].map(isLink)).toEqual([false, false, false, false]);
  });

  test("asks as its sender did", () => {
    const state = opened();
    expect(state.question).toEqual(question);
    expect(state.sent?.view.note).toBe("Saturday");
    expect(isChanged(state)).toBe(false);
  });

  test("lets the reader ask anew, and go back to how it was sent", () => {
    const changed = run(
      opened(),
      { type: "asked", patch: { margin: 9 } },
      { type: "left_out", shot: 0, reason: "mishit" },
    );
    expect(isChanged(changed)).toBe(true);
    expect(changed.sent?.question).toEqual(question);
    const back = run(changed, { type: "as_sent" });
    expect(back.question).toEqual(question);
    expect(back.wants).toBe("read");
    expect(isChanged(back)).toBe(false);
  });

  test("is answered as it came, before its shots are a text", () => {
    const state = run(start, { type: "opened", measures: MEASURES }, linkOpened());
    expect(state.wants).toBe("check");
    expect(state.read?.session).toEqual(session(2, 3));
    expect(state.given[0]).toMatchObject({ source: { text: "" }, shown: null });
    const { turn, given, wants, report: answer } = run(opened(), written);
    expect([turn, wants, answer]).toEqual([opened().turn, null, opened().report]);
    expect(given[0]).toMatchObject({ source: { text: "csv" }, shown: { session: session(2, 3) } });
  });

  test("keeps what was corrected before its shots were a text", () => {
    const renamed = run(opened(), { type: "renamed", build: "Club 1", name: "Mine" }, written);
    expect(renamed.wants).toBe("read");
    expect(renamed.given[0]).toMatchObject({
      source: { text: "csv" },
      hints: { names: { "Club 1": "Mine" } },
      result: null,
    });
    const undone = run(renamed, { type: "undone" });
    expect(undone.given[0]).toMatchObject({ source: { text: "csv" }, hints: {} });
  });

  test("that another has taken the place of is written out where it can be gone back to", () => {
    const other = { kind: "pasted", name: "t", text: "x" } as const;
    const state = run(opened(), { type: "texts_given", texts: [{ source: other }] }, written);
    expect(state.given[0]?.source.text).toBe("x");
    expect(run(state, { type: "undone" }).given[0]?.source.text).toBe("csv");
  });

  test("that could not be opened leaves everything as it was, and is gone with the next that can", () => {
    const refusal = { kind: "damaged", place: "", message: "m", remedy: "r" };
    const before = opened();
    const cut = run(before, { type: "link_cut", cut: { link: "#1.A", refusal } });
    expect(cut).toEqual({ ...before, cut: { link: "#1.A", refusal } });
    expect(run(cut, { type: "link_cut", cut: null })).toEqual(before);
    expect(run(cut, linkOpened()).cut).toBeNull();
  });

  test("taken back leaves one's own shots, sent by nobody; done again it is the link", () => {
    const own = run(
      start,
      { type: "opened", measures: MEASURES },
      { type: "texts_given", texts: [{ source: { kind: "pasted", name: "t", text: "x" } }] },
    );
    const read = run(own, {
      type: "read",
      turn: own.turn,
      results: [readResult(session(2, 3))],
      session: session(2, 3),
    });
    const link = run(read, linkOpened());
    expect(link.sent).not.toBeNull();
    const back = run(link, { type: "undone" });
    expect([back.sent, back.given[0]?.source.kind]).toEqual([null, "pasted"]);
    const again = run(back, { type: "redone" });
    expect([again.sent, again.given[0]?.source.kind]).toEqual([link.sent, "link"]);
    expect(run(again, { type: "redone" })).toEqual(again);
  });

  test("is forgotten with its shots", () => {
    expect(run(opened(), { type: "texts_given", texts: [{ source }] }).sent).toBeNull();
    expect(run(opened(), { type: "started_again" }).sent).toBeNull();
  });
});

test("names left out become letters, and nothing else changes", () => {
  const named = session(28, 1);
  const blank = withoutNames(named);
  expect(blank.builds.map(({ name }) => name)).toEqual(
    expect.arrayContaining(["Club A", "Club Z", "Club AA", "Club AB"]),
  );
  expect({ ...blank, builds: [] }).toEqual({ ...named, builds: [] });
});
