// What a visitor's browser really loads until the first answer stands, compressed as static hosts do.
//
// `cargo xtask sizes` counts what the built files name; this counts what the browser asked for.

import assert from "node:assert/strict";
import { test } from "node:test";
import { gzipSync } from "node:zlib";
import { browser, phone, siteUrl } from "./harness.mjs";
import { answer } from "./steps.mjs";

const MOST = 200_000;

test("everything loaded for the first answer is within its budget", async () => {
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
  await page.goto(`${siteUrl}#example=fair`);
  await answer(page);
  const answeredAt = await page.evaluate(() => window.answeredAt);
  const first = files.filter((file) => file.request().timing().startTime < answeredAt);
  const weights = await Promise.all(
    first
      .filter((file) => file.ok())
      .map(async (file) => [file.url().replace(siteUrl, ""), gzipSync(await file.body(), { level: 9 }).length]),
  );
  assert.ok(
    weights.some(([name]) => name.endsWith(".wasm")),
    "the wasm was loaded before the answer",
  );
  const all = weights.reduce((sum, [, weight]) => sum + weight, 0);
  assert.ok(all <= MOST, `${all} bytes:\n${weights.map(([name, weight]) => `${weight} ${name}`).join("\n")}`);
  await context.close();
});
