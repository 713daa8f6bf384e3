// The requests of tests/golden in Node: each gives, to the last bit, what it gives natively (crates/fitting/tests/golden.rs).

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import * as answer from "../../web/pkg/straight_answer.js";
import * as flight from "../../web/pkg/straight_answer_flight.js";
import * as coach from "../../web/pkg/straight_answer_plan.js";

const root = new URL("../../", import.meta.url);
const wasm = (name) => ({ module: readFileSync(new URL(`web/pkg/${name}_bg.wasm`, root)) });
answer.initSync(wasm("straight_answer"));
flight.initSync(wasm("straight_answer_flight"));
coach.initSync(wasm("straight_answer_plan"));

/** As JSON keeps it: what is left open is left out. */
const plain = (value) => JSON.parse(JSON.stringify(value));

for (const file of readdirSync(new URL("tests/golden/", root)).sort()) {
  const { function: name, request, result } = JSON.parse(readFileSync(new URL(`tests/golden/${file}`, root), "utf8"));
  test(`${file} gives its result again`, () => {
    const call = answer[name] ?? flight[name] ?? coach[name];
    assert.deepStrictEqual(plain(call(request)), result);
  });
}
