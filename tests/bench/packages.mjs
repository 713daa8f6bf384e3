// The same computations by two general-purpose JavaScript packages, simple-statistics and jStat; run by `cargo xtask bench`.
//
// What a package has is called; what it lacks is put together from its own primitives, as a user of it would, and is
// left out where those do not reach (simple-statistics has no Student's t and no regression on several columns).
// Arguments: the folder with numbers.json, the folder whose node_modules hold the packages.
// Prints a JSON object: for each package its version, `times` and `results`.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { Times } from "./stopwatch.mjs";

const [, , folder, packages] = process.argv;
const { candidate, baseline, y, columns, draws, seed } = JSON.parse(readFileSync(join(folder, "numbers.json"), "utf8"));
const from = createRequire(join(packages, "package.json"));
const simple = from("simple-statistics");
const { jStat } = from("jstat");
const version = (name) =>
  JSON.parse(readFileSync(join(packages, "node_modules", name, "package.json"), "utf8")).version;
const design = y.map((_, row) => [1, ...columns.map((column) => column[row])]);

/** Seeded numbers in [0, 1): the packages take a source of them, and Math.random has no seed. mulberry32. */
function random(start) {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Bias-corrected and accelerated interval of a difference of means, from a package's own primitives. */
function bootstrap({ mean, deviation, draw, cdf, inverse, quantile }) {
  const estimate = mean(candidate) - mean(baseline);
  const drawn = Array.from({ length: draws }, () => mean(draw(candidate)) - mean(draw(baseline))).sort((a, b) => a - b);
  const below = drawn.filter((value) => value < estimate).length / draws;
  let [cubes, squares] = [0, 0];
  for (const [side, values] of [
    [1, candidate],
    [-1, baseline],
  ]) {
    const without = values.map((_, gone) => side * mean(values.filter((_, at) => at !== gone)));
    const center = mean(without);
    for (const value of without) {
      const u = ((values.length - 1) * (center - value)) / values.length;
      squares += u ** 2;
      cubes += u ** 3;
    }
  }
  const acceleration = cubes / (6 * squares ** 1.5);
  const bias = inverse(below);
  const end = (z) => quantile(drawn, cdf(bias + (bias + z) / (1 - acceleration * (bias + z))));
  return [estimate, deviation(drawn), end(inverse(0.025)), end(inverse(0.975))];
}

const ofSimple = {
  permutation() {
    const source = random(seed);
    return [
      simple.mean(candidate) - simple.mean(baseline),
      simple.permutationTest(candidate, baseline, "two_side", draws, source),
    ];
  },
  bootstrap() {
    const source = random(seed);
    return bootstrap({
      mean: simple.mean,
      deviation: simple.sampleStandardDeviation,
      draw: (values) => simple.sampleWithReplacement(values, values.length, source),
      cdf: simple.cumulativeStdNormalProbability,
      inverse: simple.probit,
      quantile: simple.quantileSorted,
    });
  },
};

const ofJStat = {
  /** It has no such test and no shuffle: its means, and a shuffle of our own. */
  permutation() {
    const source = random(seed);
    const all = [...candidate, ...baseline];
    const observed = jStat.mean(candidate) - jStat.mean(baseline);
    let asFar = 0;
    for (let i = 0; i < draws; i += 1) {
      for (let last = all.length - 1; last > 0; last -= 1) {
        const other = Math.floor(source() * (last + 1));
        [all[last], all[other]] = [all[other], all[last]];
      }
      const gap = jStat.mean(all.slice(0, candidate.length)) - jStat.mean(all.slice(candidate.length));
      if (Math.abs(gap) >= Math.abs(observed)) asFar += 1;
    }
    return [observed, (asFar + 1) / (draws + 1)];
  },
  bootstrap() {
    const source = random(seed);
    return bootstrap({
      mean: jStat.mean,
      deviation: (values) => jStat.stdev(values, true),
      draw: (values) => values.map(() => values[Math.floor(source() * values.length)]),
      cdf: (z) => jStat.normal.cdf(z, 0, 1),
      inverse: (share) => jStat.normal.inv(share, 0, 1),
      quantile: (values, share) => jStat.percentile(values, share),
    });
  },
  welch() {
    const [a, b] = [candidate, baseline].map((values) => jStat.variance(values, true) / values.length);
    const df = (a + b) ** 2 / (a ** 2 / (candidate.length - 1) + b ** 2 / (baseline.length - 1));
    const [difference, error] = [jStat.mean(candidate) - jStat.mean(baseline), Math.sqrt(a + b)];
    const half = jStat.studentt.inv(0.975, df) * error;
    return [
      difference,
      2 * jStat.studentt.cdf(-Math.abs(difference / error), df),
      difference - half,
      difference + half,
    ];
  },
  /** It gives the constant no standard error. */
  ols() {
    const { coef, t } = jStat.models.ols(y, design);
    return coef.flatMap((value, term) => (term === 0 ? [value, null, null] : [value, t.se[term], t.p[term]]));
  },
};

function timed(computations) {
  const times = new Times();
  const results = {};
  for (const [name, call] of Object.entries(computations)) {
    const isShort = name === "welch" || name === "ols";
    times.take(name, isShort ? 30 : 9, isShort ? 20 : 1, () => call().length > 0);
    results[name] = call();
  }
  return { times, results };
}

process.stdout.write(
  JSON.stringify({
    "simple-statistics": { version: version("simple-statistics"), ...timed(ofSimple) },
    jstat: { version: version("jstat"), ...timed(ofJStat) },
  }),
);
