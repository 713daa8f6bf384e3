// Times reading and checking in the generated package, in Node; run by `cargo xtask bench` together
// with its native twin, crates/fitting/examples/bench.rs, on the same inputs.
// Prints a JSON object: milliseconds, the median of many runs, by name.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { check, initSync, read } from "../../web/pkg/straight_answer.js";

const folder = process.argv[2];
initSync({ module: readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url)) });
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

const times = {
  check: median(100, () => check(request).answer),
  read: median(9, () => read(rows, null).session.shots.length > 1),
};
process.stdout.write(JSON.stringify(times));
