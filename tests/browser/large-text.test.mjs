// Pictures for somebody who reads at twice the size: their writing is twice as large, and none of it is cut or covered.

import assert from "node:assert/strict";
import { test } from "node:test";
import { open, phone } from "./harness.mjs";
import { answer, demo, openEverything, openShots, overflows, paste } from "./steps.mjs";

const PICTURES = "svg:is(.interval, .hill, .ground, .carry-map, .gap-parts, .order, .gain, .power)";

/** Each writing of each picture: how high its letters are on the screen, and whether all of it lies inside the screen. */
const writing = (page) =>
  page.evaluate((pictures) => {
    const wide = document.documentElement.clientWidth;
    return [...document.querySelectorAll(`:is(${pictures}) text`)]
      .filter((text) => text.textContent.trim() !== "" && text.getClientRects().length > 0)
      .map((text) => {
        const { left, right, height } = text.getBoundingClientRect();
        const size = Number.parseFloat(getComputedStyle(text).fontSize) * (text.getScreenCTM()?.a ?? 1);
        const picture = text.closest("svg:not(.mark)").getAttribute("class");
        return { picture, says: text.textContent.trim(), size, height, inside: left >= 0 && right <= wide };
      });
  }, PICTURES);

/** Writing that lies over other writing of the same picture. */
const covered = (page) =>
  page.evaluate((pictures) => {
    const lies = (one, other) =>
      one.left < other.right - 1 &&
      other.left < one.right - 1 &&
      one.top < other.bottom - 3 &&
      other.top < one.bottom - 3;
    return [...document.querySelectorAll(pictures)].flatMap((picture) => {
      const texts = [...picture.querySelectorAll("text")].filter((text) => text.textContent.trim() !== "");
      const boxes = texts.map((text) => text.getBoundingClientRect());
      return texts.flatMap((text, at) =>
        texts
          .slice(at + 1)
          .filter((_, next) => lies(boxes[at], boxes[at + 1 + next]))
          .map((other) => `${picture.getAttribute("class")}: ${text.textContent.trim()} | ${other.textContent.trim()}`),
      );
    });
  }, PICTURES);

async function opened(size) {
  const { page, context } = await open("", { viewport: phone, reducedMotion: "reduce" });
  if (size) await page.evaluate((size) => document.documentElement.style.setProperty("font-size", size), size);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await openEverything(page);
  return { page, context };
}

test("at twice the text the writing of every picture is twice as large, uncut, and lies over no other", async () => {
  const usual = await opened(null);
  const before = await writing(usual.page);
  await usual.context.close();
  const { page, context } = await opened("212.5%");
  const after = await writing(page);
  const pictures = (all) => [...new Set(all.map(({ picture }) => picture))].sort();
  assert.deepEqual(pictures(after), pictures(before));
  assert.ok(pictures(before).length >= 6, pictures(before).join());
  const largest = (all, picture) => Math.max(...all.filter((one) => one.picture === picture).map(({ size }) => size));
  for (const picture of pictures(before)) {
    const times = largest(after, picture) / largest(before, picture);
    assert.ok(times > 1.9 && times < 2.1, `${picture}: ${times}`);
  }
  assert.deepEqual(
    after.filter(({ inside }) => !inside).map(({ picture, says }) => `${picture}: ${says}`),
    [],
  );
  assert.deepEqual(await covered(page), []);
  await context.close();
});

test("at twice the text nothing that can be opened is wider than a phone", async () => {
  const { page, context } = await open("#example=twelve", { viewport: phone, reducedMotion: "reduce" });
  await page.evaluate(() => document.documentElement.style.setProperty("font-size", "212.5%"));
  await answer(page);
  await openShots(page);
  await openEverything(page);
  assert.equal(await overflows(page), false);
  await context.close();
});
