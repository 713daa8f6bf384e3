// How far luck reaches: loaded when opened, moved by keyboard, by touch and by choice; text and picture follow.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults, goIn, openFact, overflows, type } from "./steps.mjs";

/** Opens the page with an example, and the part on it. */
async function openLuck(example = "twelve", options = {}) {
  const opened = await open(`#example=${example}`, options);
  await answer(opened.page);
  const before = opened.watched.requests.length;
  await opened.page.locator("#luck summary").click();
  await opened.page.locator(".luck-said").waitFor();
  return { ...opened, asked: () => opened.watched.requests.slice(before) };
}

/** What the part shows: its words, its picture in words, and the shapes of the hill. */
const shown = (page) =>
  page.evaluate(() => ({
    number: document.querySelector(".luck-slider output").textContent,
    words: document.querySelector("#luck").innerText,
    said: document.querySelector(".luck-said").textContent,
    alternative: document.querySelector("svg.hill").getAttribute("aria-label"),
    bars: [...document.querySelectorAll(".hill-bar")].map((bar) => bar.getAttribute("height")).join(),
  }));

/** What the part shows once its number is this. */
async function shownAt(page, number) {
  await page.waitForFunction(
    (wanted) => document.querySelector(".luck-slider output")?.textContent === wanted,
    String(number),
  );
  return shown(page);
}

test("nothing of it is loaded before it is opened, and nothing leaves the site", async () => {
  const { page, context, watched, asked } = await openLuck();
  const scripts = asked().filter((url) => /luck.*\.js$/.test(url));
  assert.ok(scripts.length > 0, "its script is loaded on opening");
  assertQuiet(watched);
  const { number, said, words } = await shown(page);
  assert.equal(number, "5");
  assert.match(said, /runs of 5 .* Driver B carries farther/);
  assert.match(words, /With every shot/);
  const { headline } = await answer(page);
  assert.ok(words.includes(headline), "the whole session's answer stands beside it");
  await context.close();
});

test("the slider moves by keyboard, and text and picture follow", async () => {
  const { page, context, watched } = await openLuck();
  const slider = page.getByRole("slider", { name: "Shots shown with each club" });
  await slider.focus();
  const five = await shownAt(page, 5);
  await page.keyboard.press("ArrowRight");
  const six = await shownAt(page, 6);
  for (const part of ["said", "alternative", "bars"]) assert.notEqual(six[part], five[part], part);
  await page.keyboard.press("End");
  const fifteen = await shownAt(page, 15);
  assert.match(fifteen.said, /runs of 15/);
  await page.keyboard.press("ArrowRight");
  assert.deepEqual(await shownAt(page, 15), fifteen, "not farther than fifteen");
  await page.keyboard.press("Home");
  assert.match((await shownAt(page, 3)).said, /runs of 3/);
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  assert.deepEqual(await shownAt(page, 5), five, "the same number shows the same again");
  assert.equal(await page.evaluate(() => document.activeElement?.id), "luck-shown", "the keyboard stays on the slider");
  assertQuiet(watched);
  await context.close();
});

test("every tap deals another gap, more shots lie closer together, and nothing moves", async () => {
  const { page, context, watched } = await openLuck("twelve", { hasTouch: true, isMobile: true });
  const deal = page.locator("#luck-deal");
  await deal.scrollIntoViewIfNeeded();
  assert.match(await deal.innerText(), /Deal 5\sshots each/);
  const place = await page.locator(".luck-said").boundingBox();
  const gaps = [];
  for (let tap = 1; tap <= 6; tap += 1) {
    await deal.tap();
    await page.waitForFunction((dealt) => document.querySelectorAll(".hill .deal").length === dealt, tap);
    assert.match(
      await page.locator(".luck-dealt").innerText(),
      /^5 shots each, dealt blindly: (?:\d.* with Driver B|no difference)\./,
    );
    gaps.push(await page.locator(".hill .deal.last").getAttribute("cx"));
  }
  assert.ok(new Set(gaps).size > 3, `the gap jumps about: ${gaps}`);
  assert.deepEqual(await page.locator(".luck-said").boundingBox(), place, "nothing below has moved");
  await page.locator("#luck-more").tap();
  await shownAt(page, 10);
  assert.equal(await page.locator(".hill .deal").count(), 0, "other shots have not been dealt yet");
  for (let tap = 1; tap <= 20; tap += 1) await deal.tap();
  assert.equal(await deal.isDisabled(), true, "twenty deals are all there are");
  assert.equal(
    await page
      .locator("#luck figcaption")
      .innerText()
      .then((text) => text.split(". ").length),
    1,
    "one caption",
  );
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("the slider moves by touch on a phone", async () => {
  const { page, context, watched } = await openLuck("twelve", { hasTouch: true, isMobile: true });
  const slider = page.locator("#luck-shown");
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  assert.ok(box.height >= 44, "high enough for a thumb");
  await page.touchscreen.tap(box.x + box.width - 4, box.y + box.height / 2);
  const fifteen = await shownAt(page, 15);
  await page.touchscreen.tap(box.x + 4, box.y + box.height / 2);
  const three = await shownAt(page, 3);
  assert.notEqual(three.bars, fifteen.bars);
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("picked shots reach farther than shots in a row", async () => {
  const { page, context } = await openLuck();
  const before = await shown(page);
  await page.locator("#luck .segment", { hasText: "Any, picked" }).click();
  await page.waitForFunction(() => /ways to pick/.test(document.querySelector(".luck-said").textContent));
  const after = await shown(page);
  const best = ({ words }) => Number(words.match(/The best 5[^:]*: (\d+)/)[1]);
  assert.ok(best(after) > best(before), `${best(after)} after ${best(before)}`);
  assert.equal(after.bars, before.bars, "luck alone is the same");
  await context.close();
});

test("another baseline turns it around", async () => {
  const { page, context } = await openLuck();
  await openFact(page, "whose");
  await page.locator("#counts .segment", { hasText: "Driver B" }).click();
  await page.waitForFunction(() =>
    /say that Own driver carries farther/.test(document.querySelector(".luck-said").textContent),
  );
  await context.close();
});

test("a club with fewer shots takes the slider back", async () => {
  const { page, context, watched } = await open("#shots");
  const row = (club, carry) => `${club},${carry}\n`;
  const shots = (club, n, least) =>
    Array.from({ length: n }, (_, shot) => row(club, least + ((shot * 7) % 13))).join("");
  await goIn(page, "shots");
  await type(page, row("club", "carry") + shots("Mine", 12, 230) + shots("New", 12, 240) + shots("Demo", 4, 235));
  await answer(page);
  await page.locator("#luck summary").click();
  await page.locator("#luck-shown").focus();
  await page.keyboard.press("End");
  assert.match((await shownAt(page, 12)).said, /runs of 12 .* New carries farther/);
  await openFact(page, "whose");
  await page.getByLabel("The club to hold against yours").selectOption({ label: "Demo" });
  const four = await shownAt(page, 4);
  assert.match(four.said, /runs of 4 .* Demo carries farther/);
  assert.equal(await page.locator("#luck-shown").getAttribute("max"), "4");
  assertQuiet(watched);
  await context.close();
});

test("axe finds nothing in it, light and dark, and no words accuse", async () => {
  for (const colorScheme of ["light", "dark"]) {
    const { page, context } = await openLuck("floor", { colorScheme, reducedMotion: "reduce" });
    assert.deepEqual(await faults(page), [], colorScheme);
    assert.doesNotMatch((await shown(page)).words, /cheat|trick|cherry|manipulat|dishonest|fool/i);
    await context.close();
  }
});
