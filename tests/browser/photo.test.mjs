// From a chosen photo to the verdict, each doubt looked at by hand; pictures that are no photo of a table get a clear word.

import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { deflateSync } from "node:zlib";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults, goIn, openShots, overflows } from "./steps.mjs";

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
  const { page, context, watched } = await open("#shots", touch);
  await goIn(page, "shots");
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
  const { page, context, watched } = await open("#shots", touch);
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
  const { page, context } = await open("#shots", touch);
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
  await goIn(page, "shots");
  await context.close();
});

/** The check sum of a part of a PNG. */
function checkSum(bytes) {
  let sum = -1;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}

/** A whole PNG of one gray: a few kilobytes that unpack to `width` times `height`. */
function gray(width, height) {
  const part = (kind, data) => {
    const named = Buffer.concat([Buffer.from(kind), data]);
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    sum.writeUInt32BE(checkSum(named));
    return Buffer.concat([length, named, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const line = Buffer.alloc(width + 1, 140);
  line[0] = 0;
  const lines = Buffer.concat(new Array(height).fill(line));
  const begin = Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]);
  return Buffer.concat([begin, part("IHDR", head), part("IDAT", deflateSync(lines)), part("IEND", Buffer.alloc(0))]);
}

test("a bomb of 48 million pixels is told so in seconds, and the page answers to the hand meanwhile", {
  skip,
}, async (ran) => {
  const { page, context } = await open("#shots", touch);
  const bomb = { mimeType: "image/png", buffer: gray(8000, 6000) };
  assert.ok(bomb.buffer.length < 100_000, `${bomb.buffer.length} bytes`);
  await page.evaluate(() => {
    let last = performance.now();
    window.longestPause = 0;
    setInterval(() => {
      const now = performance.now();
      window.longestPause = Math.max(window.longestPause, now - last);
      last = now;
    }, 20);
  });
  const alert = page.locator(".photos [role=alert]");
  const took = [];
  // Again where it took long: another program may have had the processor.
  for (let at = 0; at < 3 && !(took.at(-1) < 5000); at++) {
    const name = `bomb-${at}.png`;
    const began = performance.now();
    if (at === 0) await choose(page, [{ name, ...bomb }]);
    else await page.locator(".photos input[type=file]").setInputFiles([{ name, ...bomb }]);
    await alert.filter({ hasText: name }).waitFor({ timeout });
    took.push(performance.now() - began);
    assert.match(await alert.innerText(), /No text was found/);
  }
  const pause = await page.evaluate(() => window.longestPause);
  ran.diagnostic(
    `told after ${took.map((it) => `${Math.round(it)} ms`).join(", ")}; longest pause ${Math.round(pause)} ms`,
  );
  assert.ok(took.at(-1) < 5000, `${took.join(", ")} ms`);
  assert.ok(pause < 1000, `the page stood still for ${pause} ms`);
  await context.close();
});

test("a photo in the four colors of print is read like any other", { skip }, async () => {
  const { page, context, watched } = await open("#shots", touch);
  await choose(page, here("../photo/hostile/cmyk.jpg"));
  await take(page).waitFor({ timeout });
  const truth = JSON.parse(readFileSync(here("../photo/kept/tiles.json"), "utf8"));
  assert.equal(await page.locator(".photos canvas.cut-out").count(), truth.cells.length);
  assertQuiet(watched);
  await context.close();
});
