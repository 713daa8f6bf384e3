// What a visitor's browser really loads until the first answer stands, compressed as static hosts do.
//
// `cargo xtask sizes` counts what the built files name; this counts what the browser asked for.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { gzipSync } from "node:zlib";
import { browser, phone, siteUrl } from "./harness.mjs";
import { answer } from "./steps.mjs";

/** The budgets of `cargo xtask sizes`; what browsers fetch by themselves and an example's own shots come on top. */
const MOST = { pasted: 234_000, link: 235_000 };
const BESIDES = 6_000;

const LINK = JSON.parse(readFileSync(new URL("../links/in-turn-yards.json", import.meta.url), "utf8")).link;

for (const [what, fragment] of Object.entries({ pasted: "example=fair", link: LINK })) {
  test(`everything loaded for the first answer is within its budget: ${what}`, async () => {
    const weights = await loadedFor(fragment);
    const cores = weights.filter(([name]) => name.endsWith(".wasm"));
    assert.equal(cores.length, 1, `one core answers first, not ${cores.map(([name]) => name).join(", ")}`);
    const all = weights.reduce((sum, [, weight]) => sum + weight, 0);
    assert.ok(
      all <= MOST[what] + BESIDES,
      `${all} bytes:\n${weights.map(([name, weight]) => `${weight} ${name}`).join("\n")}`,
    );
  });
}

/** Every file that was asked for before the answer stood, with its weight after gzip. */
async function loadedFor(fragment) {
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
  await page.goto(`${siteUrl}#${fragment}`);
  await answer(page);
  const answeredAt = await page.evaluate(() => window.answeredAt);
  const first = files.filter((file) => file.request().timing().startTime < answeredAt && file.ok());
  const weight = async (file) => gzipSync(await file.body(), { level: 9, memLevel: 9 }).length;
  const weights = await Promise.all(first.map(async (file) => [file.url().replace(siteUrl, ""), await weight(file)]));
  await context.close();
  return weights;
}
