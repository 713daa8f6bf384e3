// Median and least time of a call, in milliseconds, as crates/bench/src/stopwatch.rs takes them.

import assert from "node:assert/strict";

/** Times of a call, ascending, after one that does not count; `atOnce` calls where one is too short for the clock. */
export function sorted(runs, atOnce, call) {
  assert.ok(call(), "the call refused its input");
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    for (let i = 0; i < atOnce; i += 1) call();
    return (performance.now() - start) / atOnce;
  });
  return times.sort((a, b) => a - b);
}

/** What was timed, by name. */
export class Times {
  take(name, runs, atOnce, call) {
    const times = sorted(runs, atOnce, call);
    this[name] = { median: times[runs >> 1], least: times[0] };
  }
}
