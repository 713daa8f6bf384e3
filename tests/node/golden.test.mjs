// The requests of tests/golden in Node: each gives, to the last bit, what it gives natively (crates/boundary/tests/golden.rs).

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";

const root = new URL("../../", import.meta.url);
core.initSync({ module: readFileSync(new URL("web/pkg/straight_answer_bg.wasm", root)) });

/** As JSON keeps it: what is left open is left out. */
const plain = (value) => JSON.parse(JSON.stringify(value));

for (const file of readdirSync(new URL("tests/golden/", root)).sort()) {
  const { function: name, request, result } = JSON.parse(readFileSync(new URL(`tests/golden/${file}`, root), "utf8"));
  test(`${file} gives its result again`, () => {
    assert.deepStrictEqual(plain(core[name](request)), result);
  });
}
