// A photo of big numbers read in another browser than Chromium: its own decoder, its own WebAssembly.

import assert from "node:assert/strict";
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { goIn } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const hasModels = existsSync(here("../../web/pkg/straight_answer_photo_models.bin"));

/** A photo is millions of numbers, and this machine may be busy. */
const ROUNDS = 20;

everywhere("a photo of big numbers becomes averages", async (page, context) => {
  // Chromium has its own journeys; WebKit as Debian builds it lacks what unpacks pictures in a worker.
  if (page.browserName !== "Firefox" || !hasModels) return context.skip("one browser is enough");
  await page.open();
  await goIn(page, "shots");
  await page.locator(".give input[type=file]").setInputFiles(here("../photo/kept/tiles.jpg"));
  await page.locator(".photos").waitFor();
  for (let round = 0; round < ROUNDS; round++) {
    const isRead = page.waitForFunction(() => document.querySelector("fieldset.photo") !== null);
    if (await isRead.catch(() => false)) break;
  }
  for (let left = await page.locator("li.open").count(); left > 0; left--)
    await page.locator("li.open button").first().click();
  await page.getByRole("button", { name: "Read these numbers" }).click();
  const average = page.getByLabel("Average Carry of", {}).first();
  await average.waitFor();
  assert.match(await average.inputValue(), /^\d{2,3}/);
  await page.assertQuiet();
});
