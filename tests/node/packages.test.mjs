// One source, several packages: what a page loads in parts says what the complete package says.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as complete from "../../web/pkg/straight_answer.js";
import * as first from "../../web/pkg/straight_answer_first.js";
import * as flights from "../../web/pkg/straight_answer_flight.js";
import * as coach from "../../web/pkg/straight_answer_plan.js";

const root = new URL("../../", import.meta.url);
const demos = readdirSync(new URL("demo/", root)).filter((name) => name.endsWith(".csv"));
const text = (name) => readFileSync(new URL(`demo/${name}`, root), "utf8");

before(() => {
  const packages = {
    straight_answer: complete,
    straight_answer_first: first,
    straight_answer_flight: flights,
    straight_answer_plan: coach,
  };
  for (const [name, { initSync }] of Object.entries(packages)) {
    initSync({ module: readFileSync(new URL(`web/pkg/${name}_bg.wasm`, root)) });
  }
});

test("the first package reads and answers every example as the complete one does", () => {
  assert.ok(demos.length >= 4);
  assert.deepEqual(first.measures(), complete.measures());
  for (const name of demos) {
    const read = first.read_plain(text(name));
    assert.deepEqual(read, complete.read(text(name), null), name);
    const request = { session: read.session, question: { baseline: 0, measure: "carry", stopping: "unknown" } };
    assert.equal(JSON.stringify(first.check(request)), JSON.stringify(complete.check(request)), name);
  }
});

test("what is no plain table is left to the complete package", () => {
  for (const other of [
    "",
    "Carry 250\nCarry 251\n",
    "<table><tr><td>Carry</td></tr></table>",
    'Build,Carry\n"A",250\nA,251\n',
  ]) {
    assert.equal(first.read_plain(other), undefined, other);
  }
});

test("a plan and a flight are the same in both packages that have them", () => {
  const plan = { builds: ["Own", "New"], measure: "carry", same_club: false, rounds: 4 };
  assert.deepEqual(complete.plan(plan), coach.plan(plan));
  const launch = { launch: { ball_speed: 160, launch_angle: 13, spin_rate: 2600 } };
  assert.deepEqual(complete.fly(launch), flights.fly(launch));
  for (const call of [complete.plan, complete.fly]) {
    assert.throws(
      () => call({}),
      ({ place, remedy }) => place === "request" && remedy.length > 0,
    );
  }
});
