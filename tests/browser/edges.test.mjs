// What stands at the edges of a screen: names without a blank, narrow and low screens, zoom, large text; and what a link to the
// page looks like elsewhere.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { test } from "node:test";
import { change, openFair, start, touched } from "./fair-steps.mjs";
import { assertQuiet, open, siteUrl } from "./harness.mjs";
import { answer, demo, openEverything, overflows, paste } from "./steps.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));

/** Nowhere to break, and each letter as wide as any. */
const HOSTILE = ["W".repeat(36), "WM".repeat(18)];

async function hostile() {
  const text = await demo("fair-12-yards");
  const [first, second] = ["Own driver", "Driver B"];
  assert.ok(text.includes(first) && text.includes(second));
  return text.replaceAll(first, HOSTILE[0]).replaceAll(second, HOSTILE[1]);
}

/** What reaches beyond the right edge though nothing around it scrolls. */
const beyond = (page) =>
  page.evaluate(() => {
    const scrolls = (element) => {
      for (let one = element.parentElement; one; one = one.parentElement)
        if (getComputedStyle(one).overflowX !== "visible") return true;
      return false;
    };
    return [...document.querySelectorAll("main *")]
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > innerWidth + 1 && !scrolls(one))
      .map((one) => `${one.tagName} ${one.className} ${one.textContent.trim().slice(0, 30)}`);
  });

for (const [width, height] of [
  [320, 640],
  [390, 844],
  [956, 440],
]) {
  test(`names of 36 letters without a blank widen nothing at ${width} × ${height}, with everything open`, async () => {
    const { page, context, watched } = await open("", { viewport: { width, height } });
    await paste(page, await hostile());
    await answer(page);
    assert.equal(await overflows(page), false);
    await openEverything(page);
    assert.equal(await overflows(page), false);
    assert.deepEqual(await beyond(page), []);
    assertQuiet(watched);
    await context.close();
  });

  test(`nor in a test that is planned and logged at ${width} × ${height}`, async () => {
    const { page, context, watched } = await openFair({ ...touched, viewport: { width, height } });
    await change(page);
    for (const [at, name] of HOSTILE.entries()) {
      await page.getByLabel(`Name of club ${at + 1}`).fill(name);
      await page.getByLabel(`Name of club ${at + 1}`).blur();
    }
    await page.waitForFunction((name) => document.querySelector(".fair-made").textContent.includes(name), HOSTILE[1]);
    assert.equal(await overflows(page), false);
    assert.deepEqual(await beyond(page), []);
    await start(page);
    for (const digit of "241")
      await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
    await page.locator(".log-last").waitFor();
    assert.equal(await overflows(page), false);
    assert.deepEqual(await beyond(page), []);
    assertQuiet(watched);
    await context.close();
  });
}

// A window of 1280 × 1024 at 200 and at 400 percent, and a small phone.
for (const [width, height] of [
  [640, 512],
  [320, 256],
  [320, 568],
]) {
  test(`${width} × ${height}: start, answer and plan are as wide as the screen, and nothing is cut off`, async () => {
    const { page, context, watched } = await open("", { viewport: { width, height } });
    await page.locator("#start .way").first().waitFor();
    assert.equal(await page.locator(".lead").isVisible(), true);
    assert.equal(await overflows(page), false, "start");
    assert.deepEqual(await beyond(page), [], "start");
    await paste(page, await demo("sales-floor"));
    await answer(page);
    assert.equal(await overflows(page), false, "answer");
    assert.deepEqual(await beyond(page), [], "answer");
    await page.locator("#fair summary").first().click();
    await page.locator(".fair-power").waitFor();
    await change(page);
    assert.equal(await overflows(page), false, "plan");
    assert.deepEqual(await beyond(page), [], "plan");
    assertQuiet(watched);
    await context.close();
  });
}

/** Where the first line of the answer's sentence ends on the screen. */
const firstLine = (page) =>
  page.locator("article.answer .headline").evaluate((headline) => {
    const words = document.createRange();
    words.selectNodeContents(headline);
    const [line] = words.getClientRects();
    return { top: line.top, bottom: line.bottom };
  });

for (const [width, height] of [
  [360, 640],
  [390, 844],
  [820, 1180],
  [1280, 720],
]) {
  test(`text at 200 %, ${width} × ${height}: the answer's first line is on the screen once it stands`, async () => {
    const { page, context } = await open("", { viewport: { width, height } });
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
    await paste(page, await demo("fair-12-yards"));
    await page.locator("article.answer[aria-busy=false] .headline").waitFor();
    const pasted = await firstLine(page);
    assert.ok(pasted.top >= 0 && pasted.bottom <= height, `pasted: ${pasted.top} to ${pasted.bottom}`);
    assert.equal(await overflows(page), false);
    await context.close();
    const link = await open("#example=floor", { viewport: { width, height } });
    await link.page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
    await link.page.locator("article.answer[aria-busy=false] .headline").waitFor();
    await link.page.waitForTimeout(300);
    const opened = await firstLine(link.page);
    assert.ok(opened.top >= 0 && opened.bottom <= height, `opened: ${opened.top} to ${opened.bottom}`);
    await link.context.close();
  });
}

test("a link to the page is shown with a title, a line and a picture of its own, whatever shots it holds", async () => {
  const read = async (address) => (await fetch(address)).text();
  const page = await read(siteUrl);
  const held = (name) => new RegExp(`property="og:${name}"\\s+content="([^"]+)"`).exec(page)?.[1];
  for (const name of ["title", "description", "image:alt", "site_name"]) assert.ok(held(name), name);
  assert.deepEqual([held("image:width"), held("image:height")], ["1200", "630"]);
  const picture = await fetch(new URL(held("image"), siteUrl));
  assert.match(picture.headers.get("content-type"), /png|plain/);
  const { PNG } = fromWeb("pngjs");
  const { width, height } = PNG.sync.read(Buffer.from(await picture.arrayBuffer()));
  assert.deepEqual([width, height], [1200, 630]);
  assert.equal(await read(`${siteUrl}#1.AQYBAgAA`), page, "what follows the mark is no part of it");
});
