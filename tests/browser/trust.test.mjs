// Whether the session can be trusted: its warnings, and every shot open to view.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, answerAfter, demo, faults, overflows, paste } from "./steps.mjs";

test("the sales floor is told that its order can turn the answer around", async () => {
  const { page, context, watched } = await open("#example=floor");
  await answer(page);
  const warning = await page.locator(".overlay", { hasText: "mixed up" }).innerText();
  assert.match(warning, /could make a difference in carry of about 6\syd/, "what the order may have done");
  const averages = await page.locator(".every-shot .legend").innerText();
  assert.match(
    averages,
    /Own driver\s+average 250\syd\s+New driver\s+average 258\syd/,
    "the plain averages that it replaces",
  );
  const panel = page.locator("details.trust");
  assert.match(await panel.locator("summary").innerText(), /^\d+\sserious/);
  await panel.locator(".finding.serious").first().waitFor();
  const serious = await panel.locator(".finding.serious").allInnerTexts();
  assert.ok(
    serious.some((text) => /^!\s+Serious\s+Own driver was hit first, with 5\sshots/.test(text)),
    serious.join("\n"),
  );
  assert.deepEqual(await faults(page), []);
  assertQuiet(watched);
  await context.close();
});

/** Invented: the new club is longer, but two of its shots were topped. */
const TWO_TOPPED = [231, 252, 226, 249, 234, 150, 229, 255, 233, 247, 227, 251, 230, 158, 232, 250, 228, 253, 235, 248]
  .map((carry, index) => `${Math.floor(index / 2) + 1},${index % 2 ? "New" : "Mine"},${carry}`)
  .join("\n");

test("two shots left out change the answer, and the page says that it depends on them; put back, they count", async () => {
  const { page, context, watched } = await open();
  await paste(page, `round,club,carry\n${TWO_TOPPED}`);
  const all = await answer(page);
  await page.getByText("Every shot, and leaving one out").click();
  const leaveOut = (shot, value) => page.getByLabel(`Whether shot ${shot} counts`, { exact: true }).selectOption(value);
  await answerAfter(page, () => leaveOut(6, "mishit"));
  const without = await answerAfter(page, () => leaveOut(14, "fault of ball or reading"));
  assert.match(without.headline, /left out/i);
  assert.match(
    without.everything,
    /With every shot: cannot tell, \S+\syd \([^)]*99\s% interval\)\. Without 2 of 10 New shots: a difference,/,
  );
  const bars = page.locator("#answer svg.interval");
  assert.deepEqual(await bars.locator(".name").allTextContents(), [
    "Every shot (99\u00a0% interval)",
    "Without 2 of 10 New shots (99\u00a0% interval)",
  ]);
  assert.equal(await bars.locator(".bar").count(), 2, "both answers, on one scale");
  assert.match(
    await bars.getAttribute("aria-label"),
    /Every shot: New against .*\. Without 2 of 10 New shots: New against /,
  );
  assert.equal(await page.locator("tr.left-out").count(), 2, "they stay in view");
  assert.equal(await page.locator("svg.order .left-out").count(), 2);
  assert.deepEqual(await faults(page), []);
  await answerAfter(page, () => leaveOut(6, ""));
  const back = await answerAfter(page, () => leaveOut(14, ""));
  assert.equal(back.headline, all.headline);
  assertQuiet(watched);
  await context.close();
});

test("of four equal clubs the lead is shown as what is left of it after luck", async () => {
  const { page, context } = await open();
  await paste(page, await demo("four-equal"));
  const { everything } = await answer(page);
  assert.match(everything, /as many equal clubs would lead by about \d+\syd[\s\S]*no more than such luck/);
  await page.locator("svg.order .average").first().waitFor({ state: "attached" });
  assert.equal(await page.locator("svg.order .average").count(), 4);
  await context.close();
});

test("every shot fits a small phone, and its choice is large enough for a thumb", async () => {
  const { page, context } = await open("#example=fair", { viewport: { width: 360, height: 740 } });
  await answer(page);
  await page.getByText("Every shot, and leaving one out").click();
  assert.equal(await overflows(page), false);
  const { height } = await page.locator(".shot-list select").first().boundingBox();
  assert.ok(height >= 44, `${height} px`);
  await context.close();
});
