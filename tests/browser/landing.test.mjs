// Where they land: a hundred dots in the answer and in its room, and ovals for the next shots.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open, phone } from "./harness.mjs";
import { answer, overflows, type } from "./steps.mjs";

const desk = { width: 1280, height: 900 };

async function openLanding() {
  const opened = await open("#example=twelve");
  await answer(opened.page);
  await opened.page.locator("#landing summary").click();
  await opened.page.locator("#landing .said").waitFor();
  return opened;
}

/** What each picture of a hundred dots shows: how many are filled, and the number in the words beside it. */
const hundreds = (within) =>
  within.evaluate((place) =>
    [...place.querySelectorAll(".hundreds li")].map((one) => ({
      filled: one.querySelector(".hundred-on").getAttribute("d").split("M").length - 1,
      empty: one.querySelector(".hundred-off").getAttribute("d").split("M").length - 1,
      words: one.innerText,
    })),
  );

test("a hundred dots lead, and say what the words beside them say", async () => {
  const { page, context, watched } = await openLanding();
  const found = await hundreds(page.locator("#landing"));
  assert.equal(found.length, 2);
  for (const { filled, empty, words } of found) {
    assert.match(words, new RegExp(`about ${filled} of 100 \\(\\d+ to \\d+, 95\u00a0% interval\\)`));
    assert.equal(filled + empty, 100);
  }
  const order = await page.evaluate(() => {
    const [dots, ground] = ["#landing .hundreds", "#landing svg.ground"].map((one) => document.querySelector(one));
    return Boolean(dots.compareDocumentPosition(ground) & Node.DOCUMENT_POSITION_FOLLOWING);
  });
  assert.ok(order, "the picture from above stands second");
  assert.match(await page.locator("#landing figcaption").innerText(), /where the next shots would fall/);
  assert.equal(await page.locator("svg.ground .oval").count(), 4);
  assertQuiet(watched);
  await context.close();
});

test("seven shots have no oval and no dots, and the words say why", async () => {
  const { page, context } = await open();
  const rows = Array.from(
    { length: 15 },
    (_, shot) => `${shot % 2 ? "New" : "Mine"},${250 + ((shot * 7) % 17)},${((shot * 11) % 19) - 9}`,
  );
  await type(page, `club,carry,offline\n${rows.join("\n")}\n`);
  await answer(page);
  await page.locator("#landing summary").click();
  await page.locator("#landing .said").waitFor();
  assert.equal((await hundreds(page.locator("#landing"))).length, 1, "only eight shots have dots");
  assert.equal(await page.locator("svg.ground .oval").count(), 2);
  assert.match(
    await page.locator("#landing figcaption").innerText(),
    /No oval for New: .* cannot be drawn from 7 shots, only from 8 or more/,
  );
  await context.close();
});

for (const [screen, viewport] of [
  ["a phone", phone],
  ["a desk", desk],
]) {
  test(`where they land stands in the answer on ${screen}, comes after it, moves nothing, and leads to its room`, async () => {
    const { page, context, watched } = await open("#example=twelve", { viewport });
    await page.locator("article.answer[aria-busy=false] .headline").waitFor();
    const below = () => page.locator("#shots").evaluate((one) => Math.round(one.getBoundingClientRect().top + scrollY));
    const before = await below();
    const line = page.locator("straight-answer-landing-line");
    await line.locator(".landing-line").waitFor();
    const words = await line.innerText();
    assert.match(
      words,
      /Counted, about \d+ of 100 with Driver B landed on a fairway 30\u00a0yd wide, about \d+ of 100 with/,
    );
    const dots = await hundreds(line);
    assert.deepEqual(
      dots.map(({ filled }) => filled),
      [...words.matchAll(/about (\d+) of 100 with/g)].map(([, count]) => Number(count)),
    );
    assert.equal(await below(), before, "its place was kept");
    await line.getByRole("button", { name: "Where they land" }).click();
    await page.locator("#landing .said").waitFor();
    assert.equal(await page.evaluate(() => document.activeElement?.id), "landing-title");
    assert.deepEqual(await hundreds(page.locator("#landing")), [...dots].reverse(), "the room has the same dots");
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  });
}

test("without offline nothing of it stands in the answer", async () => {
  const { page, context } = await open();
  await type(page, "club,carry\nMine,230\nNew,241\nMine,233\nNew,239\nMine,228\nNew,244\n");
  await answer(page);
  assert.equal(await page.locator("straight-answer-landing-line").count(), 0);
  await context.close();
});
