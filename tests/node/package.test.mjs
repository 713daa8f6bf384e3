// The generated package as anyone would load it in Node: from bytes, without a browser.
// What the answers say is tested in the Rust crates; here it is that they cross the boundary whole.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as package_ from "../../web/pkg/straight_answer.js";

const { check, initSync, join, luck, measures, read, write_csv } = package_;

before(() => {
  const bytes = readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url));
  initSync({ module: bytes });
});

/** Two invented builds hit in turn, three shots each round, every candidate shot 20 yd longer. */
function session(gap = 20) {
  const shots = [];
  for (let round = 1; round <= 4; round += 1) {
    for (const build of round % 2 ? [0, 1] : [1, 0]) {
      for (let i = 0; i < 3; i += 1) {
        const carry = 240 + ((round * 7 + i * 5) % 11) + gap * build;
        shots.push({ build, round, number: shots.length + 1, values: { carry }, left_out: null });
      }
    }
  }
  return {
    builds: [{ name: "Own driver" }, { name: "<b>Driver B</b>" }],
    measures: ["carry"],
    custom: [],
    shots,
    summaries: [],
    order: "interleaved",
  };
}

const question = { baseline: 0, measure: "carry", stopping: "fixed" };

test("measures are plain objects that JSON keeps as they are", () => {
  const list = measures();
  assert.ok(list.length >= 20);
  assert.deepEqual(JSON.parse(JSON.stringify(list)), list);
  assert.equal(list[0].id, "carry");
  assert.equal(list[0].unit, "yd");
});

test("read takes any text, with hints, without hints, and never throws for text", () => {
  const text = "build,carry (yd)\nA,250\nB,251\n";
  for (const hints of [undefined, null, {}, { columns: { 1: { measure: "carry" } }, units: { 1: "yd" } }]) {
    const result = read(text, hints);
    assert.deepEqual(Object.keys(result).sort(), [
      "doubts",
      "form",
      "gaps",
      "notices",
      "problems",
      "reading",
      "session",
    ]);
  }
  for (const odd of ["", "\0", "\u{feff}", ",,,,\n\n\n", '"', "\ud800", `carry\n${"9".repeat(400)}`]) {
    assert.ok(read(odd, null).session);
  }
});

test("hints of the wrong type are refused with a place and a remedy", () => {
  assert.throws(
    () => read("carry\n250\n", { columns: 7 }),
    (refusal) => refusal.kind === "not_understood" && refusal.place === "hints.columns" && refusal.remedy.length > 0,
  );
});

test("check answers a session of two builds", () => {
  const report = check({ session: session(), question });
  assert.equal(report.answer.decision.kind, "different");
  assert.equal(report.answer.decision.direction, "higher");
  assert.equal(report.answer.estimate.value, 20);
  assert.deepEqual(report.answer.estimate.n, { baseline: 12, candidate: 12 });
  assert.deepEqual(JSON.parse(JSON.stringify(report)), report);
});

test("the same request gives the same report, bit for bit", () => {
  const request = { session: session(3), question };
  assert.equal(JSON.stringify(check(request)), JSON.stringify(check(structuredClone(request))));
});

test("a session that was read can be checked as it is", () => {
  const rows = session()
    .shots.map((s) => `${s.build ? "B" : "A"},${s.round},${s.values.carry}`)
    .join("\n");
  const text = `build,round,carry (yd)\n${rows}`;
  const { session: fromText, problems } = read(text, null);
  assert.deepEqual(problems, []);
  const report = check({ session: fromText, question });
  assert.equal(report.answer.estimate.value, 20);
});

test("nonsense is refused as an object, never a panic", () => {
  const good = session();
  const bad = [
    undefined,
    null,
    "text",
    {},
    { session: good },
    { session: { ...good, shots: [{ build: 9, values: {} }] }, question },
    { session: good, question: { ...question, baseline: 5 } },
    { session: good, question: { ...question, baseline: -1 } },
    { session: good, question: { ...question, margin: Number.NaN } },
    { session: good, question: { ...question, measure: 3 } },
  ];
  for (const request of bad) {
    assert.throws(
      () => check(request),
      (refusal) => typeof refusal.kind === "string" && refusal.message.length > 0 && refusal.remedy.length > 0,
      JSON.stringify(request)?.slice(0, 80),
    );
  }
  assert.equal(check({ session: good, question }).answer.decision.kind, "different", "still alive");
});

test("empty sessions and missing values are answers, not errors", () => {
  const empty = { builds: [], measures: [], custom: [], shots: [], summaries: [], order: "unknown" };
  const asked = (s) => {
    try {
      return check({ session: s, question }).answer.decision.kind;
    } catch (refusal) {
      return refusal.kind;
    }
  };
  assert.equal(typeof asked(empty), "string");
  const holes = session();
  holes.shots.forEach((shot) => {
    shot.values.carry = null;
  });
  assert.equal(asked(holes), "cannot_answer");
});

test("luck crosses whole, repeats bit for bit, and refuses what cannot be shown", () => {
  const request = { session: session(3), question, shown: 5, showing: "picked" };
  const shown = luck(request);
  assert.deepEqual(JSON.parse(JSON.stringify(shown)), shown);
  assert.equal(JSON.stringify(luck(structuredClone(request))), JSON.stringify(shown));
  assert.deepEqual(shown.answer, check({ session: request.session, question }).answer);
  const { bins, total } = shown.chance.histogram;
  assert.equal(
    bins.reduce((sum, bin) => sum + bin.count, 0),
    total,
  );
  for (const wrong of [
    { shown: 13 },
    { shown: 2 },
    { shown: -1 },
    { shown: 2.5 },
    { showing: "chosen" },
    { session: null },
  ]) {
    assert.throws(
      () => luck({ ...request, ...wrong }),
      (refusal) => typeof refusal.kind === "string" && refusal.remedy.length > 0,
      JSON.stringify(wrong),
    );
  }
});

test("join aligns texts given one after another; builds of one name become one", () => {
  const one = read("Carry (yd),Spin\n250,2500\n252,2450\n", { build: "Own driver" }).session;
  const other = read("Offline;Carry (m)\n3;230\n-4;228,5\n", { build: "Driver B" }).session;
  const joined = join([one, other]);
  assert.deepEqual(joined.builds, [{ name: "Own driver" }, { name: "Driver B" }]);
  assert.deepEqual(joined.measures, ["carry", "spin_rate", "offline"]);
  assert.deepEqual(
    joined.shots.map(({ build }) => build),
    [0, 0, 1, 1],
  );
  assert.deepEqual(joined.shots[0].values, { carry: 250, spin_rate: 2500, offline: null });
  assert.equal(joined.order, "unknown");
  assert.equal(join([one, other], "interleaved").shots[1].build, 1);
  assert.deepEqual(join([one, one], null).builds, [{ name: "Own driver" }]);
  assert.deepEqual(join([]).shots, []);
  for (const [sessions, order] of [[null], [[7]], [[one], "sideways"]]) {
    assert.throws(
      () => join(sessions, order),
      (refusal) => refusal.kind === "not_understood" && refusal.remedy.length > 0,
    );
  }
});

test("a written session reads back identical, and no cell of it is a formula", () => {
  const before = session();
  before.builds[1].name = '=HYPERLINK("x")';
  before.shots[3].left_out = '+mishit, "off the toe"';
  before.summaries = [
    { build: 0, n: 12, of: "all", values: { carry: { mean: 240.5, sd: null, low: null, high: 251 } }, line: null },
  ];
  const text = write_csv(before);
  assert.deepEqual(read(text, null).session, before);
  assert.deepEqual(read(text.replaceAll("\n", "\r\n"), null).session, before);
  assert.match(text, /"'=HYPERLINK\(""x""\)"/);
  for (const line of text.split("\n")) assert.doesNotMatch(line, /(^|,)"?\s*[=+@]/, line);
  assert.equal(read(text, { names: { "Own driver": "Mine" } }).session.builds[0].name, "Mine");
  assert.throws(
    () => write_csv({ builds: 3 }),
    (refusal) => refusal.place === "session.builds",
  );
});
