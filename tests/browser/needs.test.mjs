// What the page says where it cannot run: "Opening…" never stays alone.

import assert from "node:assert/strict";
import { test } from "node:test";
import { browser, phone, siteUrl } from "./harness.mjs";

/** Opens the site after `prepare`, without the watch on errors that other journeys keep. */
async function opened(prepare, rest = "") {
  const context = await (await browser()).newContext({ viewport: phone });
  const page = await context.newPage();
  await prepare(page);
  await page.goto(siteUrl + rest, { waitUntil: "commit" });
  return { page, context };
}

test("a browser without WebAssembly is told what it lacks, in the page's language", async () => {
  for (const [rest, words] of [
    ["", "Open it in a browser of the last three years"],
    ["?lang=es", "Ábrela en un navegador de los últimos tres años"],
  ]) {
    // As where scripts of today do not run either.
    const { page, context } = await opened(async (page) => {
      await page.addInitScript(() => delete globalThis.WebAssembly);
      await page.route(/assets\/main-.*\.js/, (route) => route.fulfill({ contentType: "text/javascript", body: "" }));
    }, rest);
    await page.getByText(words).waitFor();
    await context.close();
  }
});

test("a script that did not arrive is said, and stays said", async () => {
  const { page, context } = await opened(async (page) => {
    await page.clock.install();
    await page.route(/assets\/main-.*\.js/, (route) => route.abort());
  });
  const broken = page.getByText("A part of the page did not arrive");
  await broken.waitFor();
  await page.clock.fastForward(6000);
  assert.equal(await broken.count(), 1);
  await context.close();
});

test("what takes longer than five seconds is said, and gone once the page stands", async () => {
  let arrive;
  const held = new Promise((resolve) => {
    arrive = resolve;
  });
  const { page, context } = await opened(async (page) => {
    await page.clock.install();
    await page.route(/assets\/main-.*\.js/, (route) => held.then(() => route.continue()));
  });
  const slow = page.getByText("Still on its way");
  await page.locator(".opening").waitFor({ state: "attached" });
  assert.equal(await slow.count(), 0);
  // The small script may only now be on its way.
  for (let waits = 0; (await slow.count()) === 0 && waits < 100; waits += 1) {
    await page.clock.fastForward(5000);
    await new Promise((later) => setTimeout(later, 50));
  }
  assert.equal(await slow.count(), 1);
  await page.clock.resume();
  arrive();
  await page.locator("#start .way").first().waitFor();
  await page.waitForFunction(() => !document.querySelector("straight-answer-page .opening"));
  assert.equal(await slow.count(), 0);
  await context.close();
});
