/** What a reading is in doubt of holds the answer; a tap settles it; sentences open a form. */
import { describe, expect, test } from "vitest";
import type { Form, ReadingDoubt, Session } from "../src/core/engine.js";
import { copied } from "../src/state/clipboard.js";
import { holding } from "../src/state/doubts.js";
import { type Message, reduce, type State, start } from "../src/state/state.js";
import { MEASURES, readResult, session } from "./fake-engine.js";

const run = (state: State, ...messages: Message[]): State => messages.reduce(reduce, state);
const given = run(
  start,
  { type: "opened", measures: MEASURES },
  { type: "texts_given", texts: [{ source: { kind: "pasted", name: "t", text: "x" } }] },
);
const doubt = (holds: string[]): ReadingDoubt => ({
  key: "out_of_range:spin_rate",
  kind: "out_of_range",
  measure: "spin_rate",
  builds: [0],
  lines: [3],
  holds,
  question: "Is that right?",
  choices: [{ says: "leave_out", label: "Leave that out" }],
  samples: [],
});
const read = (of: Session, doubts: ReadingDoubt[]): State =>
  run(given, { type: "read", turn: given.turn, results: [{ ...readResult(of), doubts }], session: of });
const two = session(2, 3, ["carry", "spin_rate"]);

describe("doubts", () => {
  test("one that touches every answer is asked about instead of the answer", () => {
    const state = read(two, [doubt([])]);
    expect(state).toMatchObject({ wants: null, report: null });
    expect(holding(state.given, state.question)).toHaveLength(1);
  });

  test("one of another measure holds only the answer on that measure", () => {
    const state = read(two, [doubt(["spin_rate"])]);
    expect(state.question?.measure).toBe("carry");
    expect(state.wants).toBe("check");
    expect(run(state, { type: "asked", patch: { measure: "spin_rate" } }).wants).toBeNull();
  });

  test("a tap has the text read again with what was said, beside what was said before", () => {
    const before = read(two, [doubt([])]);
    const one = run(before, { type: "hinted", hints: { settled: { "out_of_range:spin_rate": "leave_out" } } });
    const more = run(one, { type: "hinted", hints: { settled: { plus_minus: "right" } } });
    expect(more.wants).toBe("read");
    expect(more.given[0]?.hints.settled).toEqual({ "out_of_range:spin_rate": "leave_out", plus_minus: "right" });
  });
});

describe("sentences", () => {
  const opened = (form: Form): State =>
    run(given, { type: "read", turn: given.turn, results: [{ ...readResult(session(0)), form }], session: session(0) });

  test("averages open their form filled in", () => {
    const state = opened({ kind: "averages", rows: [{ name: "old driver", n: 12, values: { carry: 248 } }] });
    expect(state).toMatchObject({ read: null, wants: null, entry: { kind: "averages", at: null } });
    expect(Object.values(state.unfinished)[0]).toMatchObject({
      columns: ["carry"],
      clubs: [{ name: "old driver", shots: "12", values: { carry: { average: "248" } } }],
    });
  });

  test("shots open the grid filled in", () => {
    const state = opened({ kind: "list", rows: [{ name: "old driver", shots: [248, 252] }] });
    expect(state.entry).toEqual({ kind: "grid", at: null });
    expect(Object.values(state.unfinished)[0]).toMatchObject({ clubs: [{ rows: [["248"], ["252"]] }] });
  });
});

describe("what was copied", () => {
  test("a table whose cells span is taken by its markup, any other as it stands between tabs", () => {
    const tall = '<table><tr><td rowspan="2">A</td><td>1</td></tr></table>';
    expect(copied("A\t1\n2", tall)).toBe(tall);
    expect(copied("A\t1\nA\t2", "<table><tr><td>A</td></tr></table>")).toBe("A\t1\nA\t2");
    expect(copied("A 1", "<table><tr><td>A</td></tr></table>")).toContain("<table");
    expect(copied("a note", "<p>a note</p>")).toBe("a note");
  });
});
