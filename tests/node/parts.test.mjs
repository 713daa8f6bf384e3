// The two parts in which a page loads the core: the first answers by itself what a first answer asks, and both together
// say to the last bit what the whole says.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { before, beforeEach, test } from "node:test";
import * as parts from "../../web/pkg/page/straight_answer.js";
import * as whole from "../../web/pkg/straight_answer.js";

const root = new URL("../../", import.meta.url);
const compiled = (name) => new WebAssembly.Module(readFileSync(new URL(`web/pkg/${name}.wasm`, root)));
const [first, rest] = ["page/straight_answer_first", "page/straight_answer_rest"].map(compiled);
const demos = readdirSync(new URL("demo/", root)).filter((name) => name.endsWith(".csv"));
const text = (name) => readFileSync(new URL(`demo/${name}`, root), "utf8");
const question = { baseline: 0, measure: "carry", stopping: "unknown" };

before(() => {
  whole.initSync({ module: compiled("straight_answer_bg") });
  parts.initSync({ module: first });
});

// Every test begins with the first part alone.
beforeEach(() => parts.__wbg_reset_state());

/** Puts the rest beside the first part. */
const join = () => new WebAssembly.Instance(rest, { first: parts.initSync({ module: first }) });

test("the first part alone reads and answers every example as the whole does", () => {
  assert.ok(demos.length >= 4);
  assert.deepEqual(parts.measures(), whole.measures());
  for (const name of demos) {
    const read = parts.read(text(name), {});
    assert.deepEqual(read, whole.read(text(name), {}), name);
    const request = { session: read.session, question };
    assert.equal(JSON.stringify(parts.check(request)), JSON.stringify(whole.check(request)), name);
  }
});

test("a call that runs into the rest traps, and is answered by a new instance with the rest beside it", () => {
  const { session } = whole.read(text(demos[0]), {});
  const request = { session, baseline: 0, candidate: 1 };
  assert.throws(() => parts.cause(request), WebAssembly.RuntimeError);
  parts.__wbg_reset_state();
  join();
  assert.equal(JSON.stringify(parts.cause(request)), JSON.stringify(whole.cause(request)));
});

test("both parts together give every result of tests/golden and open every link", () => {
  join();
  const plain = (value) => JSON.parse(JSON.stringify(value));
  for (const file of readdirSync(new URL("tests/golden/", root)).sort()) {
    const { function: name, request, result } = JSON.parse(readFileSync(new URL(`tests/golden/${file}`, root), "utf8"));
    assert.deepStrictEqual(plain(parts[name](request)), result, file);
  }
  for (const file of readdirSync(new URL("tests/links/", root)).filter((name) => name.endsWith(".json"))) {
    const { link, holds } = JSON.parse(readFileSync(new URL(`tests/links/${file}`, root), "utf8"));
    assert.deepEqual(parts.unpack(link), holds, file);
  }
});

test("both parts together read whatever the whole reads, and refuse what it refuses", () => {
  join();
  const odd = ["", "\0", ",,,,\n\n\n", "Carry 250\nCarry 251\n", "<table><tr><td>Carry</td></tr></table>", 'Build,Carry\n"A",250\nA,251\n', "[{\"carry\": 1}]"];
  for (const given of odd) assert.deepEqual(parts.read(given, null), whole.read(given, null), given);
  const thrown = (of, name, request) => {
    try {
      return of[name](request);
    } catch (refusal) {
      return refusal;
    }
  };
  for (const name of Object.keys(whole).filter((key) => typeof whole[key] === "function" && !/^(default|init|_|speak|show|measures|decode|unpack$)/.test(key))) {
    assert.deepEqual(thrown(parts, name, {}), thrown(whole, name, {}), name);
  }
});
