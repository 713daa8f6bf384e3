// The ways in, in every browser: a promise answered as it is typed, a fitting judged by taps, a cut link told at the top,
// and starting again taken back.

import assert from "node:assert/strict";
import { answer, openShots, overflows } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

everywhere("a promise is answered while it is typed, and the way back leads to the start", async (page) => {
  await page.open();
  await page.getByRole("link", { name: "I was promised distance" }).click();
  await page.locator("#claim-gain").fill("12");
  await page.locator(".claim-outcome.no_retest").waitFor();
  await page.getByRole("link", { name: "All ways in" }).click();
  await page.locator("#start .way").first().waitFor();
  assert.equal(await overflows(page), false);
  await page.assertQuiet();
});

everywhere("a fitting is judged by taps on what was done", async (page) => {
  await page.open("#fitting");
  const line = (at) => page.locator(`.fitting > ol > li:nth-child(${at + 1})`);
  await line(0).waitFor();
  for (const [at, said] of ["Yes", "No", "No", "No", "Yes", "No", "No", "No", "Yes", "No"].entries())
    await line(at).locator("button", { hasText: said }).click();
  await page.locator(".fitting-outcome").waitFor();
  assert.match(await page.locator(".fitting-outcome").innerText(), /hit one after the other/);
  await page.assertQuiet();
});

everywhere("a link that was cut says so at the top", async (page) => {
  await page.open("#1.AQYBAgAA");
  await page.waitForFunction(() => /This link is not whole/.test(document.body.innerText));
  assert.equal(await overflows(page), false);
});

everywhere("starting again is taken back", async (page) => {
  await page.open("#example=twelve");
  const first = await answer(page);
  await openShots(page);
  await page.getByRole("button", { name: "Start again" }).click();
  await page.locator("#start .way").first().waitFor();
  await page.getByRole("button", { name: "Undo: started again" }).click();
  assert.equal((await answer(page)).headline, first.headline);
  await page.assertQuiet();
});
