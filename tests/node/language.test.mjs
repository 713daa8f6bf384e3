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

/** What a call gives or throws in English, and then in Spanish. */
function both(of, call) {
  const said = () => {
    try {
      return call();
    } catch (refusal) {
      return refusal;
    }
  };
  assert.equal(of.speak(""), true);
  const english = said();
  assert.equal(of.speak(table), true);
  const spanish = said();
  assert.equal(of.speak(""), true);
  assert.deepEqual(said(), english, "English again");
  return [english, spanish];
}

/** An answer without its words. */
const numbers = (report) =>
  JSON.stringify(report, (_, value) => (typeof value === "string" && /\s/u.test(value) ? "…" : value));

test("an answer keeps its decision and changes its words", () => {
  const { session } = core.read(demo, null);
  const [english, spanish] = both(core, () => core.check({ session, question }));
  assert.equal(spanish.answer.decision.kind, english.answer.decision.kind);
  assert.notEqual(spanish.answer.words.headline, english.answer.words.headline);
  assert.equal(numbers(spanish.answer.numbers), numbers(english.answer.numbers));
});

test("measures have the names of the language", () => {
  const [english, spanish] = both(core, () => core.measures());
  const speed = (list) => list.find(({ id }) => id === "ball_speed").name;
  assert.deepEqual([speed(english), speed(spanish)], ["Ball speed", "Velocidad de bola"]);
});

test("refusals of the flight, of a plan and of workbooks say it too", () => {
  const refusals = [
    both(core, () => core.fly({ launch: { ball_speed: 160, launch_angle: 90, spin_rate: 2700 } })),
    both(core, () => core.plan({ builds: ["Own"], measure: "carry" })),
    both(workbook, () => workbook.sheets(Uint8Array.from([0x50, 0x4b, 3, 4]))),
  ];
  for (const [english, spanish] of refusals) {
    assert.equal(spanish.kind, english.kind);
    assert.notEqual(spanish.message, english.message);
    assert.notEqual(spanish.remedy, english.remedy);
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
  for (const of of Object.values(packages)) {
    for (const text of wrong) assert.equal(of.speak(text), false);
  }
  const [english] = both(core, () => core.measures());
  assert.deepEqual(core.measures(), english);
});
