// The generated package in a browser, by the example of its own README, from plain files and without a bundler.

import assert from "node:assert/strict";
import { createServer } from "node:http";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { browser } from "./harness.mjs";

const pkg = new URL("../../web/pkg/", import.meta.url);
const types = { js: "text/javascript", wasm: "application/wasm", html: "text/html" };

test("ten lines in a browser answer", async () => {
  const readme = await readFile(new URL("README.md", pkg), "utf8");
  const [, example] = readme.match(/In a browser[^]*?```js\n([^]*?)```/);
  assert.ok(example.trim().split("\n").length <= 10, "ten lines");
  const made = { "/": '<!doctype html><link rel="icon" href="data:,"><body><script type="module" src="example.js"></script>', "/example.js": example };
  const server = createServer(async (request, response) => {
    const body = made[request.url] ?? (await readFile(new URL(`.${request.url}`, pkg)).catch(() => null));
    const type = types[request.url === "/" ? "html" : request.url.split(".").at(-1)];
    response.writeHead(body === null ? 404 : 200, { "content-type": type ?? "text/plain" }).end(body);
  });
  await new Promise((listening) => server.listen(0, "localhost", listening));
  const page = await (await browser()).newPage();
  await page.goto(`http://localhost:${server.address().port}/`);
  await page.waitForFunction(() => /^(different|cannot_tell) \w/.test(document.body.innerText.trim()));
  await page.close();
  server.close();
});
