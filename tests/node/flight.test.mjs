// What rests on the flight model, in Node: everything crosses whole, repeats bit for bit, and refuses.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";

const bytes = (path) => readFileSync(new URL(`../../${path}`, import.meta.url));
let session;

before(() => {
  core.initSync({ module: bytes("web/pkg/straight_answer_bg.wasm") });
  ({ session } = core.read(bytes("demo/fair-12-yards.csv").toString("utf8"), null));
});

const requests = () => ({
  fly: { launch: { ball_speed: 160, launch_angle: 13, spin_rate: 2700 }, conditions: { altitude_ft: 5000 } },
  landing: { session, baseline: 0, candidate: 1, aim: -10, hand: "right" },
  cause: { session, baseline: 0, candidate: 1 },
  potential: { session, baseline: 0 },
  consistency: { session },
  second: {
    session,
    question: { baseline: 0, candidate: 1, measure: "carry", stopping: "fixed" },
    is_second: session.shots.map((_, index) => index >= 30),
  },
  in_standard_air: { session, conditions: { temperature: 35, altitude_ft: 4000, wind_helping_mph: 5 } },
});

test("every function gives plain objects, and the same ones again", () => {
  for (const [name, request] of Object.entries(requests())) {
    const given = core[name](request);
    assert.deepEqual(JSON.parse(JSON.stringify(given)), given, name);
    assert.equal(JSON.stringify(core[name](structuredClone(request))), JSON.stringify(given), name);
  }
});

test("the numbers mean what their names say", () => {
  const { fly, landing, cause, potential, in_standard_air } = requests();
  const low = core.fly({ launch: fly.launch });
  const high = core.fly(fly);
  assert.ok(high.carry > low.carry + 5, "thin air carries farther");
  const split = core.cause(cause);
  assert.ok(Math.abs(split.parts.reduce((sum, part) => sum + part.yards.value, 0) - split.gap) < 1e-9);
  const landed = core.landing(landing);
  assert.equal(landed.shots.length, 60);
  assert.ok(landed.builds.every(({ at_aim }) => at_aim.low <= at_aim.value && at_aim.value <= at_aim.high));
  const { map } = core.potential(potential);
  assert.equal(map.carries.length, map.launches.length * map.spins.length);
  const standard = core.in_standard_air(in_standard_air);
  assert.ok(standard.average_change < 0, "warm thin air with a helping wind flatters");
  const report = core.check({
    session: standard.session,
    question: { baseline: 0, measure: standard.measure, stopping: "fixed" },
  });
  assert.equal(
    report.answer.decision.kind,
    core.check({ session, question: { baseline: 0, measure: "carry", stopping: "fixed" } }).answer.decision.kind,
  );
});

test("nonsense is refused as an object, never a panic", () => {
  const wrong = [
    undefined,
    null,
    7,
    {},
    { session: null },
    { session: { builds: [] }, baseline: 3, candidate: 1, question: null, is_second: [] },
  ];
  for (const name of Object.keys(requests())) {
    for (const request of wrong) {
      assert.throws(
        () => core[name](request),
        (refusal) => typeof refusal.kind === "string" && refusal.message.length > 0 && refusal.remedy.length > 0,
        `${name} ${JSON.stringify(request)}`,
      );
    }
  }
  const { fly } = requests();
  const placed = (launch_angle, where) =>
    assert.throws(
      () => core.fly({ launch: { ...fly.launch, launch_angle } }),
      ({ place }) => place === where,
      `${launch_angle}`,
    );
  for (const steepness of [-3, 0, 90]) placed(steepness, "launch.launch_angle");
  for (const none of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
    placed(none, "request.launch.launch_angle");
  assert.ok(core.fly(fly).carry > 200, "still alive");
});
