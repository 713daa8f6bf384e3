/** Several texts: whose shots they are, clubs renamed through every text, steps taken back. */
import { describe, expect, test } from "vitest";
import type { ReadResult, Session } from "../src/core/engine.js";
import { type Message, reduce, type State, start } from "../src/state/state.js";
import {
  type Given,
  hintsFor,
  type NewText,
  nothingIn,
  renamed,
  textsOf,
  unnamed,
  withMore,
} from "../src/state/texts.js";
import { MEASURES, readResult, session } from "./fake-engine.js";

const text = (name: string, kind: "pasted" | "file" = "pasted"): NewText => ({ source: { kind, name, text: "x" } });

/** A reading whose clubs have these names; `assumed` says that the text named none. */
function reading(names: string[], assumed = false): ReadResult {
  const of = session(names.length);
  of.builds = names.map((name) => ({ name }));
  return {
    ...readResult(of),
    notices: assumed ? [{ kind: "build_assumed", place: { line: 0, column: null }, message: "" }] : [],
  };
}

const withReading = (given: Given, result: ReadResult): Given => ({ ...given, result });

describe("whose shots", () => {
  const [first] = withMore([], [text("a")]) as [Given];
  const read = withReading(first, reading(["Club 1"], true));

  test("a text that names no club is asked about, until the golfer says it", () => {
    expect(hintsFor(first)).toEqual({});
    expect(unnamed(read)).toBe("Club 1");
    const [named] = renamed([read], "Club 1", "Mine") as [Given];
    expect(named).toMatchObject({ hints: { build: "Mine" }, result: null });
    expect(unnamed(withReading(named, reading(["Mine"])))).toBeNull();
  });

  test("shots without a club in a second text never fall to a club that is there", () => {
    const [, second] = withMore([read], [text("b")]) as [Given, Given];
    expect(hintsFor(second)).toEqual({ build: "Club 2" });
    expect(unnamed(withReading(second, reading(["Club 2"])))).toBe("Club 2");
    expect(unnamed(withReading(second, reading(["Driver"])))).toBeNull();
  });

  test("a file's name stands in for its club; sheets chosen together name theirs", () => {
    expect(hintsFor(withMore([read], [text("driver b.csv", "file")])[1]!)).toEqual({ build: "driver b" });
    const together = withMore([], [text("a.csv", "file"), text("b.csv", "file"), text("t")]);
    expect(together.map(({ hints }) => hints.build)).toEqual(["a", "b", undefined]);
    const workbook = {
      name: "w.xlsx",
      sheets: [
        { name: "A", rows: 2, text: "a" },
        { name: "B", rows: 3, text: "b" },
      ],
    };
    expect(textsOf(workbook, [0, 1]).map(({ hints }) => hints)).toEqual([{ build: "A" }, { build: "B" }]);
    expect(textsOf(workbook, [1])).toEqual([{ source: { kind: "file", name: "B (w.xlsx)", text: "b" }, hints: {} }]);
  });
});

describe("renaming", () => {
  const one = withReading(withMore([], [text("a")])[0]!, reading(["A", "B"]));

  test("goes by the name that stands in the text, also the second time", () => {
    const [once] = renamed([one], "A", "Mine") as [Given];
    expect(once.hints.names).toEqual({ A: "Mine" });
    const [twice] = renamed([withReading(once, reading(["Mine", "B"]))], "Mine", "Old") as [Given];
    expect(twice.hints.names).toMatchObject({ A: "Old" });
  });

  test("leaves texts alone that have no such club", () => {
    expect(renamed([one], "C", "D")).toEqual([one]);
  });
});

test("a text without shots or averages says why it was not added", () => {
  const empty: Session = { ...session(1), shots: [] };
  expect(nothingIn(withReading(withMore([], [text("a")])[0]!, readResult(empty)))?.message).toMatch(
    /Nothing was added/,
  );
  expect(nothingIn(withReading(withMore([], [text("a")])[0]!, readResult(session(1))))).toBeNull();
});

describe("steps", () => {
  const run = (state: State, ...messages: Message[]): State => messages.reduce(reduce, state);
  /** The texts as read, joined into `of`. */
  const read = (state: State, of: Session): State =>
    run(state, {
      type: "read",
      turn: state.turn,
      results: state.given.map((one) => one.result ?? readResult(of)),
      session: of,
    });
  const begun = read(run({ ...start, measures: MEASURES }, { type: "texts_given", texts: [text("a")] }), session(2));

  test("another text is added, and taken back with what was left out before it", () => {
    const out = run(begun, { type: "left_out", shot: 1, reason: "mishit" });
    const added = read(run(out, { type: "texts_added", texts: [text("b")] }), session(2, 5));
    expect(added.given).toHaveLength(2);
    expect(added.read?.session.shots[1]?.left_out).toBe("mishit");
    const back = read(run(added, { type: "undone" }), session(2));
    expect(back.given).toHaveLength(1);
    expect(back.read?.session.shots.map(({ left_out }) => left_out)).toEqual([null, "mishit", null, null, null, null]);
    expect(read(run(back, { type: "undone" }), session(2)).read?.session.shots[1]?.left_out).toBeNull();
  });

  test("nothing to take back changes nothing", () => expect(run(begun, { type: "undone" })).toBe(begun));

  test("other shots in the place of these can be taken back too", () => {
    const other = read(run(begun, { type: "texts_given", texts: [text("c")] }), session(3));
    const back = run(other, { type: "undone" });
    expect(back.given).toEqual(begun.given);
    expect(back.read).toEqual(begun.read);
  });

  test("a text with nothing in it is dropped, and the rest stays", () => {
    const empty = { ...session(2), shots: [] };
    const adding = run(begun, { type: "texts_added", texts: [text("b")] });
    const results = [readResult(session(2)), readResult(empty)];
    const after = run(adding, { type: "read", turn: adding.turn, results, session: session(2) });
    expect(after.given).toHaveLength(1);
    expect(after.notAdded?.place).toBe("b");
    expect(after.past).toHaveLength(0);
  });

  test("what was said of the order of one text says nothing of two", () => {
    const said = read(run(begun, { type: "hinted", hints: { order: "blocked" } }), session(2));
    expect(said.order).toBe("blocked");
    const added = run(said, { type: "texts_added", texts: [text("b")] });
    expect(added.order).toBeNull();
    expect(added.given.every(({ result }) => result === null)).toBe(true);
  });

  test("the last text removed leaves an empty page", () => {
    expect(run(begun, { type: "text_removed", at: 0 })).toMatchObject({ given: [], read: null, measures: MEASURES });
  });
});
