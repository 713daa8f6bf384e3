// Keeping and sharing: a link opened elsewhere says the same, a reader's own margin leaves it as it was, the card's
// code reads back, files hold the answer.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { test } from "node:test";
import { assertQuiet, open, phone, siteUrl } from "./harness.mjs";
import { answer, answerAfter, demo, faults, openFact, overflows, paste } from "./steps.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));

async function openShare(page) {
  await page.locator("#share summary").first().click();
  await page.locator("img.share-card").waitFor();
}

const addressOf = (page) => page.locator("#share-address").inputValue();

/** The bytes of what a click saves. */
async function saved(page, name) {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name }).first().click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

test("shared from a phone, opened elsewhere: the same words, and whose settings they are", async () => {
  const { page, context, watched } = await open("", { permissions: ["clipboard-read", "clipboard-write"] });
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await openFact(page, "stopping");
  const told = await answerAfter(page, () => page.getByLabel("Yes, it was fixed").click());
  await openShare(page);
  assert.deepEqual(await faults(page), []);
  assert.equal(await overflows(page), false);
  const before = await addressOf(page);
  await page.locator("#share-note").fill("Saturday, <b>range</b>");
  await page.locator("#share-note").blur();
  await page.waitForFunction((old) => document.querySelector("#share-address").value !== old, before);
  await page.getByRole("button", { name: "Copy the link" }).click();
  await page.getByText("Link copied.").waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(link.startsWith(`${siteUrl}#1.`) && link.length < 2000, link);
  assertQuiet(watched);
  await context.close();

  const elsewhere = await open(link.slice(siteUrl.length), { viewport: { width: 1280, height: 900 } });
  const read = await answer(elsewhere.page);
  assert.equal(read.headline, told.headline);
  const squeezed = (text) => text.replace(/\s+/g, " ");
  assert.equal(
    squeezed(read.everything),
    squeezed(told.everything).replace("with your swing", "with the sender’s swing"),
  );
  const sent = elsewhere.page.locator("#sent");
  assert.match(await sent.innerText(), /60\s+shots with 2\s+clubs[\s\S]*Saturday, <b>range<\/b>/);
  assert.deepEqual(await faults(elsewhere.page), []);
  assertQuiet(elsewhere.watched);
  await elsewhere.context.close();
});

test("the device's share sheet gets the link, the words and the picture; closing it is no failure", async () => {
  const { page, context, watched } = await open();
  await page.evaluate(() => {
    window.handed = [];
    navigator.canShare = () => true;
    navigator.share = async (data) => {
      window.handed.push({ ...data, files: data.files?.map(({ name, type }) => `${name} ${type}`) });
      if (window.handed.length === 1) throw new DOMException("closed", "AbortError");
    };
  });
  await paste(page, await demo("fair-12-yards"));
  const told = await answer(page);
  await openShare(page);
  const share = page.locator("#share").getByRole("button", { name: "Share…" });
  for (let at = 0; at < (await share.count()); at += 1) await share.nth(at).click();
  await page.waitForFunction(() => window.handed.length >= 2);
  const handed = await page.evaluate(() => window.handed);
  const all = JSON.stringify(handed);
  assert.ok(all.includes(`${siteUrl}#1.`), all);
  assert.ok(all.includes(told.headline), all);
  assert.ok(
    handed.some(({ files }) => files?.[0]?.endsWith(".png image/png")),
    all,
  );
  assert.equal(await page.locator("#share .trouble, #share [role=alert]").count(), 0);
  assertQuiet(watched);
  await context.close();
});

test("a reader's own margin changes the answer and not the link; one press goes back", async () => {
  const { page, context, watched } = await open("#example=twelve");
  await answer(page);
  await openShare(page);
  const link = await addressOf(page);
  const reader = await open(link.slice(siteUrl.length));
  const first = await answer(reader.page);
  const own = await answerAfter(reader.page, async () => {
    await openFact(reader.page, "margin");
    await reader.page.locator("#margin").fill("25");
    await reader.page.locator("#margin").press("Enter");
    await reader.page.locator("#margin").blur();
  });
  assert.notEqual(own.headline, first.headline);
  assert.match(await reader.page.locator("#sent").innerText(), /The settings are yours now/);
  assert.equal(reader.page.url(), link, "the link stays in the address");
  const back = await answerAfter(reader.page, () =>
    reader.page.getByRole("button", { name: "Back to the sender’s settings" }).click(),
  );
  assert.equal(back.headline, first.headline);
  for (const one of [watched, reader.watched]) assertQuiet(one);
  await Promise.all([context.close(), reader.context.close()]);
});

test("shots left out travel with the link and are shown; names can stay behind", async () => {
  const { page, context } = await open("#example=fair");
  await answer(page);
  await page.locator(".shot-list summary").click();
  await answerAfter(page, () => page.getByLabel("Whether shot 2 counts").selectOption("mishit"));
  await openShare(page);
  await page.getByText("Leave out the clubs’ names").click();
  await page.waitForFunction(() => /Club A/.test(document.querySelector("#share-text").value));
  const link = await addressOf(page);
  const reader = await open(link.slice(siteUrl.length));
  await answer(reader.page);
  assert.match(await reader.page.locator("#sent").innerText(), /1\sshot left out, and still shown/);
  const body = await reader.page.locator("straight-answer-page").innerText();
  assert.ok(body.includes("Club A") && !body.includes("Own driver"));
  await reader.page.locator(".shot-list summary").click();
  await reader.page.locator("tr.left-out").waitFor();
  assert.equal(await reader.page.locator("tr.left-out").count(), 1);
  await Promise.all([context.close(), reader.context.close()]);
});

test("the card is saved, and its code reads back as the link, light and dark", async () => {
  const { PNG } = fromWeb("pngjs");
  const jsQr = fromWeb("jsqr");
  const { page, context, watched } = await open("#example=fair");
  await answer(page);
  await openShare(page);
  const link = await addressOf(page);
  for (const scheme of ["Light", "Dark"]) {
    const before = await page.locator("img.share-card").getAttribute("src");
    const was = await page.locator(`#share input[value=${scheme.toLowerCase()}]`).isChecked();
    if (!was) {
      await page.locator("#share .segment", { hasText: scheme }).click();
      await page.waitForFunction((old) => document.querySelector("img.share-card").src !== old, before);
    }
    const { name, bytes } = await saved(page, "Save the picture");
    assert.match(name, /^straight-answer-Own-driver-.+-\d{4}-\d\d-\d\d\.png$/);
    const { width, height, data } = PNG.sync.read(bytes);
    assert.equal(width, 1200);
    const read = (jsQr.default ?? jsQr)(new Uint8ClampedArray(data), width, height);
    assert.equal(read?.data, link, scheme);
  }
  assert.match(await page.locator("img.share-card").getAttribute("alt"), /^Carry: .*30 shots/);
  assertQuiet(watched);
  await context.close();
});

test("what is too long for a forum is offered as a file, which reads back", async () => {
  const { page, context } = await open();
  const rows = Array.from({ length: 400 }, (_, at) => {
    const values = Array.from({ length: 10 }, (_, column) => (((at + 1) * (column + 7) * 7919) % 1000) / 10);
    return [at % 2 ? "A" : "B", ...values].join(",");
  });
  await paste(page, `Club,${Array.from({ length: 10 }, (_, at) => `Own ${at}`).join(",")}\n${rows.join("\n")}`);
  await answer(page);
  await page.locator("#share summary").first().click();
  await page.getByText("This link is long").waitFor();
  const { bytes } = await saved(page, "Save the file");
  assert.match(bytes.toString(), /^\uFEFFStraight Answer session/);
  assert.match(await page.locator("#share").innerText(), /There is no code to scan on it/);
  await context.close();
});

test("the report is saved as JSON", async () => {
  const { page, context, watched } = await open("#example=floor");
  const { headline } = await answer(page);
  await openShare(page);
  const { bytes } = await saved(page, "Save the report (JSON)");
  const file = JSON.parse(bytes);
  assert.equal(file.format, "straight-answer-report");
  assert.equal(file.report.answer.words.headline, headline);
  assertQuiet(watched);

  await context.close();
});

test("a link that is not whole says so and what to do, and leaves the page usable", async () => {
  const { page, context, watched } = await open("#1.AQYBAgAA", { viewport: phone });
  await page.getByText("This link is not whole").waitFor();
  await paste(page, await demo("fair-same"));
  assert.match((await answer(page)).headline, /\w/);
  assertQuiet(watched);
  await context.close();
});
