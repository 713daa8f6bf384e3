// Links that were cut, changed or decorated on their way, and steps that are taken back and done again.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open, phone } from "./harness.mjs";
import { answer, answerAfter, demo, faults, openFact, openShots, overflows, paste } from "./steps.mjs";

/** A link with sixty shots of several measures. */
async function linkOf(example) {
  const { page, context } = await open(`#example=${example}`);
  await page.locator("#share > details > summary").click();
  const link = new URL(await page.locator("#share-address").inputValue()).hash;
  await context.close();
  return link;
}

/** What forums, mail and people put behind a link, as far as an address lets it stand. */
const BEHIND = [".", ")", ",", "…", ">", "&utm_source=forum", "_", "*", "%20"];

test("a link opens whatever a sentence or a forum puts behind it", async () => {
  const link = await linkOf("twelve");
  const { page, context, watched } = await open(link);
  const { headline } = await answer(page);
  for (const behind of BEHIND) {
    const opened = await open(link + behind);
    assert.equal((await answer(opened.page)).headline, headline, behind);
    assert.equal(await opened.page.locator("#cut").count(), 0, behind);
    await opened.context.close();
  }
  assertQuiet(watched);
  await context.close();
});

test("a cut link says so above all else, leaves what was there, and gives back what stands before the cut", async () => {
  const link = await linkOf("twelve");
  const cut = link.slice(0, Math.floor(link.length * 0.7));
  const { page, context, watched } = await open();
  await paste(page, await demo("fair-same"));
  const before = (await answer(page)).everything;
  await page.evaluate((hash) => {
    scrollTo(0, 2000);
    location.hash = hash;
  }, cut);
  const told = page.locator("#cut");
  await told.waitFor();
  assert.match(await told.innerText(), /This link is not whole[\s\S]*stays as it was/);
  const top = () => told.evaluate((section) => section.getBoundingClientRect().top);
  await page.waitForFunction(() => scrollY === 0);
  assert.ok((await top()) < 400, `at ${await top()}`);
  assert.equal((await answer(page)).everything, before, "nothing is wiped");
  await told.getByText(/can still be read: 60\sshots with Carry/).waitFor();
  assert.deepEqual(await faults(page), []);
  assert.equal(await overflows(page), false);
  await told.getByRole("button", { name: "Read what is left" }).click();
  await page.waitForFunction(() => !document.querySelector("#cut"));
  assert.match((await answer(page)).headline, /Driver B/);
  // One step back to what was there.
  await openShots(page);
  await answerAfter(page, () => page.locator(".undo button").first().click());
  assert.equal((await answer(page)).everything, before);
  assertQuiet(watched);
  await context.close();
});

test("a link with a changed letter offers nothing of it; on an empty page what was typed stays", async () => {
  const link = await linkOf("twelve");
  const at = Math.floor(link.length / 2);
  const changed = link.slice(0, at) + (link[at] === "A" ? "B" : "A") + link.slice(at + 1);
  const { page, context, watched } = await open("#shots");
  await page.locator("#text").fill("Club,Carry\nA,231");
  await page.evaluate((hash) => (location.hash = hash), changed);
  await page.locator("#cut").waitFor();
  assert.equal(await page.locator("#text").inputValue(), "Club,Carry\nA,231");
  await page.waitForLoadState("networkidle");
  assert.equal(await page.getByRole("button", { name: "Read what is left" }).count(), 0);
  await page.locator("#cut").getByRole("button", { name: "Close" }).click();
  await page.waitForFunction(() => !document.querySelector("#cut"));
  assertQuiet(watched);
  await context.close();
});

test("old shots are marked while a new link opens", async () => {
  const link = await linkOf("twelve");
  const { page, context, watched } = await open();
  await paste(page, await demo("fair-same"));
  const old = (await answer(page)).headline;
  // As soon as the address changes, before anything is unpacked.
  const seen = await page.evaluate(async (hash) => {
    const marked = new Promise((resolve) => {
      new MutationObserver(() => {
        const mark = document.querySelector(".replacing");
        const headline = document.querySelector("#answer .headline")?.textContent;
        if (mark && headline) resolve({ mark: mark.textContent, headline });
      }).observe(document.querySelector("straight-answer-page"), { subtree: true, childList: true });
    });
    location.hash = hash;
    return marked;
  }, link);
  assert.match(seen.mark, /A link is opening/);
  assert.ok(old.startsWith(seen.headline.trim().slice(0, 20)), seen.headline);
  await page.locator("#sent").waitFor();
  assert.equal(await page.locator(".replacing").count(), 0);
  // Back to one's own shots, which nobody sent.
  await openShots(page);
  await answerAfter(page, () => page.locator(".undo button").first().click());
  assert.equal((await answer(page)).headline, old);
  assert.equal(await page.locator("#sent").count(), 0);
  assertQuiet(watched);
  await context.close();
});

test("what was taken back is done again", async () => {
  const { page, context, watched } = await open("#example=twelve");
  const first = await answer(page);
  await page.locator(".shot-list summary").click();
  const second = await answerAfter(page, () => page.getByLabel("Whether shot 2 counts").selectOption("mishit"));
  await openShots(page);
  const undo = page.locator(".undo").getByRole("button", { name: /^Undo/ });
  const redo = page.locator(".undo").getByRole("button", { name: /^Do again/ });
  assert.equal(await redo.count(), 0);
  assert.equal((await answerAfter(page, () => undo.click())).everything, first.everything);
  assert.equal((await answerAfter(page, () => redo.click())).everything, second.everything);
  assert.equal(await redo.count(), 0);
  await answerAfter(page, () => undo.click());
  // Something else was done: what was ahead is gone.
  await answerAfter(page, () => page.getByLabel("Whether shot 4 counts").selectOption("mishit"));
  assert.equal(await redo.count(), 0);
  await openFact(page, "margin");
  assertQuiet(watched);
  await context.close();
});

test("starting again is taken back from the start, which plays its picture; and done again", async () => {
  const { page, context, watched } = await open("#example=twelve", { viewport: phone });
  const first = await answer(page);
  await openShots(page);
  await page.getByRole("button", { name: "Start again" }).click();
  await page.locator("straight-answer-live figure").waitFor();
  const undo = page.getByRole("button", { name: "Undo: started again" });
  assert.ok((await undo.boundingBox()).y < phone.height, "within reach of a thumb");
  assert.equal(await page.locator("#answer-headline").count(), 0);
  await undo.click();
  assert.equal((await answer(page)).everything, first.everything);
  await openShots(page);
  await page.getByRole("button", { name: "Do again: started again" }).click();
  await page.locator("#start .way").first().waitFor();
  assert.equal(await page.locator("#answer-headline").count(), 0);
  assertQuiet(watched);
  await context.close();
});
