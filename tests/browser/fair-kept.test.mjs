// What a device keeps of a test: through a full store, a blocked one, and a browser that dies.

import assert from "node:assert/strict";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { hitTo, NOTHING, openFair, rounds, savedShots, shots, start, stored } from "./fair-steps.mjs";
import { assertQuiet, ownBrowser, siteUrl } from "./harness.mjs";
import { answer, goIn } from "./steps.mjs";

const saveFromLog = (page) => async () => {
  if (!(await page.locator(".fair-forget").evaluate((details) => details.open)))
    await page.getByText("Leave, keep or forget").click();
  await page.locator(".fair-forget").getByRole("button", { name: "Save the shots as a file" }).click();
};

test("a store that runs full in the middle is said; the shots stay on the screen and go into a file", async () => {
  const { page, context } = await openFair();
  await rounds(page, 2);
  await start(page);
  await hitTo(page, 2, 25);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  for (const carry of ["247", "252"]) {
    for (const digit of carry)
      await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
    await page.getByText("This device does not keep the shots").waitFor();
  }
  assert.equal(await shots(page), 4);
  assert.match(await page.locator(".log-place").innerText(), /Set 2 of 4, New driver, shot 2 of 3/);
  assert.equal((await savedShots(page, saveFromLog(page))).length, 4, "every shot is in the file");
  await context.close();
});

test("stores that are blocked from the start are said, and the test goes on to its answer", async () => {
  const { page, context, watched } = await openFair();
  await page.evaluate(() => {
    const blocked = () => {
      throw new DOMException("blocked", "SecurityError");
    };
    IDBFactory.prototype.open = blocked;
    Storage.prototype.setItem = blocked;
  });
  await rounds(page, 2);
  await start(page);
  await page.getByText("This device does not keep the shots").waitFor();
  for (let n = 0; n < 12; n += 1) {
    for (const digit of String(240 + ((n * 5) % 7)))
      await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
    await page.waitForFunction(
      (wanted) => Number(document.querySelector("[data-shots]").dataset.shots) === wanted,
      n + 1,
    );
  }
  await page.getByRole("button", { name: "Look at the answer" }).click();
  await page.getByRole("button", { name: "Now show the answer" }).click();
  await answer(page);
  assert.match(await page.locator(".fair-after").innerText(), /from 12 of 12 shots/);
  assert.match(await page.locator(".fair-after").innerText(), /does not keep the shots/);
  assert.deepEqual(await stored(page), NOTHING);
  assertQuiet(watched);
  await context.close();
});

test("a browser that dies between two shots loses none of them", async () => {
  const folder = await mkdtemp(join(tmpdir(), "fair-"));
  let running = await ownBrowser(folder);
  try {
    let { page } = running;
    await page.goto(siteUrl);
    await goIn(page, "fair");
    await page.locator(".fair-power").waitFor();
    await rounds(page, 2);
    await start(page);
    await hitTo(page, 5, 25);
    await running.kill();
    running = await ownBrowser(folder);
    ({ page } = running);
    await page.goto(siteUrl);
    await page.locator(".log-keys").waitFor();
    assert.equal(await shots(page), 5);
    assert.match(await page.locator(".log-place").innerText(), /Set 2 of 4, New driver, shot 3 of 3/);
    await hitTo(page, 6, 25);
  } finally {
    await running.kill();
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});
