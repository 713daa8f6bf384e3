// What would you bet: one line below the answer, ten dots in a room of its own, and what differs as a setting that its link knows.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults, overflows } from "./steps.mjs";

async function opened(options = {}) {
  const page = await open("#example=twelve", options);
  await answer(page.page);
  await page.page.locator(".bet-line").waitFor();
  return page;
}

const dots = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("svg.bet-dots")].map((row) =>
      ["full", "half", "empty"].map((filling) => row.querySelectorAll(`.bet-dot.${filling}`).length),
    ),
  );

test("the line stands in the answer, after it, and nothing leaves the site", async () => {
  const { page, context, watched } = await opened();
  const line = await page.locator("#answer .bet-line").textContent();
  assert.match(line, /^A bet, not a verdict\./);
  assert.match(line, /of 10/);
  assertQuiet(watched);
  await context.close();
});

test("the room shows three rows of ten, and saying what differs changes the line, not the answer", async () => {
  const { page, context, watched } = await opened();
  const { headline } = await answer(page);
  const before = await page.locator(".bet-line").textContent();
  await page.locator("#bet summary").click();
  await page.locator(".bet-rows").waitFor();
  const rows = await dots(page);
  assert.equal(rows.length, 3);
  for (const row of rows)
    assert.equal(
      row.reduce((sum, count) => sum + count, 0),
      10,
    );
  await page.locator("#bet .option", { hasText: "Same head, another shaft" }).click();
  await page.waitForFunction((was) => document.querySelector(".bet-line")?.textContent !== was, before);
  assert.match(await page.locator("#bet").innerText(), /What differs here was said/);
  assert.equal((await answer(page)).headline, headline);
  assert.deepEqual(await faults(page), []);
  assertQuiet(watched);
  await context.close();
});

test("on a phone nothing is wider than the screen", async () => {
  const { page, context } = await opened({
    viewport: { width: 360, height: 780 },
  });
  await page.locator("#bet summary").click();
  await page.locator(".bet-rows").waitFor();
  assert.equal(await overflows(page), false);
  await context.close();
});
