// The main job on a phone with a slow processor: open, paste, read the answer, ask differently.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, answerAfter, demo, faults, goIn, openFact, openShots, overflows, paste } from "./steps.mjs";

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

  await openShots(page);
  const read = await page.locator("#shots").innerText();
  for (const seen of ["Own driver", "Driver B", "30\u00a0shots", "Carry", "Ball speed", "yd", "mph"]) {
    assert.ok(read.includes(seen), `what was read shows ${seen}`);
  }

  await openFact(page, "whose");
  const turned = await answerAfter(page, () => page.locator(".segment", { hasText: "Driver B" }).click());
  assert.match(await page.locator(".asked").innerText(), /Own driver\s+against\s+Driver B/);
  assert.notEqual(turned.headline, first.headline);

  const stricter = await answerAfter(page, async () => {
    await openFact(page, "margin");
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

test("a margin moved after the answer was seen says so", async () => {
  const { page, context } = await open();
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await openFact(page, "margin");
  const after = await answerAfter(page, () => page.getByRole("button", { name: "1 yd more" }).click());
  assert.match(after.everything, /changed after the answer was seen/);
  await context.close();
});

test("the answer's first line is on the first screen once shots are read, and above everything else", async () => {
  for (const viewport of [
    { width: 360, height: 640 },
    { width: 390, height: 844 },
    { width: 820, height: 1180 },
    { width: 1280, height: 720 },
  ]) {
    const { page, context } = await open("", { viewport });
    await paste(page, await demo("sales-floor"));
    await answer(page);
    const [top, line, above] = await page.evaluate(() => {
      const headline = document.querySelector("#answer-headline");
      const settings = document.querySelector("#counts").getBoundingClientRect().top;
      const { top } = headline.getBoundingClientRect();
      return [top, Number.parseFloat(getComputedStyle(headline).lineHeight), settings > top];
    });
    assert.ok(top >= 0 && top + line <= viewport.height, `${viewport.width}: ${top}`);
    assert.ok(above);
    await context.close();
  }
});

test("the first line of a link's answer is on the first screen too", async () => {
  const { link } = JSON.parse(await readFile(new URL("../links/notes.json", import.meta.url), "utf8"));
  const { page, context } = await open(`#${link}`, { viewport: { width: 360, height: 640 } });
  await answer(page);
  const [top, line] = await page.evaluate(() => {
    const headline = document.querySelector("#answer-headline");
    return [headline.getBoundingClientRect().top, Number.parseFloat(getComputedStyle(headline).lineHeight)];
  });
  assert.ok(top >= 0 && top + line <= 640, String(top));
  await context.close();
});

test("an answer that changes out of sight is pointed at until it is seen", async () => {
  const { page, context } = await open();
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await openFact(page, "margin");
  const link = page.getByRole("link", { name: "See the answer" });
  assert.equal(await link.count(), 0);
  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: "instant" }));
  // Pressed where it stands: scrolling to it would bring the answer onto the screen.
  await answerAfter(page, () => page.getByRole("button", { name: "1 yd more" }).evaluate((button) => button.click()));
  await link.click();
  await link.waitFor({ state: "detached" });
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
  assert.match((await answer(page)).everything, /not hit in turn/);
  await openFact(page, "order");
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
  await openShots(page);
  await page.getByRole("button", { name: "Start again" }).click();
  await page.locator("#start .way").first().waitFor();
  assert.equal(new URL(page.url()).hash, "");
  await goIn(page, "shots");
  assert.equal(await page.locator("#text").inputValue(), "");
  await context.close();
});

test("asked about scatter, the answer, the margin and the picture speak of scatter", async () => {
  const { page, context, watched } = await open("#example=twelve");
  await answer(page);
  await openFact(page, "compared");
  const spread = await answerAfter(page, () => page.locator(".segment", { hasText: "Less scatter" }).click());
  assert.match(spread.headline, /tighter/);
  await openFact(page, "margin");
  assert.equal(await page.locator("#margin").inputValue(), "25");
  assert.match(
    await page.locator("svg.interval").getAttribute("aria-label"),
    /^Scatter of Carry\..*20\s% less to 25\s% more/,
  );
  assert.deepEqual(await faults(page), []);
  const stepped = await answerAfter(page, () => page.getByRole("button", { name: "5 % more" }).click());
  assert.match(stepped.everything, /23\s% less to 30\s% more/);
  await openFact(page, "compared");
  const back = await answerAfter(page, () => page.locator(".segment", { hasText: "Longer" }).click());
  await openFact(page, "margin");
  assert.equal(await page.locator("#margin").inputValue(), "5");
  assert.doesNotMatch(back.everything, /changed after/);
  assertQuiet(watched);
  await context.close();
});
