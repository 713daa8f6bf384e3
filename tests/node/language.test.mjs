// Another language in the packages: the table that stands beside them is taken, any other is not, and no number moves.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";
import * as workbook from "../../web/pkg/straight_answer_workbook.js";

const bytes = (path) => readFileSync(new URL(`../../${path}`, import.meta.url));
const table = bytes("web/pkg/straight_answer_es.txt").toString("utf8");
const packages = {
  straight_answer: core,
  straight_answer_workbook: workbook,
};
for (const [name, { initSync }] of Object.entries(packages)) initSync({ module: bytes(`web/pkg/${name}_bg.wasm`) });

const demo = bytes("demo/fair-12-yards.csv").toString("utf8");
const question = { baseline: 0, measure: "carry", stopping: "fixed" };

/** What a call gives, or what it throws. */
function said(call) {
  try {
    return call();
  } catch (refusal) {
    return refusal;
  }
}

/** What a call gives or throws in English, and then in Spanish; nothing of it stays for the next. */
function both(call, spanish = { table }) {
  const english = said(() => call());
  const other = said(() => call(spanish));
  assert.deepEqual(
    said(() => call()),
    english,
    "English again",
  );
  return [english, other];
}

/** An answer without its words. */
const numbers = (report) =>
  JSON.stringify(report, (_, value) => (typeof value === "string" && /\s/u.test(value) ? "…" : value));

test("an answer keeps its decision and changes its words", () => {
  const { session } = core.read(demo, null);
  const [english, spanish] = both((voice) => core.check({ session, question }, voice));
  assert.equal(spanish.answer.decision.kind, english.answer.decision.kind);
  assert.notEqual(spanish.answer.words.headline, english.answer.words.headline);
  assert.equal(numbers(spanish.answer.numbers), numbers(english.answer.numbers));
});

test("measures have the names of the language", () => {
  const [english, spanish] = both(core.measures);
  const speed = (list) => list.find(({ id }) => id === "ball_speed").name;
  assert.deepEqual([speed(english), speed(spanish)], ["Ball speed", "Velocidad de bola"]);
});

test("refusals of the flight, of a plan and of workbooks say it too", () => {
  const refusals = [
    both((voice) => core.fly({ launch: { ball_speed: 160, launch_angle: 90, spin_rate: 2700 } }, voice)),
    both((voice) => core.plan({ builds: ["Own"], measure: "carry" }, voice)),
    both((words) => workbook.sheets(Uint8Array.from([0x50, 0x4b, 3, 4]), words), table),
  ];
  for (const [english, spanish] of refusals) {
    assert.equal(spanish.kind, english.kind);
    assert.notEqual(spanish.message, english.message);
    assert.notEqual(spanish.remedy, english.remedy);
  }
});

test("meters change words and never a number or the decision, in either language", () => {
  const { session } = core.read(demo, null);
  const request = { session, question: { ...question, margin: 5 } };
  const decided = ({ answer }) => [answer.decision, answer.estimate, answer.numbers];
  for (const words of [null, table]) {
    const yards = core.check(request, { table: words, units: "yards" });
    const meters = core.check(request, { table: words, units: "meters" });
    assert.deepEqual(decided(meters), decided(yards));
    assert.match(yards.answer.words.headline, /\d\syd/);
    assert.match(meters.answer.words.headline, /\d\sm\b/);
    assert.doesNotMatch(meters.answer.words.headline, /yd/);
  }
  assert.deepEqual(core.check(request, null), core.check(request, { table: null, units: null }));
});

test("a voice that is none is refused with its place", () => {
  const wrong = [
    [{ units: "metres" }, "voice.units", "Did you mean `meters`?"],
    [{ unit: "meters" }, "voice.unit", "Did you mean `units`?"],
    [{ table: 7 }, "voice.table", "Send a value of that type."],
  ];
  for (const [voice, place, remedy] of wrong) {
    const refusal = said(() => core.measures(voice));
    assert.deepEqual([refusal.kind, refusal.place, refusal.remedy], ["not_understood", place, remedy]);
  }
});

test("a table that is none, was cut or belongs to another version is refused, and English stays", () => {
  const lines = table.split("\n");
  const wrong = [
    "es",
    lines.slice(0, -2).join("\n"),
    ["0".repeat(16), ...lines.slice(1)].join("\n"),
    "\0",
    lines.slice(0, 3).join("\n"),
  ];
  const english = core.measures();
  const noWorkbook = Uint8Array.from([0x50, 0x4b, 3, 4]);
  const unopened = said(() => workbook.sheets(noWorkbook));
  for (const text of wrong) {
    const refusal = said(() => core.measures({ table: text }));
    assert.deepEqual([refusal.kind, refusal.place], ["table_of_another_version", "voice.table"]);
    // Why a file was not opened is worth more than in which language.
    assert.deepEqual(
      said(() => workbook.sheets(noWorkbook, text)),
      unopened,
    );
  }
  assert.deepEqual(core.measures(), english);
});
