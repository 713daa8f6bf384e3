// Times reading and checking in the generated package, in Node; run by `cargo xtask bench` together
// with its native twin, crates/fitting/examples/bench.rs, on the same inputs.
// Prints a JSON object: milliseconds, the median of many runs, by name.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { check, initSync, read } from "../../web/pkg/straight_answer.js";
import * as flights from "../../web/pkg/straight_answer_flight.js";

const folder = process.argv[2];
initSync({ module: readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url)) });
flights.initSync({ module: readFileSync(new URL("../../web/pkg/straight_answer_flight_bg.wasm", import.meta.url)) });
const request = JSON.parse(readFileSync(join(folder, "request.json"), "utf8"));
const rows = readFileSync(join(folder, "rows.csv"), "utf8");

/** Median time of a call in milliseconds, after one that does not count. */
function median(runs, call) {
  assert.ok(call(), "the call refused its input");
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    call();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[runs >> 1];
}

const { session } = request;

/** One flight is too short for the clock. */
const flyAHundred = () => {
  for (let i = 0; i < 100; i += 1) {
    flights.fly({ launch: { ball_speed: 160, launch_angle: 12 + i / 50, spin_rate: 2700, spin_axis: 4 } });
  }
  return true;
};

const times = {
  check: median(100, () => check(request).answer),
  read: median(9, () => read(rows, null).session.shots.length > 1),
  fly: median(50, flyAHundred) / 100,
  potential: median(20, () => flights.potential({ session, baseline: 0 }).map),
  cause: median(20, () => flights.cause({ session, baseline: 0, candidate: 1 }).parts),
  landing: median(20, () => flights.landing({ session, baseline: 0, candidate: 1 }).pair),
};
process.stdout.write(JSON.stringify(times));
