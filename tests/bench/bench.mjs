// The Node half of `cargo xtask bench`: the generated package, and the core's textbook computations in wasm; its native
// twin is crates/bench/src/main.rs, on the same inputs. Sessions cross as the page has them, their shots as columns.
//
// Prints a JSON object: `times` (milliseconds, median and least, by name), `results`, and `growth` (times by size).

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import {
  cause,
  check,
  fly,
  initSync,
  landing,
  luck,
  pack,
  potential,
  read_in_columns,
} from "../../web/pkg/straight_answer.js";
import { sorted, Times } from "./stopwatch.mjs";

const folder = process.argv[2];
const input = (name) => readFileSync(join(folder, name), "utf8");
const textbook = await import(pathToFileURL(join(folder, "straight_answer_bench.js")).href);
initSync({ module: readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url)) });
textbook.initSync({ module: readFileSync(join(folder, "straight_answer_bench_bg.wasm")) });

const rows = input("rows.csv");
process.stdout.write(JSON.stringify({ ...timed(), growth: growth() }));

function timed() {
  const times = new Times();
  const request = JSON.parse(input("request.json"));
  const normal = JSON.parse(input("normal.json"));
  times.take("check", 100, 1, () => check(request).answer);
  times.take("check_normal", 200, 1, () => check(normal).answer);
  times.take("read", 9, 1, () => read_in_columns(rows, null).session.columns.build.length > 1);
  times.take("luck", 20, 1, () => luck({ ...normal, showing: "picked" }).chance);
  times.take("pack", 50, 1, () => pack(normal).length > 1);
  const launch = { ball_speed: 160, launch_angle: 13, spin_rate: 2700, spin_axis: 4 };
  times.take("fly", 50, 100, () => fly({ launch }));
  const { session } = request;
  times.take("potential", 20, 1, () => potential({ session, baseline: 0 }).map);
  times.take("cause", 20, 1, () => cause({ session, baseline: 0, candidate: 1 }).parts);
  times.take("landing", 20, 1, () => landing({ session, baseline: 0, candidate: 1 }).pair);

  const { candidate, baseline, y, columns, draws, seed } = JSON.parse(input("numbers.json"));
  const numbers = (list) => Float64Array.from(list);
  const [one, other, values, design] = [candidate, baseline, y, columns.flat()].map(numbers);
  const computations = {
    permutation: [50, 1, () => textbook.permutation_test(one, other, draws, seed)],
    bootstrap: [50, 1, () => textbook.bootstrap_interval(one, other, draws, seed)],
    welch: [50, 1000, () => textbook.welch_test(one, other)],
    ols: [50, 1000, () => textbook.least_squares(values, design)],
  };
  const results = {};
  for (const [name, [runs, atOnce, call]] of Object.entries(computations)) {
    times.take(name, runs, atOnce, () => call().length > 0);
    results[name] = [...call()];
  }
  return { times, results };
}

/** Least times, by size: noise only ever adds. */
function growth() {
  const { question, shots, tables } = JSON.parse(input("growth.json"));
  const lines = rows.split("\n");
  const leastCheck = (text, runs) => {
    const { session } = read_in_columns(text, null);
    return sorted(runs, 1, () => check({ session, question }).answer)[0];
  };
  const found = { read: [], check: [], findings: [] };
  for (const count of shots) {
    const text = lines.slice(0, count).join("\n");
    const runs = Math.min(Math.max(Math.floor(100_000 / count), 3), 50);
    found.read.push(sorted(runs, 1, () => read_in_columns(text, null).session.columns.build.length + 1 === count)[0]);
    found.check.push(leastCheck(text, runs));
  }
  for (const name of tables) found.findings.push(leastCheck(input(`table-${name}.csv`), 9));
  return found;
}
