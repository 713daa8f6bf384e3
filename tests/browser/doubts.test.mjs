// What the reading is in doubt of is asked before there is an answer, with a tap, and the answer follows.

import assert from "node:assert/strict";
import { test } from "node:test";
import { open } from "./harness.mjs";
import { answer, goIn, openShots, paste, type } from "./steps.mjs";

const rows = (club, ...values) => values.map((value) => `${club},${value}`).join("\n");
const TYPED = "Old driver: 248, 252, 239, 255, 247\nNew driver: 256, 249, 261, 258, 252\n";

test("a typed list asks what its numbers are, with shots of each club, and answers after a tap", async () => {
  const { page, context } = await open("#shots");
  await paste(page, TYPED);
  const first = await answer(page);
  assert.equal(first.kind, "doubt");
  assert.match(first.everything, /First look at this[\s\S]*Old driver[\s\S]*248\syd[\s\S]*New driver/);
  assert.doesNotMatch(first.everything, /yd (?:more|less)/);
  await page.getByRole("button", { name: "It is carry" }).click();
  await page.locator("article.answer:not(.doubt)[aria-busy=false]").waitFor();
  assert.notEqual((await answer(page)).kind, "doubt");
  await context.close();
});

test("a carry of 1555 is asked about, stays out, and is told with its line", async () => {
  const { page, context } = await open("#shots");
  await type(page, `club,carry\n${rows("Mine", 231, 1555, 226, 240)}\n${rows("New", 238, 229, 244, 236)}`);
  const asked = await answer(page);
  assert.equal(asked.kind, "doubt");
  assert.match(asked.headline, /^1 value of carry cannot be right: 1,?555\. It is left out\./);
  await page.getByRole("button", { name: "It is right" }).waitFor();
  assert.match(asked.everything, /Line 3/);
  await page.getByRole("button", { name: "Leave that out" }).click();
  await page.locator("article.answer:not(.doubt)[aria-busy=false]").waitFor();
  const { everything } = await answer(page);
  assert.doesNotMatch(everything, /1,?555/);
  await openShots(page);
  assert.match(await page.locator("#shots").innerText(), /1,?555/);
  await context.close();
});

test("sixty clubs are no list: another column is offered, and the page answers with it", async () => {
  const { page, context } = await open("#shots");
  const shots = Array.from({ length: 60 }, (_, at) => `T${at},${at % 2 ? "Round" : "Square"} head,${230 + (at % 17)}`);
  await type(page, `Club,Head,Carry\n${shots.join("\n")}`);
  assert.equal((await answer(page)).kind, "doubt");
  await openShots(page);
  assert.ok((await page.locator("#shots .build").count()) < 20);
  await page.getByRole("button", { name: /Head/ }).click();
  await page.locator("article.answer:not(.doubt)[aria-busy=false]").waitFor();
  assert.match(await page.locator("#shots").innerText(), /Square head[\s\S]*30/);
  await context.close();
});

test("averages in a sentence open the form filled in", async () => {
  const { page, context } = await open("#shots");
  await type(
    page,
    "With my old driver I averaged 248 carry over 12 shots, with the new driver 255 carry over 10 shots.",
  );
  await page.locator("straight-answer-averages input").first().waitFor();
  const values = await page
    .locator("straight-answer-averages input")
    .evaluateAll((all) => all.map(({ value }) => value));
  assert.ok(
    ["old driver", "12", "248", "new driver", "10", "255"].every((value) => values.includes(value)),
    values.join(),
  );
  await context.close();
});

test("a web table whose cells reach over rows is read by its markup", async () => {
  const { page, context } = await open("#shots");
  const cells = (club, values) =>
    values.map((v, at) => `<tr>${at ? "" : `<td rowspan="${values.length}">${club}</td>`}<td>${v}</td></tr>`).join("");
  const markup = `<table><tr><th>Club</th><th>Carry (yd)</th></tr>${cells("Mine", [231, 226, 240])}${cells("New", [238, 229, 244])}</table>`;
  await goIn(page, "shots");
  await page.evaluate((html) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "Club\tCarry (yd)\nMine\t231\n226\n240\nNew\t238\n229\n244");
    clipboardData.setData("text/html", html);
    const field = document.querySelector("#text");
    field.focus();
    field.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, markup);
  await answer(page);
  await openShots(page);
  assert.match(await page.locator("#shots").innerText(), /Mine[\s\S]*3[\s\S]*New[\s\S]*3/);
  await context.close();
});

test("a point that slipped is asked about before there is an answer, and its value stays out until then", async () => {
  const { page, context } = await open("#shots");
  const mine = rows("Mine", 231, 226, 24.0, 229, 233, 228, 236, 225);
  await type(page, `club,carry\n${mine}\n${rows("New", 238, 229, 244, 236, 240, 235, 239, 243)}`);
  const asked = await answer(page);
  assert.equal(asked.kind, "doubt");
  assert.match(asked.headline, /about ten times off the others, as if a point had slipped: 24/);
  assert.match(asked.everything, /Line 4/);
  await page.getByRole("button", { name: "Leave that out" }).click();
  await page.locator("article.answer:not(.doubt)[aria-busy=false]").waitFor();
  assert.match((await answer(page)).everything, /Mine 230\syd over 7/);
  await context.close();
});

test("a club of a second text that is spelled otherwise is asked about, and is one after a tap", async () => {
  const { page, context } = await open("#shots");
  await type(page, `club,carry\n${rows("My driver", 231, 226, 240, 229)}\n${rows("Driver B", 238, 229, 244, 236)}`);
  await answer(page);
  await openShots(page);
  await page.locator("details.add summary").click();
  await page.locator("#more").fill(`club,carry\n${rows("driver b", 239, 231, 245, 237)}`);
  await page.getByRole("button", { name: "Add these" }).click();
  await page.locator("article.answer.doubt").waitFor();
  assert.match((await answer(page)).headline, /“Driver B”, “driver b”/);
  await page.getByRole("button", { name: /one club/i }).click();
  await page.locator("article.answer:not(.doubt)[aria-busy=false]").waitFor();
  assert.match((await answer(page)).everything, /over 8/);
  await openShots(page);
  assert.equal(await page.locator("#shots .builds li").count(), 2);
  await context.close();
});
