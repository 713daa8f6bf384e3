// The requests of tests/golden in the page's own wasm, in every browser: each gives, to the last bit, what it gives
// natively (crates/boundary/tests/golden.rs) and in Node (tests/node/golden.test.mjs).

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { after, before } from "node:test";
import { serve } from "../browser/site.mjs";
import { everywhere } from "./drivers.mjs";

const root = new URL("../../", import.meta.url);
/** Only text crosses between here and the page: a driver must not round a number on its way. */
const SCRIPT = `
import init, * as core from "./straight_answer.js";
await init();
globalThis.asked = (name, request) => JSON.stringify(core[name](JSON.parse(request)));
`;

let site;
before(async () => {
  const made = {
    "/": '<!doctype html><link rel="icon" href="data:,"><script type="module" src="asked.js"></script>',
    "/asked.js": SCRIPT,
  };
  site = await serve({ folder: "web/pkg", made });
});
after(() => site?.close());

everywhere("every request of tests/golden gives its result again, to the last bit", async (page) => {
  await page.goto(`${site.origin}/`);
  await page.waitForFunction(() => typeof globalThis.asked === "function");
  const files = readdirSync(new URL("tests/golden/", root)).sort();
  assert.ok(files.length > 0);
  for (const file of files) {
    const { function: name, request, result } = JSON.parse(readFileSync(new URL(`tests/golden/${file}`, root), "utf8"));
    const given = await page.script("return asked(arguments[0], arguments[1])", name, JSON.stringify(request));
    assert.deepStrictEqual(JSON.parse(given), result, file);
  }
});
