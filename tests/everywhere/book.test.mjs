// The book in every browser: kept when it is asked for, found again, opened as the same answer, forgotten.

import assert from "node:assert/strict";
import { NOTHING, stored } from "../browser/fair-steps.mjs";
import { answer, demo, goIn } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

everywhere("keep an answer, lose the page, find it by its name, open it, forget it", async (page) => {
  await page.copy(await demo("fair-12-yards"));
  await page.open();
  await goIn(page, "shots");
  await page.paste("#text");
  const { headline } = await answer(page);
  await page.locator("#keep > details > summary").click();
  await page.locator("#keep-name").fill("Ada Example");
  await page.locator(".book-keep").getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("Kept on this device: Ada Example").waitFor();
  await page.open("#book");
  await page.locator("#book-search").fill("ada");
  await page.locator("#book-rows .book-open-row").click();
  await page.getByRole("button", { name: "Open the answer" }).click();
  assert.equal((await answer(page)).headline, headline);
  await page.locator(".book-forget > summary").click();
  await page.getByRole("button", { name: "Yes, forget all of it" }).click();
  await page.getByText("Nothing is left on this device.").waitFor();
  assert.deepEqual(await stored(page), NOTHING);
  await page.assertQuiet();
});
