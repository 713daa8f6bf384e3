// The fair test in every browser: shots logged, the page lost, the answer read; and the page without its server.

import assert from "node:assert/strict";
import { hitTo, NOTHING, rounds, shots, start, stored } from "../browser/fair-steps.mjs";
import { serveSite } from "../browser/site.mjs";
import { answer, demo, goIn } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

everywhere("plan, log, lose the page, finish, read the answer: no shot lost", async (page) => {
  await page.open();
  await goIn(page, "fair");
  await page.locator(".fair-power").waitFor();
  assert.deepEqual(await stored(page), NOTHING, "a plan alone stores nothing");
  await rounds(page, 2);
  await start(page);
  await hitTo(page, 4, 25);
  await page.open();
  await page.locator(".log-keys").waitFor();
  assert.equal(await shots(page), 4, "no shot is lost");
  await hitTo(page, 12, 25);
  await page.getByRole("button", { name: "Look at the answer" }).click();
  await page.getByRole("button", { name: "Now show the answer" }).click();
  const { kind, headline } = await answer(page);
  assert.equal(kind, "different");
  assert.match(headline, /New driver carries farther/);
  assert.match(await page.locator(".fair-after").innerText(), /from 12 of 12 shots/);
  await page.getByText("Leave, keep or forget").click();
  await page.getByRole("button", { name: "Forget everything on this device" }).click();
  await page.getByRole("button", { name: "Yes, forget all of it" }).click();
  await page.locator(".fair-power").waitFor();
  assert.deepEqual(await stored(page), NOTHING);
  await page.assertQuiet();
});

everywhere("after the first visit the page answers without its server", async (page, context) => {
  await page.copy(await demo("fair-12-yards"));
  const { address, close } = await serveSite();
  try {
    await page.goto(address);
    if (!(await page.evaluate(() => "serviceWorker" in navigator))) {
      context.skip(
        `${page.browserName} has no service workers in a session under automation, so nothing is kept for offline there`,
      );
      return;
    }
    await page.waitForFunction(() => /Works without a network/.test(document.querySelector("#version").textContent));
  } finally {
    await close();
  }
  await page.goto(address);
  await goIn(page, "shots");
  await page.paste("#text");
  assert.equal((await answer(page)).kind, "different");
  await page.locator("#landing summary").click();
  await page.locator("#landing .said").waitFor();
});
