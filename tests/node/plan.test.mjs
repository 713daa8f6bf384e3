// The coach's hour in Node: a plan crosses whole, is followed to its end, and refuses nonsense.
// What plans promise and claims mean is tested in the Rust crates.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";

const bytes = (file) => readFileSync(new URL(`../../${file}`, import.meta.url));

before(() => {
  core.initSync({ module: bytes("web/pkg/straight_answer_bg.wasm") });
});

const request = { builds: ["Own", "New"], measure: "carry", same_club: false, rounds: 4 };

/** Invented shots of a plan, the second club a good deal longer. */
function hit({ turns }, n) {
  const order = turns.flatMap(({ build, shots }, turn) => Array.from({ length: shots }, () => ({ turn, build })));
  return order
    .slice(0, n)
    .map(({ turn, build }, i) => ({ turn, values: { carry: 240 + 18 * build + ((i * 5) % 7) }, note: null }));
}

test("a plan crosses whole and repeats bit for bit", () => {
  const plan = core.plan(request);
  assert.deepEqual(JSON.parse(JSON.stringify(plan)), plan);
  assert.equal(JSON.stringify(core.plan(structuredClone(request))), JSON.stringify(plan));
  assert.deepEqual(
    plan.turns.slice(0, 4).map(({ build }) => build),
    [0, 1, 1, 0],
  );
  assert.ok(plan.power.seen[0].chance < plan.power.seen[1].chance);
});

test("a test that is followed to its end is answered by check, and its CSV reads back identical", () => {
  const plan = core.plan(request);
  const { session, question, turn, look_due } = core.follow({ plan: request, shots: hit(plan, 24) });
  assert.equal(turn, null);
  assert.equal(look_due, true);
  assert.equal(session.shots.length, 24);
  const report = core.check({ session, question });
  assert.equal(report.answer.decision.kind, "different");
  const read = core.read(core.write_csv(session), null);
  assert.deepEqual(read.problems, []);
  assert.equal(read.question, undefined);
  assert.deepEqual(core.check({ session: read.session, question }), report);
  // With what was asked it needs nobody to say it again: the plan, its looks and the margin come back.
  const asked = core.read(`\uFEFF${core.write_csv(session, null, question)}`, null);
  assert.deepEqual(asked.question, question);
  assert.deepEqual(core.check({ session: asked.session, question: asked.question }), report);
});

test("a claim, days together and a feeling are answered from a session", () => {
  const plan = core.plan(request);
  const { session, question } = core.follow({ plan: request, shots: hit(plan, 24) });
  const claimed = { gain: 60, shots_before: 5, shots_after: 5 };
  assert.equal(core.claim({ claimed, session, question }).kind, "contradicted");
  const [pair] = core.together({ sessions: [session, session, session], question });
  assert.equal(pair.days.length, 3);
  assert.equal(pair.combined.days, 3);
  const say = { straighter: null, longer: 1, easier: null, look: null, sound: null };
  assert.equal(core.feel({ session, question, say }).felt[0].agreement, "shown");
});

test("nonsense is refused as an object, never a panic", () => {
  const calls = [
    [
      "plan",
      [
        undefined,
        null,
        "x",
        {},
        { ...request, builds: [] },
        { ...request, rounds: -1 },
        { ...request, looks: "never" },
      ],
    ],
    ["follow", [{}, { plan: request, shots: [{ turn: 99, values: {} }] }, { plan: request, shots: "none" }]],
    ["claim", [{}, { claimed: {}, session: null, question: null }]],
    ["together", [{}, { sessions: [], question: { baseline: 0, measure: "carry" } }]],
    ["feel", [{}, null]],
    ["write_csv", [{}, null, 3]],
  ];
  for (const [name, requests] of calls) {
    for (const wrong of requests) {
      assert.throws(
        () => core[name](wrong),
        (refusal) => typeof refusal.kind === "string" && refusal.message.length > 0 && refusal.remedy.length > 0,
        `${name} ${JSON.stringify(wrong)}`,
      );
    }
  }
  assert.ok(core.plan(request), "still alive");
});

const refuses = (call, what) =>
  assert.throws(call, ({ kind, remedy }) => typeof kind === "string" && remedy.length > 0, what);

test("within its limits a plan is made, and one beyond them is refused", () => {
  const limits = core.plan_limits();
  const clubs = (n) => ({ ...request, builds: Array.from({ length: n }, (_, at) => `Club ${at + 1}`), rounds: 2 });
  const wanted = {
    builds: clubs,
    rounds: (rounds) => ({ ...request, rounds }),
    set: (set) => ({ ...request, set }),
    warm_up: (warm_up) => ({ ...request, warm_up }),
  };
  for (const [name, of] of Object.entries(wanted)) {
    const { least, most } = limits[name];
    for (const n of [least, most]) assert.ok(core.plan(of(n)).turns.length > 0, `${name} ${n}`);
    for (const n of [least - 1, most + 1]) refuses(() => core.plan(of(n)), `${name} ${n}`);
  }
  const { set, warm_up } = core.plan({ builds: ["Own", "New"], measure: "carry", same_club: false });
  assert.deepEqual([set, warm_up], [limits.usual_set, limits.usual_warm_up]);
});

test("every link of tests/links/plans opens as the test that it must be", () => {
  const folder = new URL("../../tests/links/plans/", import.meta.url);
  const files = readdirSync(folder);
  assert.ok(files.length >= 3);
  for (const name of files) {
    const { link, holds, order, looks } = JSON.parse(readFileSync(new URL(name, folder), "utf8"));
    assert.deepEqual(core.unpack_plan(`https://example.org/club/?x=1#${link}`), holds, name);
    const plan = core.plan(holds.plan);
    assert.deepEqual(
      plan.turns.map(({ build }) => build),
      order,
      name,
    );
    assert.deepEqual(
      plan.looks.map(({ after_round }) => after_round),
      looks,
      name,
    );
  }
});

test("a plan goes into a text and comes back; what is none is refused with a remedy", () => {
  const link = core.pack_plan({ plan: request, record: ["carry", "club_speed"] });
  assert.match(link, /^plan=1\.[\w-]+$/);
  assert.deepEqual(core.unpack_plan(link), { plan: request, record: ["carry", "club_speed"], notices: [] });
  const bad = {
    "": "not_a_link",
    "1.AAAA": "not_a_link",
    "plan=2.AAAA": "link_later_version",
    [link.slice(0, -4)]: "link_damaged",
  };
  for (const [text, kind] of Object.entries(bad)) {
    assert.throws(
      () => core.unpack_plan(text),
      (refusal) => refusal.kind === kind && refusal.remedy.length > 0,
      text,
    );
  }
  for (const wrong of [undefined, null, {}, { plan: { ...request, builds: ["one"] } }]) {
    assert.throws(
      () => core.pack_plan(wrong),
      (refusal) => typeof refusal.kind === "string" && refusal.remedy.length > 0,
    );
  }
  assert.throws(
    () => core.unpack_plan(7),
    (refusal) => refusal.kind === "not_understood",
  );
});
