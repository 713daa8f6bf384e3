// A claim against a retest, and days together: contradicted, priced, brought to standard air.

import assert from "node:assert/strict";
import { test } from "node:test";
import { NOTHING, stored, touched } from "./fair-steps.mjs";
import { assertQuiet, open } from "./harness.mjs";
import { answer, demo, faults, goIn, overflows, paste } from "./steps.mjs";

test("a claim is contradicted by the session on the page, and without one luck alone answers", async () => {
  const { page, context, watched } = await open("", touched);
  await goIn(page, "claim");
  await page.locator("#claim-gain").fill("12");
  await page.locator("#claim-shots_after").fill("5");
  await page.locator("#claim-shots_after").press("Enter");
  await page.locator(".claim-outcome.no_retest").waitFor();
  const picture = page.locator(".claim-outcome svg.interval");
  assert.match(
    await picture.getAttribute("aria-label"),
    /^luck alone reaches \d+\u00a0yd to either side\. The claim: \+12\u00a0yd\.$/,
  );
  assert.equal(await picture.locator(".bar").count(), 1);
  await paste(page, await demo("fair-same"));
  await answer(page);
  await page.locator("#claim-gain").fill("40");
  await page.locator("#claim-price").fill("500");
  await page.locator("#claim-price").press("Enter");
  const outcome = page.locator(".claim-outcome.contradicted");
  await outcome.waitFor();
  assert.match(await outcome.innerText(), /over 30 shots, .* over 30\./, "every shot of the retest is in it");
  const words = await outcome.innerText();
  assert.match(words, /speaks against the claim\. The claim was 40\u00a0yd more/);
  assert.match(
    await picture.getAttribute("aria-label"),
    /The claim: \+40\u00a0yd\. The retest \(\d+\u00a0% interval\): .+ to .+\.$/,
  );
  assert.equal(await picture.locator(".bar").count(), 2);
  const [reach, claim] = await picture.evaluate((svg) =>
    ["rect.zone", ".bar .mark"].map((one) => svg.querySelector(one).getBoundingClientRect().right),
  );
  assert.ok(claim > reach, "forty yards lie beyond what luck reaches");
  assert.match(words, /each yard costs|no gain to pay for/);
  assert.doesNotMatch(words, /cheat|lie|lied|trick|dishonest/i);
  await page.locator(".together textarea").fill(await demo("fair-same"));
  await page.getByRole("button", { name: "Add this day" }).click();
  await page.locator(".together-pair").waitFor();
  assert.equal(await page.locator(".together-pair li").count(), 2);

  // The other day was cold: asked for, both days are brought to standard air first.
  const measured = await page.locator(".together-pair").innerText();
  await page.getByText("bring every day to standard air first").click();
  await page.getByText("Weather of day 2").click();
  const temperature = page.locator(".together-air details[open]").getByLabel("Temperature", { exact: true });
  await temperature.fill("2");
  await temperature.press("Enter");
  await page.getByText(/Day 2: In standard air .* farther/).waitFor();
  await page.getByText(/Day 1: In standard air .* the same/).waitFor();
  const brought = page.locator(".together-pair", { hasText: "standard-air carry" });
  await brought.waitFor();
  assert.notEqual(await brought.innerText(), measured);
  assert.match(await page.locator(".together-air").innerText(), /Modeled: only the change of air is/);
  await page.getByText("bring every day to standard air first").click();
  await page.waitForFunction((before) => document.querySelector(".together-pair")?.innerText === before, measured);
  await page.locator(".together textarea").fill("carry\n");
  await page.getByRole("button", { name: "Add this day" }).click();
  await page.locator(".together .trouble", { hasText: "No shots were found" }).waitFor();
  assert.equal(
    await page.locator(".together textarea").inputValue(),
    "carry\n",
    "what could not be read stays to be mended",
  );
  await page.locator(".together textarea").fill(`${await demo("fair-same")}\n61,11,Driver B,smudged,smudged,smudged\n`);
  await page.getByRole("button", { name: "Add this day" }).click();
  await page.locator(".together-days li", { hasText: /Day 3: 60\sshots.*not understood/s }).waitFor();
  await page.getByRole("button", { name: "Take out day 3" }).click();
  await page.waitForFunction(() => document.querySelectorAll(".together-pair li").length === 2);
  assert.equal(await overflows(page), false);
  assert.deepEqual(await faults(page), []);
  // What was pasted lies in this tab, so that a reload does not lose it.
  assert.deepEqual(await stored(page), { ...NOTHING, session: ["straight-answer-draft"] });
  assertQuiet(watched);
  await context.close();
});
