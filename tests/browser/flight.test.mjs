// Where they land, club or swing, and what a ball speed could carry: opened, dragged, read, on a phone and on a desk.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open, phone, siteUrl } from "./harness.mjs";
import { answer, faults, openFact, openShots, overflows, type } from "./steps.mjs";

const desk = { width: 1280, height: 900 };
const PARTS = ["landing", "cause", "potential"];

/** Opens the page with an example, and one of the parts on it. */
async function openPart(part, { example = "twelve", ...options } = {}) {
  const opened = await open(`#example=${example}`, options);
  await answer(opened.page);
  const before = opened.watched.requests.length;
  await opened.page.locator(`#${part} summary`).click();
  await opened.page.locator(`#${part} .said`).waitFor();
  return { ...opened, asked: () => opened.watched.requests.slice(before) };
}

/** The ground as it stands: aim, words, the picture in words, and where the shots are drawn. */
const ground = (page) =>
  page.evaluate(() => ({
    aim: Number(document.querySelector(".aim").getAttribute("aria-valuenow")),
    said: document.querySelector(".aim").getAttribute("aria-valuetext"),
    chances: [...document.querySelectorAll(".on-fairway li")].map((one) => one.innerText),
    alternative: document.querySelector("svg.ground").getAttribute("aria-label"),
    first: document.querySelector("svg.ground .mark").getAttribute("transform"),
  }));

/** The ground once the core has answered for this aim. */
async function groundAt(page, aim) {
  const words = aim === 0 ? "Aimed as on the day" : `Aimed ${Math.abs(aim)}\u00a0yd ${aim < 0 ? "left" : "right"}`;
  await page.waitForFunction(
    ([wanted, words]) =>
      document.querySelector(".aim").getAttribute("aria-valuenow") === String(wanted) &&
      document.querySelector("svg.ground").getAttribute("aria-label").includes(words),
    [aim, words],
  );
  return ground(page);
}

/** Drags with one finger, as the browser's own touch events. */
async function drag(page, from, to) {
  const session = await page.context().newCDPSession(page);
  const touch = (type, touchPoints) => session.send("Input.dispatchTouchEvent", { type, touchPoints });
  await touch("touchStart", [from]);
  for (let step = 1; step <= 5; step += 1) {
    await touch("touchMove", [{ x: from.x + ((to.x - from.x) * step) / 5, y: from.y + ((to.y - from.y) * step) / 5 }]);
  }
  await touch("touchEnd", []);
}

test("nothing of a part is loaded before it is opened, and nothing leaves the site", async () => {
  const { context, watched, asked } = await openPart("landing");
  assert.ok(asked().some((url) => /landing-part.*\.js$/.test(url)));
  assert.equal(watched.requests.filter((url) => /cause-part|potential-part/.test(url)).length, 0);
  assertQuiet(watched);
  await context.close();
});

test("the aim line is dragged by touch, and shots, chances and words follow", async () => {
  const { page, context, watched } = await openPart("landing", { hasTouch: true, isMobile: true, viewport: phone });
  const line = page.getByRole("slider", { name: "Aim" });
  await line.scrollIntoViewIfNeeded();
  const asAimed = await groundAt(page, 0);
  const box = await line.boundingBox();
  assert.ok(box.width >= 44, "wide enough for a thumb");
  const from = { x: box.x + box.width / 2, y: box.y + 40 };
  await drag(page, from, { x: from.x - 60, y: from.y });
  await page.waitForFunction(() => Number(document.querySelector(".aim").getAttribute("aria-valuenow")) < -5);
  const { aim } = await ground(page);
  const left = await groundAt(page, aim);
  for (const what of ["first", "alternative", "said"]) assert.notEqual(left[what], asAimed[what], what);
  assert.notDeepEqual(left.chances, asAimed.chances);
  await page.getByRole("button", { name: "As on the day" }).click();
  assert.deepEqual(await groundAt(page, 0), asAimed, "back where it was");
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("the aim line steps by keyboard, and no farther than it can", async () => {
  const { page, context } = await openPart("landing", { viewport: desk });
  await page.getByRole("slider", { name: "Aim" }).focus();
  await page.keyboard.press("ArrowRight");
  assert.match((await groundAt(page, 1)).said, /1\u00a0yd right/);
  await page.keyboard.press("PageDown");
  assert.match((await groundAt(page, -9)).said, /9\u00a0yd left/);
  await page.keyboard.press("Home");
  await groundAt(page, -60);
  await page.keyboard.press("ArrowLeft");
  assert.equal((await ground(page)).aim, -60);
  assert.equal(await page.evaluate(() => document.activeElement?.className), "aim", "the keyboard stays on the line");
  await page.locator("#fairway").fill("50");
  await page.waitForFunction(() =>
    document.querySelector("svg.ground").getAttribute("aria-label").includes("a fairway 50\u00a0yd wide"),
  );
  await context.close();
});

test("the best aim is one tap away, and a left-hander's sides have a left-hander's names", async () => {
  const { page, context } = await open();
  const rows = Array.from({ length: 24 }, (_, shot) => {
    const [carry, offline] = [250 + ((shot * 7) % 17), 22 + ((shot * 11) % 19) - 9];
    return `${shot % 2 ? "New" : "Mine"},${carry},${offline}`;
  });
  await type(page, `club,carry,offline\n${rows.join("\n")}\n`);
  await answer(page);
  await page.locator("#landing summary").click();
  await page.locator("#landing .said").waitFor();
  assert.match(
    await page.locator("#landing .said").innerText(),
    /You miss 2\d\u00a0yd right on average with Mine: aiming off would fix more than the club does/,
  );
  await page.locator("#landing .segment", { hasText: "Left-handed" }).click();
  await page.locator("#landing .said", { hasText: "right, the draw side" }).waitFor();
  await page.getByRole("button", { name: "Best for Mine" }).click();
  const { aim } = await ground(page);
  assert.ok(aim < -15 && aim > -30, `aim ${aim}`);
  await groundAt(page, aim);
  assert.equal(await page.locator("#cause, #potential").count(), 0, "no doors without launch and spin");
  await context.close();
});

for (const [screen, viewport] of [
  ["a phone", phone],
  ["a desk", desk],
]) {
  test(`the split is read on ${screen}, and its picture says the same`, async () => {
    const { page, context, watched } = await openPart("cause", { viewport });
    const words = await page.locator("#cause").innerText();
    assert.match(words, /Driver B carried 13\u00a0yd farther in these shots/);
    assert.match(words, /What was not measured/);
    const alternative = await page.locator("svg.gap-parts").getAttribute("aria-label");
    const drawn = await page.locator(".part-value").allTextContents();
    for (const value of drawn) assert.ok(alternative.includes(value), `${value} in ${alternative}`);
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  });

  test(`the carry map opens on ${screen}, and its picture says the same`, async () => {
    const { page, context, watched } = await openPart("potential", { viewport });
    assert.equal(await page.locator("#potential li svg.gain").count(), 2, "a bar for each club");
    assert.match(
      await page.locator(".gains").innerText(),
      /Own driver\s+(?:\d+.* more|nothing to gain|more; how much)/,
    );
    const map = page.locator("svg.carry-map");
    assert.equal(await map.count(), 0, "the map is for those who open it");
    await page.locator("#potential .map-row > summary").click();
    const alternative = await map.getAttribute("aria-label");
    assert.match(alternative, /A map of carry at 15\d\.\d\u00a0mph.*Own driver: Carries 260\u00a0yd/);
    assert.ok((await map.locator(".area").count()) >= 4, "lines of equal carry");
    assert.equal(await map.locator(".mark").count(), 61, "every shot, and the average");
    await page.locator("#potential .segment", { hasText: "Your best third" }).click();
    await page.waitForFunction(
      (old) => document.querySelector("svg.carry-map").getAttribute("aria-label") !== old,
      alternative,
    );
    assert.match(await map.getAttribute("aria-label"), /at 166\.2\u00a0mph.*Your best third/);
    assert.match(await page.locator("#potential").innerText(), /Ask a coach/);
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  });
}

test("another baseline turns the split around", async () => {
  const { page, context } = await openPart("cause");
  await openFact(page, "whose");
  await page.locator("#counts .segment", { hasText: "Driver B" }).click();
  await page.locator("#cause .said", { hasText: "Own driver carried 13 yd shorter" }).waitFor();
  await context.close();
});

test("axe finds nothing in the three parts, light and dark, narrow and wide", async () => {
  for (const [colorScheme, viewport] of [
    ["light", phone],
    ["dark", desk],
  ]) {
    const { page, context } = await open("#example=twelve", { colorScheme, viewport, reducedMotion: "reduce" });
    await answer(page);
    for (const part of PARTS) {
      await page.locator(`#${part} summary`).click();
      await page.locator(`#${part} .said`).waitFor();
    }
    assert.deepEqual(await faults(page), [], colorScheme);
    await context.close();
  }
});

test("a row that does not fit its launch is told under trust, and nothing is changed", async () => {
  const { page, context, watched } = await open();
  const rows = Array.from({ length: 16 }, (_, shot) => {
    const [speed, launch] = [155 + ((shot * 5) % 9), 12 + ((shot * 3) % 5) / 2];
    const carry = shot === 5 ? 780 : Math.round(1.72 * speed + 1.5 * (launch - 12) - 22 + ((shot * 7) % 11));
    return `${shot % 2 ? "New" : "Mine"},${carry},${speed},${launch},2700`;
  });
  await type(page, `club,carry (yd),ball speed (mph),launch angle (deg),spin rate (rpm)\n${rows.join("\n")}\n`);
  assert.equal((await answer(page)).kind, "doubt");
  await page.getByRole("button", { name: "It is right" }).click();
  await page.locator("article.answer:not(.doubt)[aria-busy=false]").waitFor();
  await page.locator("#consistency summary").click();
  await page.locator("#consistency .said").waitFor();
  const words = await page.locator("#consistency").innerText();
  assert.match(words, /In 1 of 16 shots carry does not fit its own launch/);
  assert.match(words, /780\u00a0yd of carry[\s\S]*It would fit if carry is in feet[\s\S]*Nothing was changed/);
  assertQuiet(watched);
  await context.close();
});

test("before and after: the change is moved and named, and can be moved where it cannot be answered", async () => {
  const { page, context, watched } = await open("#example=twelve", { viewport: phone });
  await answer(page);
  await page.locator("#change summary").click();
  await page.locator("#change .said").waitFor();
  assert.match(await page.locator("#change").innerText(), /Driver B: 13\u00a0yd more than Own driver/);
  await page.getByLabel("Called after it").fill("new ball");
  await page.keyboard.press("Tab");
  await page.locator("#change .effects", { hasText: "New ball against before" }).waitFor();
  await page.getByRole("slider", { name: "First shot after the change" }).fill("60");
  await page.locator("#change", { hasText: "at least 3 shots with each of two clubs on both sides" }).waitFor();
  await page.getByRole("slider", { name: "First shot after the change" }).fill("25");
  await page.locator("#change .effects").waitFor();
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("the weather brings carry to standard air, modeled, with the answer there", async () => {
  const { page, context, watched } = await open("#example=twelve", { viewport: phone });
  await answer(page);
  await page.locator("#weather summary").click();
  await page.locator("#weather .said", { hasText: "would carry the same" }).waitFor();
  await page.getByLabel("Height above the sea, ft").fill("5000");
  await page.keyboard.press("Tab");
  await page.locator("#weather .said", { hasText: /about 1\d\syd shorter/ }).waitFor();
  const words = await page.locator("#weather").innerText();
  assert.match(words, /The answer in standard air, modeled\s+Modeled standard-air carry with Driver B is higher/);
  await page.getByLabel("Temperature", { exact: true }).fill("900");
  await page.keyboard.press("Tab");
  await page.locator("#weather", { hasText: "This page cannot fly a ball in such weather" }).waitFor();
  assert.deepEqual(await faults(page), []);
  assertQuiet(watched);
  await context.close();
});

/** Two clubs with two balls in turn, of which the ball moves spin more than the club does. */
function twoBalls() {
  const rows = Array.from({ length: 48 }, (_, shot) => {
    const [club, ball] = [shot % 2, Math.floor(shot / 4) % 2];
    const spin = 2600 - 100 * club - 700 * ball + ((shot * 37) % 120);
    return `${club ? "New" : "Mine"},${ball ? "hard" : "soft"},${spin}`;
  });
  return `club,Ball type,spin rate (rpm)\n${rows.join("\n")}\n`;
}

test("a column that says what changed is found, answers without typing, and travels with the link", async () => {
  const { page, context, watched } = await open("", { viewport: phone });
  await type(page, twoBalls());
  await answer(page);
  await openShots(page);
  await page.locator(".columns-read summary").click();
  assert.equal(await page.getByLabel("What “Ball type” holds").inputValue(), '"second"');
  await page.locator("#change summary").click();
  await page.locator("#change .said").waitFor();
  const words = await page.locator("#change").innerText();
  assert.match(
    words,
    /Your shots say what changed: Ball type[\s\S]*The change to “hard” made more difference to spin rate than New did/,
  );
  assert.match(words, /Hard: 7\d\d\srpm less than soft/);
  assert.deepEqual(await faults(page), []);
  assert.equal(await overflows(page), false);
  await page.locator("#change .segment", { hasText: "From one shot on" }).click();
  await page.getByRole("slider", { name: "First shot after the change" }).waitFor();
  await page.locator("#share summary").first().click();
  await page.locator("img.share-card").waitFor();
  const link = await page.locator("#share-address").inputValue();
  assertQuiet(watched);
  await context.close();

  const elsewhere = await open(link.slice(siteUrl.length), { viewport: desk });
  await answer(elsewhere.page);
  await elsewhere.page.locator("#change summary").click();
  await elsewhere.page
    .locator("#change .said", { hasText: "The change to “hard” made more difference to spin rate than New did" })
    .waitFor();
  assertQuiet(elsewhere.watched);
  await elsewhere.context.close();
});

test("weather told makes carry in standard air one of the measures, in the link too, until it is taken back", async () => {
  const { page, context, watched } = await open("#example=twelve", { viewport: phone });
  await answer(page);
  await page.locator("#weather summary").click();
  await page.locator("#weather .said").waitFor();
  await page.getByLabel("Height above the sea, ft").fill("5000");
  await page.keyboard.press("Tab");
  await page.locator(".others", { hasText: "Modeled standard-air carry" }).waitFor();
  assert.ok(await page.locator("#weather details[open]").count(), "the door stays open");
  await page.locator("#share summary").first().click();
  await page.locator("img.share-card").waitFor();
  const link = await page.locator("#share-address").inputValue();

  const elsewhere = await open(link.slice(siteUrl.length), { viewport: desk });
  await answer(elsewhere.page);
  assert.match(await elsewhere.page.locator(".others").innerText(), /Modeled standard-air carry/);
  await elsewhere.page.locator("#weather summary").click();
  await elsewhere.page.locator("#weather .said").waitFor();
  assert.equal(await elsewhere.page.getByLabel("Height above the sea, ft").inputValue(), "5000");
  assertQuiet(elsewhere.watched);
  await elsewhere.context.close();

  await page.getByLabel("Height above the sea, ft").fill("");
  await page.keyboard.press("Tab");
  await page.locator("#weather .said", { hasText: "would carry the same" }).waitFor();
  await page.waitForFunction(() => !document.querySelector(".others").innerText.includes("Modeled"));
  await openShots(page);
  await page.locator(".undo button").click();
  await page.locator(".others", { hasText: "Modeled standard-air carry" }).waitFor();
  await page.waitForFunction(() => document.querySelector("#weather input").value === "");
  assertQuiet(watched);
  await context.close();
});
