// What is no request is refused with the place where it went wrong, what should stand there, and the name that was meant;
// in the caller's language. Nothing that a caller sends is passed over.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";

const bytes = (path) => readFileSync(new URL(`../../${path}`, import.meta.url));
const table = bytes("web/pkg/straight_answer_es.txt").toString("utf8");
let session;

before(() => {
  core.initSync({ module: bytes("web/pkg/straight_answer_bg.wasm") });
  ({ session } = core.read(bytes("demo/fair-12-yards.csv").toString("utf8"), null));
});

const question = { baseline: 0, measure: "carry", stopping: "fixed" };

/** What is thrown, in English and in Spanish: the same kind and place, each in its words. */
function refused(call) {
  const [english, spanish] = [undefined, { table }].map((voice) => {
    try {
      call(voice);
    } catch (refusal) {
      return refusal;
    }
    return assert.fail("nothing was refused");
  });
  assert.deepEqual([spanish.kind, spanish.place], [english.kind, english.place]);
  assert.notEqual(spanish.message, english.message);
  assert.notEqual(spanish.remedy, english.remedy);
  return { english, spanish };
}

test("a field that no question has is refused with its place and the one that was meant", () => {
  const { english, spanish } = refused((voice) => core.check({ session, question: { ...question, margn: 99 } }, voice));
  assert.deepEqual(english, {
    kind: "not_understood",
    place: "request.question.margn",
    message: "There is no field called `margn` here.",
    remedy: "Did you mean `margin`?",
  });
  assert.equal(spanish.remedy, "¿Querías decir `margin`?");
});

test("a misspelt wind is no calm", () => {
  const launch = { ball_speed: 160, launch_angle: 13, spin_rate: 2700 };
  const flown = refused((voice) => core.fly({ launch, conditions: { wind_helping: 20 } }, voice)).english;
  assert.equal(flown.place, "request.conditions.wind_helping");
  assert.equal(flown.remedy, "Did you mean `wind_helping_mph`?");
  const read = refused((voice) => core.read("carry\n250\n", { weather: { wind_helpng_mph: 20 } }, voice)).english;
  assert.deepEqual([read.place, read.remedy], ["hints.weather.wind_helpng_mph", "Did you mean `wind_helping_mph`?"]);
});

test("a field that is near to none names all that there are", () => {
  const { english } = refused((voice) => core.landing({ session, baseline: 0, candidate: 1, weekday: 3 }, voice));
  assert.equal(english.place, "request.weekday");
  for (const field of ["session", "baseline", "candidate", "aim", "hand"])
    assert.ok(english.remedy.includes(`\`${field}\``), field);
});

test("a number that is none is refused where it stands, in a shot, a question and a plan", () => {
  for (const none of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    const broken = structuredClone(session);
    broken.shots[1].values.carry = none;
    for (const name of ["check", "luck", "pack", "share"]) {
      const { english } = refused((voice) => core[name]({ session: broken, question }, voice));
      assert.deepEqual(
        [english.kind, english.place],
        ["not_understood", "request.session.shots[1].values.carry"],
        name,
      );
    }
    assert.equal(refused((voice) => core.write_csv(broken, voice)).english.place, "session.shots[1].values.carry");
    assert.equal(
      refused((voice) => core.join([session, broken], null, voice)).english.place,
      "sessions[1].shots[1].values.carry",
    );
    const asked = refused((voice) => core.check({ session, question: { ...question, margin: none } }, voice)).english;
    assert.equal(asked.place, "request.question.margin");
    const planned = refused((voice) =>
      core.plan({ builds: ["Own", "New"], measure: "carry", spread: none }, voice),
    ).english;
    assert.equal(planned.place, "request.spread");
  }
});

test("a wrong type names its place and what should stand there", () => {
  const wrong = [
    [{ ...question, margin: "3" }, "request.question.margin", "This must be a number."],
    [{ ...question, baseline: -1 }, "request.question.baseline", "This must be a whole number, zero or more."],
    [{ ...question, measure: 3 }, "request.question.measure", "This must be a text."],
    [{ ...question, goal: "heigher" }, "request.question.goal", "`heigher` is none of the words that may stand here."],
    [
      { ...question, stopping: "fixt" },
      "request.question.stopping",
      'This must be "fixed", "not_fixed", "unknown" or a plan { planned_rounds, looked_after }.',
    ],
  ];
  for (const [asked, place, message] of wrong) {
    const { english } = refused((voice) => core.check({ session, question: asked }, voice));
    assert.deepEqual([english.place, english.message], [place, message]);
  }
});

test("a field left out is named", () => {
  const { english } = refused((voice) => core.check({ session }, voice));
  assert.deepEqual([english.place, english.message], ["request", "The field `question` is missing."]);
});

test("a text that is none is refused before it is read", () => {
  for (const call of [core.read, core.unpack, core.unpack_plan]) {
    for (const none of [7, null, undefined, ["carry"], { text: "" }]) {
      const { english } = refused((voice) => (call === core.read ? call(none, null, voice) : call(none, voice)));
      assert.deepEqual([english.kind, english.place], ["not_understood", "text"], `${call.name} ${none}`);
    }
  }
  assert.ok(core.check({ session, question }), "still alive");
});
