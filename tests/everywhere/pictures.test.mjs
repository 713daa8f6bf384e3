// The pictures in every browser: what each says in words, and that it is moved by keyboard.

import assert from "node:assert/strict";
import { answer, overflows } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

async function openPart(page, part) {
  await page.open("#example=twelve");
  await answer(page);
  await page.locator(`#${part} summary`).first().click();
}

everywhere("the luck slider moves by keyboard, and text and picture follow", async (page) => {
  await openPart(page, "luck");
  await page.locator(".luck-said").waitFor();
  const shown = async (number) => {
    await page.waitForFunction(
      (wanted) => document.querySelector(".luck-slider output")?.textContent === wanted,
      String(number),
    );
    return page.evaluate(() => ({
      said: document.querySelector(".luck-said").textContent,
      alternative: document.querySelector("svg.hill").getAttribute("aria-label"),
      bars: [...document.querySelectorAll(".hill-bar")].map((bar) => bar.getAttribute("height")).join(),
    }));
  };
  await page.getByRole("slider", { name: "Shots shown with each club" }).focus();
  const five = await shown(5);
  await page.keyboard.press("ArrowRight");
  const six = await shown(6);
  for (const part of ["said", "alternative", "bars"]) assert.notEqual(six[part], five[part], part);
  await page.keyboard.press("End");
  assert.match((await shown(15)).said, /runs of 15/);
  await page.keyboard.press("Home");
  assert.match((await shown(3)).said, /runs of 3/);
  assert.equal(await overflows(page), false);
  await page.assertQuiet();
});

everywhere("where they land is said in words, and the aim steps by keyboard", async (page) => {
  await openPart(page, "landing");
  await page.locator("#landing .said").waitFor();
  const said = (words) =>
    page.waitForFunction(
      (words) => document.querySelector("svg.ground").getAttribute("aria-label").includes(words),
      words,
    );
  await said("Aimed as on the day");
  const first = () => page.evaluate(() => document.querySelector("svg.ground .mark").getAttribute("transform"));
  const before = await first();
  await page.getByRole("slider", { name: "Aim" }).focus();
  await page.keyboard.press("ArrowRight");
  await said("Aimed 1\u00a0yd right");
  assert.notEqual(await first(), before, "the shots move with it");
  await page.keyboard.press("Home");
  await said("Aimed 60\u00a0yd left");
  assert.equal(await page.evaluate(() => document.activeElement?.className), "aim", "the keyboard stays on the line");
  assert.equal(await overflows(page), false);
  await page.assertQuiet();
});

everywhere("club or swing is read, and its picture says the same", async (page) => {
  await openPart(page, "cause");
  await page.locator("#cause .said").waitFor();
  assert.match(await page.locator("#cause").innerText(), /Driver B carried 13\u00a0yd farther in these shots/);
  const alternative = await page.locator("svg.gap-parts").getAttribute("aria-label");
  const drawn = await page.locator(".part-value").all((value) => value.textContent);
  assert.ok(drawn.length >= 2);
  for (const value of drawn) assert.ok(alternative.includes(value), `${value} in ${alternative}`);
  assert.equal(await overflows(page), false);
  await page.assertQuiet();
});

everywhere("what the ball speed could carry is said in words, and follows the choice", async (page) => {
  await openPart(page, "potential");
  await page.locator("#potential .said").waitFor();
  await page.locator("#potential .map-row > summary").click();
  const map = page.locator("svg.carry-map");
  const alternative = await map.getAttribute("aria-label");
  assert.match(alternative, /A map of carry at 15\d\.\d\u00a0mph.*Own driver: Carries 260\u00a0yd/);
  assert.ok((await map.locator(".area").count()) >= 4, "lines of equal carry");
  await page.locator("#potential .segment", { hasText: "Your best third" }).click();
  await page.waitForFunction(
    (old) => document.querySelector("svg.carry-map").getAttribute("aria-label") !== old,
    alternative,
  );
  assert.match(await map.getAttribute("aria-label"), /at 166\.2\u00a0mph.*Your best third/);
  assert.equal(await overflows(page), false);
  await page.assertQuiet();
});
