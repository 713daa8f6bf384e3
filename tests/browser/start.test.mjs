// The start: the ways in on one screen, a picture that plays once, and a fitting that is read before and after.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open, phone } from "./harness.mjs";
import { answer, goIn, overflows } from "./steps.mjs";

const still = { reducedMotion: "reduce" };

test("every way in stands on the first screen of a phone, a small one too, in both languages", async () => {
  for (const [width, height, address] of [
    [390, 844, ""],
    [360, 640, ""],
    [390, 844, "?lang=es"],
  ]) {
    const { page, context, watched } = await open(address, { ...still, viewport: { width, height } });
    await page.locator("straight-answer-live figure").waitFor();
    for (const one of await page.locator("#start a").all()) {
      const box = await one.boundingBox();
      assert.ok(box.y + box.height <= height, `${await one.innerText()} ends at ${box.y + box.height} of ${height}`);
    }
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  }
});

test("the picture deals five, five others and thirty, and stands still where motion is not wanted", async () => {
  const moving = await open("", { viewport: phone });
  await moving.page.getByText("Five shots with each: +13 yd. Real?").waitFor();
  await moving.page.getByText("Five others with each: −6 yd").waitFor();
  await moving.page.getByText("All thirty with each: +1 yd. In truth they are equal.").waitFor();
  await moving.context.close();
  const { page, context } = await open("", { ...still, viewport: phone });
  await page.locator("straight-answer-live figure").waitFor();
  assert.match(await page.locator("straight-answer-live strong").innerText(), /^All thirty/);
  assert.equal(await page.locator("straight-answer-live .mark").count(), 60);
  await context.close();
});

test("a promise is answered while it is typed, and the way back leads to the start", async () => {
  const { page, context, watched } = await open("", still);
  await page.getByRole("link", { name: /I was promised distance/ }).click();
  await page.locator("#claim-gain").pressSequentially("12");
  await page.locator(".claim-outcome.no_retest").waitFor();
  assert.ok(await page.locator("#fair").isHidden());
  await page.getByRole("link", { name: "All ways in" }).click();
  await page.locator("#start .way").first().waitFor();
  assert.ok(await page.locator("#claim").isHidden());
  await page.goBack();
  await page.locator(".claim-outcome.no_retest").waitFor();
  assertQuiet(watched);
  await context.close();
});

test("an invented session is one tap away", async () => {
  const { page, context } = await open("", still);
  await page.getByRole("link", { name: "at the shop" }).click();
  assert.equal((await answer(page)).kind, "cannot_tell");
  assert.ok(await page.locator("#start").isHidden());
  await context.close();
});

test("a fitting without numbers: ten taps say what it can show and what it cannot", async () => {
  const { page, context, watched } = await open("", still);
  await goIn(page, "fitting");
  const line = (nth) => page.locator(".fitting > ol > li").nth(nth);
  const tap = (nth, said) => line(nth).getByText(said, { exact: true }).click();
  assert.equal(await page.locator(".fitting-outcome").count(), 0, "nothing is said of nothing");
  const taps = ["Yes", "Yes", "No", "No", "Yes", "Yes", "Yes", "Yes", "Yes", "No"];
  for (const [nth, said] of taps.entries()) await tap(nth, said);
  const outcome = page.locator(".fitting-outcome");
  assert.match(
    await outcome.innerText(),
    /can show a gap, but not that the club made it[\s\S]*hit one after the other[\s\S]*Type in what you were promised/,
  );
  assert.equal(await page.locator("[aria-pressed=true]").count(), 10);
  // What is taken back is not known again.
  await tap(0, "Yes");
  await outcome.getByText("Whether your own club was hit is not known").waitFor();
  // Clubs hit in turn were as warm as one another.
  await tap(3, "Yes");
  assert.doesNotMatch(await outcome.innerText(), /cold shots/);
  assert.equal(await overflows(page), false);
  await outcome.getByRole("link", { name: "I was promised distance" }).click();
  await page.locator("#claim-gain").waitFor();
  assertQuiet(watched);
  await context.close();
});
