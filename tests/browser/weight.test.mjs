// What a visitor's browser really loads until the first answer stands, compressed as static hosts do.
//
// `cargo xtask sizes` counts what the built files name; this counts what the browser asked for.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { gzipSync } from "node:zlib";
import { browser, phone, siteUrl } from "./harness.mjs";
import { answer } from "./steps.mjs";

/** As `cargo xtask sizes` has them; the example's own shots are a part of the first. */
const MOST = { pasted: 200_000, link: 230_000 };

/** Bytes of everything that the browser asked for before the answer stood, with the names. */
async function weightBefore(address) {
  const context = await (await browser()).newContext({ viewport: phone, serviceWorkers: "block" });
  const page = await context.newPage();
  const files = [];
  page.on("response", (response) => files.push(response));
  // What is asked for once the answer stands on the screen is no longer waited for.
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (!document.getElementById("answer-headline")) return;
      window.answeredAt = Date.now();
      observer.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto(`${siteUrl}${address}`);
  await answer(page);
  const answeredAt = await page.evaluate(() => window.answeredAt);
  const first = files.filter((file) => file.request().timing().startTime < answeredAt);
  const weights = await Promise.all(
    first
      .filter((file) => file.ok())
      .map(async (file) => [file.url().replace(siteUrl, ""), gzipSync(await file.body(), { level: 9 }).length]),
  );
  await context.close();
  assert.equal(weights.filter(([name]) => name.endsWith(".wasm")).length, 1, "one wasm was loaded before the answer");
  const all = weights.reduce((sum, [, weight]) => sum + weight, 0);
  return { all, named: `${all} bytes:\n${weights.map(([name, weight]) => `${weight} ${name}`).join("\n")}` };
}

test("everything loaded for the first answer is within its budget", async () => {
  const { all, named } = await weightBefore("#example=fair");
  assert.ok(all <= MOST.pasted, named);
});

test("everything loaded for the answer of an opened link is within its budget", async () => {
  const { link } = JSON.parse(readFileSync(new URL("../links/in-turn-yards.json", import.meta.url), "utf8"));
  const { all, named } = await weightBefore(`#${link}`);
  assert.ok(all <= MOST.link, named);
});
