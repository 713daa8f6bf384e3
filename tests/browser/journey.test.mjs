// The main job on a phone with a slow processor: open, paste, read the answer, ask differently.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, answerAfter, demo, faults, overflows, paste } from "./steps.mjs";

async function slowPhone(rest) {
  const opened = await open(rest, { hasTouch: true, isMobile: true });
  const devtools = await opened.context.newCDPSession(opened.page);
  await devtools.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  return opened;
}

test("open, paste, answer; another baseline and margin, and the answer follows", async () => {
  const { page, context, watched } = await slowPhone();
  await paste(page, await demo("fair-12-yards"));
  const first = await answer(page);
  assert.equal(first.kind, "different");
  assert.match(first.headline, /Driver B/);

  const read = await page.locator("#shots").innerText();
  for (const seen of ["Own driver", "Driver B", "30\u00a0shots", "Carry", "Ball speed", "yd", "mph"]) {
    assert.ok(read.includes(seen), `what was read shows ${seen}`);
  }

  const turned = await answerAfter(page, () => page.locator(".segment", { hasText: "Driver B" }).click());
  assert.match(await page.locator(".asked").innerText(), /Own driver\s+against\s+Driver B/);
  assert.notEqual(turned.headline, first.headline);

  const stricter = await answerAfter(page, async () => {
    await page.locator("#margin").fill("40");
    await page.locator("#margin").press("Enter");
  });
  assert.notEqual(stricter.headline, turned.headline);
  assert.match(stricter.everything, /40\syd/);

  const stepped = await answerAfter(page, () => page.getByRole("button", { name: "1 yd more" }).click());
  assert.match(stepped.everything, /41\syd/);
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("a margin moved before the answer was seen is no change of mind; after it, the page says so", async () => {
  const { page, context } = await open();
  await paste(page, await demo("fair-12-yards"));
  const link = page.getByRole("link", { name: "See the answer" });
  await link.waitFor();
  // Pressed where it stands: scrolling to it would bring the answer onto the screen.
  const more = () => page.getByRole("button", { name: "1 yd more" }).evaluate((button) => button.click());
  const before = await answerAfter(page, more);
  assert.doesNotMatch(before.everything, /changed after/);
  await link.click();
  await link.waitFor({ state: "detached" });
  const after = await answerAfter(page, more);
  assert.match(after.everything, /changed after the answer was seen/);
  await context.close();
});

test("the way to the answer is shown above it only, also to who leaps over it", async () => {
  const { page, context } = await open();
  await paste(page, await demo("fair-12-yards"));
  const link = page.getByRole("link", { name: "See the answer" });
  await link.waitFor();
  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: "instant" }));
  await link.waitFor({ state: "detached" });
  await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
  await link.waitFor();
  await context.close();
});

test("each example opens by its address and answers", async () => {
  const expected = { fair: /same|cannot_tell/, twelve: /^different$/, floor: /^cannot_tell$/ };
  for (const [id, kind] of Object.entries(expected)) {
    const { page, context, watched } = await open(`#example=${id}`);
    assert.match((await answer(page)).kind, kind, id);
    assertQuiet(watched);
    await context.close();
  }
});

test("what the order of hitting hides is said, and a correction of the order changes it", async () => {
  const { page, context } = await open("#example=floor");
  assert.match((await answer(page)).everything, /not in turn|one after the other/i);
  await page.getByLabel("How the clubs were hit").selectOption("unknown");
  await page.waitForFunction(() => /hit in turn is not known/.test(document.querySelector("#answer").innerText));
  await context.close();
});

test("the bar of a verdict lies where the verdict says: inside what is too small to matter when the two are the same", async () => {
  for (const [example, wanted] of [
    ["fair", "same"],
    ["twelve", "different"],
  ]) {
    const { page, context } = await open(`#example=${example}`);
    assert.equal((await answer(page)).kind, wanted);
    const drawn = await page.evaluate(() => {
      const across = (css) => document.querySelector(`svg.interval ${css}`).getBoundingClientRect();
      const [bar, zone] = [across(".chosen .reach"), across(".zone")];
      return {
        inside: bar.left >= zone.left && bar.right <= zone.right,
        beyond: bar.left > zone.right || bar.right < zone.left,
      };
    });
    assert.deepEqual(drawn, wanted === "same" ? { inside: true, beyond: false } : { inside: false, beyond: true });
    await context.close();
  }
});

test("start again forgets the shots and the example's address", async () => {
  const { page, context } = await open("#example=fair");
  await answer(page);
  await page.getByRole("button", { name: "Start again" }).click();
  await page.locator("#text").waitFor();
  assert.equal(await page.locator("#text").inputValue(), "");
  assert.equal(new URL(page.url()).hash, "");
  await context.close();
});

test("asked about scatter, the answer, the margin and the picture speak of scatter", async () => {
  const { page, context, watched } = await open("#example=twelve");
  await answer(page);
  const spread = await answerAfter(page, () => page.locator(".segment", { hasText: "Less scatter" }).click());
  assert.match(spread.headline, /tighter/);
  assert.equal(await page.locator("#margin").inputValue(), "25");
  assert.match(
    await page.locator("svg.interval").getAttribute("aria-label"),
    /^Scatter of Carry\..*20\s% less to 25\s% more/,
  );
  assert.deepEqual(await faults(page), []);
  const stepped = await answerAfter(page, () => page.getByRole("button", { name: "5 % more" }).click());
  assert.match(stepped.everything, /23\s% less to 30\s% more/);
  const back = await answerAfter(page, () => page.locator(".segment", { hasText: "Longer" }).click());
  assert.equal(await page.locator("#margin").inputValue(), "5");
  assert.doesNotMatch(back.everything, /changed after/);
  assertQuiet(watched);
  await context.close();
});
