// From a chosen photo to the verdict, each doubt looked at by hand; pictures that are no photo of a table get a clear word.

import assert from "node:assert/strict";
import { existsSync } from "node:fs";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults, openShots, overflows } from "./steps.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const kept = (name) => here(`../photo/kept/${name}.jpg`);
const skip = existsSync(here("../../web/pkg/straight_answer_photo_models.bin")) ? false : "the site takes no photos";
const touch = { hasTouch: true, isMobile: true };

/** A photo is millions of numbers: a busy machine takes its time. */
const timeout = 400_000;

const choose = (page, files) => page.locator(".give input[type=file]").setInputFiles(files);
const take = (page) => page.getByRole("button", { name: "Read these numbers" });

/** Questions that the reader has before an answer, of numbers that were drawn at random: they are right as they stand. */
async function settle(page) {
  for (;;) {
    await page.locator("article.answer[aria-busy=false], article.doubt").first().waitFor();
    const doubt = page.locator("article.doubt");
    if ((await doubt.count()) === 0) return;
    const asked = await doubt.locator(".headline").innerText();
    const right = doubt.getByRole("button", { name: /right/ });
    await ((await right.count()) > 0 ? right.first() : doubt.getByRole("button").last()).click();
    await page.waitForFunction((old) => document.querySelector("article.doubt .headline")?.innerText !== old, asked);
  }
}

test("a photo of two clubs becomes an answer, once each doubt was looked at", { skip }, async () => {
  const { page, context, watched } = await open("", touch);
  await page.locator("#text").waitFor();
  const before = watched.requests.length;
  await choose(page, kept("two-clubs"));
  await page.locator("progress").waitFor();
  await take(page).waitFor({ timeout });
  const loaded = watched.requests.slice(before).map((url) => url.replace(/.*\//, ""));
  assert.ok(
    loaded.some((file) => file.startsWith("straight_answer_photo_models")),
    loaded.join(" "),
  );
  assert.equal(await overflows(page), false);
  assert.deepEqual(await faults(page), []);
  const open_ = page.locator("li.open");
  const doubts = await open_.count();
  assert.ok(doubts > 0, "this photo has doubts");
  await take(page).click();
  assert.match(await page.locator(".photos [role=alert]").innerText(), /still to be looked at/);
  for (let left = doubts; left > 0; left--) {
    await open_.first().getByRole("button", { name: "It is right" }).click();
    await page.waitForFunction((now) => document.querySelectorAll("li.open").length === now, left - 1);
  }
  await take(page).click();
  await settle(page);
  const { kind, everything } = await answer(page);
  assert.notEqual(kind, "");
  assert.match(everything, /yd/);
  await openShots(page);
  assert.equal(await page.locator(".builds li").count(), 2, "both clubs");
  assertQuiet(watched);
  await context.close();
});

test("big numbers become averages, the number of shots is asked, and a second photo needs no network", {
  skip,
}, async () => {
  const { page, context, watched } = await open("", touch);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await choose(page, kept("tiles"));
  await take(page).waitFor({ timeout });
  for (const right of await page.locator("li.open").getByRole("button", { name: "It is right" }).all())
    await right.click();
  await take(page).click();
  const shots = page.getByLabel(/^Number of shots of/).first();
  await shots.waitFor();
  assert.equal(await shots.inputValue(), "");
  assert.notEqual(
    await page
      .getByLabel(/^Average Carry/)
      .first()
      .inputValue(),
    "",
  );
  assertQuiet(watched);
  await context.close();
});

test("what is no photo of a table is told so at once, and the page goes on", { skip }, async () => {
  const { page, context } = await open("", touch);
  const png = (width, height) => {
    const bytes = Buffer.alloc(64);
    bytes.set([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
    bytes.writeUInt32BE(width, 16);
    bytes.writeUInt32BE(height, 20);
    return bytes;
  };
  const cases = [
    ["dot.png", "image/png", png(1, 1), /too small/],
    ["line.png", "image/png", png(50_000, 1), /too small/],
    ["bomb.png", "image/png", png(30_000, 30_000), /larger than any photo/],
    ["cut.png", "image/png", png(800, 600), /damaged/],
    ["drawing.svg", "image/svg+xml", Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'.padEnd(64)), /of a kind/],
    ["moving.gif", "image/gif", Buffer.from("GIF89a".padEnd(64)), /moving/],
    ["apple.heic", "", Buffer.from("\0\0\0\x18ftypheic".padEnd(64)), /HEIC/],
  ];
  await choose(page, [{ name: cases[0][0], mimeType: cases[0][1], buffer: cases[0][2] }]);
  const alert = page.locator(".photos [role=alert]");
  await alert.waitFor();
  for (const [name, mimeType, buffer, said] of cases) {
    await page.locator(".photos input[type=file]").setInputFiles([{ name, mimeType, buffer }]);
    await alert.filter({ hasText: name }).waitFor();
    assert.match(await alert.innerText(), said, name);
  }
  await page.getByRole("button", { name: "Cancel" }).click();
  await page.locator("#text").waitFor();
  await context.close();
});
