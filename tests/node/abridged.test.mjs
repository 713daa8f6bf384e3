// The abridged core, which gives a page's first answer: what it answers is what the whole core answers, to the last bit,
// and what it does not hold it traps on.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { before, test } from "node:test";
import { plainSession } from "../../crates/boundary/plain-sessions.mjs";
import * as whole from "../../web/pkg/straight_answer.js";
import * as first from "../../web/pkg/straight_answer_first.js";

const root = new URL("../../", import.meta.url);
const compiled = (name) => new WebAssembly.Module(readFileSync(new URL(`web/pkg/${name}_bg.wasm`, root)));
const abridged = compiled("straight_answer_first");
const demos = readdirSync(new URL("demo/", root)).filter((name) => name.endsWith(".csv"));
const text = (name) => readFileSync(new URL(`demo/${name}`, root), "utf8");
/** As a page speaks: always with a voice, in each language and in both units. */
const tables = [null, readFileSync(new URL("web/pkg/straight_answer_es.txt", root), "utf8")];
const voices = ["yards", "meters"].flatMap((units) => tables.map((table) => ({ table, units })));

before(() => {
  whole.initSync({ module: compiled("straight_answer") });
  first.initSync({ module: abridged });
});

test("the abridged core reads and answers every example as the whole does", () => {
  assert.ok(demos.length >= 4);
  for (const voice of voices) {
    assert.deepEqual(first.measures(voice), whole.measures(voice));
    for (const name of demos) {
      const read = first.read_in_columns(text(name), {}, voice);
      assert.deepEqual(read, whole.read_in_columns(text(name), {}, voice), name);
      for (const stopping of ["unknown", "fixed"]) {
        const request = { session: read.session, question: { baseline: 0, measure: "carry", stopping } };
        assert.equal(JSON.stringify(first.check(request, voice)), JSON.stringify(whole.check(request, voice)), name);
      }
    }
  }
});

test("shots that nobody asked it about while it was made are answered as the whole answers, pasted and by link", async () => {
  let answered = 0;
  const seeds = Array.from({ length: 60 }, (_, at) => 10_000 + at);
  for (const seed of seeds) {
    const table = plainSession(seed);
    const voice = voices[seed % voices.length];
    // Each by a core of its own: after a trap nothing in its memory can be trusted.
    const core = await import(`../../web/pkg/straight_answer_first.js?${seed}`);
    core.initSync({ module: abridged });
    const { session } = whole.read_in_columns(table, {}, voice);
    const question = { baseline: 0, measure: "carry", stopping: "unknown" };
    try {
      assert.deepEqual(core.read_in_columns(table, {}, voice).session, session);
      assert.equal(
        JSON.stringify(core.check({ session, question }, voice)),
        JSON.stringify(whole.check({ session, question }, voice)),
        `${seed}`,
      );
      const link = `#${whole.pack({ session, question })}`;
      assert.deepEqual(core.unpack(link, voice), whole.unpack(link, voice));
      answered += 1;
    } catch (thrown) {
      if (!(thrown instanceof WebAssembly.RuntimeError)) throw thrown;
    }
  }
  assert.ok(answered > seeds.length / 2, `only ${answered} of ${seeds.length} without the whole core`);
});

test("what it was not made for it traps on, and never answers otherwise", () => {
  const { session } = whole.read_in_columns(text(demos[0]), {});
  const question = { baseline: 0, measure: "carry", stopping: "fixed" };
  assert.throws(() => first.luck({ session, question, showing: "picked" }, voices[0]));
  const nested = '{"shots": [{"club": "A", "carry": 250}]}';
  assert.throws(() => first.read_in_columns(nested, {}, voices[0]), WebAssembly.RuntimeError);
});

test("whatever it reads of tests/csv it reads as the whole does", async () => {
  let read = 0;
  for (const name of readdirSync(new URL("tests/csv/", root)).filter((file) => !file.endsWith(".expected.json"))) {
    const given = new TextDecoder().decode(readFileSync(new URL(`tests/csv/${name}`, root)));
    const core = await import(`../../web/pkg/straight_answer_first.js?${name}`);
    core.initSync({ module: abridged });
    let result;
    try {
      result = core.read_in_columns(given, {}, voices[0]);
    } catch (thrown) {
      assert.ok(thrown instanceof WebAssembly.RuntimeError, name);
      continue;
    }
    assert.deepEqual(result, whole.read_in_columns(given, {}, voices[0]), name);
    read += 1;
  }
  assert.ok(read > 0);
});
