// What a reload must not lose, and what comes from elsewhere: by the share sheet, or opened from a folder.

import assert from "node:assert/strict";
import { test } from "node:test";
import { stored, touched } from "./fair-steps.mjs";
import { assertQuiet, open, siteUrl } from "./harness.mjs";
import { answer, demo, goIn, openShots, paste } from "./steps.mjs";

test("pasted shots and what was asked of them survive a reload, in this tab alone, until one starts again", async () => {
  const { page, context, watched } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  const { headline } = await answer(page);
  await page.reload();
  assert.equal((await answer(page)).headline, headline);
  const other = await context.newPage();
  await other.goto(siteUrl);
  await other.locator("#start nav").waitFor();
  await other.waitForTimeout(300);
  assert.equal(await other.locator("article.answer").count(), 0, "another tab knows nothing of it");
  assert.deepEqual((await stored(page)).databases, [], "nothing is kept beyond the tab");
  await openShots(page);
  await page.getByRole("button", { name: "Start again" }).click();
  await page.waitForFunction(() => sessionStorage.length === 0);
  await page.reload();
  await page.locator("#start nav").waitFor();
  assert.equal(await page.locator("article.answer").count(), 0);
  assertQuiet(watched);
  await context.close();
});

test("a text half typed survives a reload, and the way to another page and back", async () => {
  const { page, context } = await open("", touched);
  await goIn(page, "shots");
  await page.locator("#text").fill("Mine,231\nNew,2");
  await page.reload();
  await page.waitForFunction(() => document.querySelector("#text")?.value === "Mine,231\nNew,2");
  await page.goto(`${siteUrl}methods.html`);
  await page.goBack();
  await page.waitForFunction(() => document.querySelector("#text")?.value === "Mine,231\nNew,2");
  await context.close();
});

/** The page with its service worker, as it is once it was installed. */
async function installed() {
  const opened = await open("", touched);
  await opened.page.evaluate(() => navigator.serviceWorker.ready);
  await opened.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  return opened;
}

/** Hands files to the page as the share sheet does: by a form, without a server. */
const share = (page, files) =>
  page.evaluate(async (given) => {
    const form = new FormData();
    for (const { name, text, type } of given) form.append("files", new File([text], name, { type }));
    await fetch("./share", { method: "POST", body: form });
  }, files);

test("what is shared with the page waits until somebody says what is to be done with it", async () => {
  const { page, context, watched } = await installed();
  const text = await demo("fair-12-yards");
  await share(page, [{ name: "Año nuevo.csv", text, type: "text/csv" }]);
  await page.goto(`${siteUrl}?shared`);
  const asked = page.getByRole("region", { name: "Something came from elsewhere" });
  await asked.waitFor();
  assert.match(await asked.innerText(), /“Año nuevo\.csv” came from elsewhere/);
  assert.equal(await page.locator("article.answer").count(), 0, "nothing is read yet");
  // Closed without an answer it still waits.
  await page.goto("about:blank");
  await page.goto(siteUrl);
  await asked.waitFor();
  await asked.getByRole("button", { name: "Read the shots in it" }).click();
  assert.match((await answer(page)).headline, /carries/);
  assert.ok(!page.url().includes("shared"));
  await page.goto("about:blank");
  await page.goto(siteUrl);
  await page.waitForTimeout(500);
  assert.equal(await asked.count(), 0, "it is asked about once");
  assertQuiet(watched);
  await context.close();
});

test("a file that is opened with the page is asked about beside the shots that stand there", async () => {
  const { page, context } = await open("", {
    ...touched,
  });
  await context.addInitScript(() => {
    const waiting = [];
    let take = null;
    const setConsumer = (consumer) => {
      take = consumer;
      for (const one of waiting.splice(0)) take(one);
    };
    Object.defineProperty(window, "launchQueue", { value: { setConsumer } });
    window.launch = (name, text) => {
      const launched = { files: [{ getFile: async () => new File([text], name, { type: "text/csv" }) }] };
      if (take) take(launched);
      else waiting.push(launched);
    };
  });
  await page.reload();
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await page.evaluate((text) => window.launch("more.csv", text), await demo("fair-12-yards"));
  const asked = page.getByRole("region", { name: "Something came from elsewhere" });
  await asked.waitFor();
  assert.deepEqual(await asked.getByRole("button").allInnerTexts(), [
    "Read it in the place of these shots",
    "Add it to these shots",
    "Leave it",
  ]);
  await asked.getByRole("button", { name: "Leave it" }).click();
  assert.equal(await asked.count(), 0);
  await context.close();
});
