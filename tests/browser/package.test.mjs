// The generated package in a browser, by the example of its own README, from plain files and without a bundler.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { browser } from "./harness.mjs";
import { serve } from "./site.mjs";

const pkg = new URL("../../web/pkg/", import.meta.url);

test("ten lines in a browser answer", async () => {
  const readme = await readFile(new URL("README.md", pkg), "utf8");
  const [, example] = readme.match(/In a browser[\s\S]*?```js\n([\s\S]*?)```/);
  assert.ok(example.trim().split("\n").length <= 10, "ten lines");
  const made = {
    "/": '<!doctype html><link rel="icon" href="data:,"><body><script type="module" src="example.js"></script>',
    "/example.js": example,
  };
  const { origin, close } = await serve({ folder: "web/pkg", made });
  const page = await (await browser()).newPage();
  await page.goto(`${origin}/`);
  await page.waitForFunction(() => /^(different|cannot_tell) \w/.test(document.body.innerText.trim()));
  await page.close();
  await close();
});
