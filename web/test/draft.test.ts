/** What a reload must not lose, and what comes again by itself. */
import { expect, test } from "vitest";
import { draftIn, draftOf } from "../src/state/draft.js";
import { start } from "../src/state/state.js";
import { withMore } from "../src/state/texts.js";

const pasted = withMore([], [{ source: { kind: "pasted", name: "Pasted", text: "Club,Carry\nA,250" } }]);
const question = { baseline: 0, measure: "carry", stopping: "unknown" } as const;
const plain = { asShown: null, typed: "", draft: undefined, at: "#shots" };

test("texts, the question, a form and a field that was not read come back as they were", () => {
  const entry = { kind: "grid", at: null } as const;
  const draft = draftOf({ given: pasted, question, entry }, { ...plain, typed: "half", draft: { rows: [1] } })!;
  const back = draftIn(JSON.stringify(draft), "#shots")!;
  expect(back.texts).toEqual([{ source: pasted[0]!.source, hints: {} }]);
  expect(back).toMatchObject({ question, typed: "half", entry: { kind: "grid", at: null, draft: { rows: [1] } } });
});

test("what was said of single shots goes along as the page's own file", () => {
  const draft = draftOf({ given: pasted, question, entry: null }, { ...plain, asShown: "Straight Answer session,1" })!;
  expect(draft.texts.map(({ source }) => source.text)).toEqual(["Straight Answer session,1"]);
});

test("nothing, a link, an example and the shots of a test need no draft", () => {
  expect(draftOf(start, plain)).toBeNull();
  for (const kind of ["link", "example", "logged"] as const) {
    const given = withMore([], [{ source: { kind, name: "", text: "x" } }]);
    expect(draftOf({ ...start, given }, plain)).toBeNull();
    // With more beside it, the whole would be lost.
    const more = withMore(given, [{ source: { kind: "pasted", name: "", text: "y" } }]);
    expect(draftOf({ ...start, given: more }, plain)?.texts).toHaveLength(2);
  }
});

test("a draft of another address, a damaged one or none is none", () => {
  const text = JSON.stringify(draftOf({ given: pasted, question, entry: null }, plain));
  expect(draftIn(text, "#shots")).not.toBeNull();
  expect(draftIn(text, "#1.ARgC")).toBeNull();
  for (const wrong of [null, "", "no", "null", "{}", '{"at":"#shots","texts":3}'])
    expect(draftIn(wrong, "#shots")).toBeNull();
});
