// Bad input on the page: a clear message with the place and the remedy, nothing lost, nothing hung.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, goIn, openShots, overflows, paste, type } from "./steps.mjs";

const shots = (club, ...carries) => carries.map((carry) => `${club},${carry}`).join("\n");

test("empty text says what to do and keeps the page as it was", async () => {
  const { page, context } = await open("#shots");
  await type(page, "   \n ");
  assert.match(await page.getByRole("alert").innerText(), /nothing here yet[\s\S]*Paste/);
  assert.ok(await page.locator("#text").isVisible());
  await context.close();
});

test("one club is read, and the answer says what is missing", async () => {
  const { page, context } = await open("#shots");
  await type(page, `club,carry\n${shots("Mine", 231, 226, 240, 229)}`);
  const { kind, headline } = await answer(page);
  assert.equal(kind, "cannot_answer");
  assert.match(headline, /one club/);
  await openShots(page);
  assert.match(await page.locator("#shots").innerText(), /Mine[\s\S]*4\sshots/);
  await context.close();
});

test("one shot is no answer", async () => {
  const { page, context } = await open("#shots");
  await type(page, `club,carry\n${shots("Mine", 231)}\n${shots("New", 226, 230, 235)}`);
  assert.equal((await answer(page)).kind, "cannot_answer");
  await context.close();
});

test("no numbers at all: the page says so and keeps the text", async () => {
  const { page, context } = await open("#shots");
  const text = "We hit a few with both clubs and the new one felt great";
  await type(page, text);
  assert.equal((await answer(page)).kind, "cannot_answer");
  await openShots(page);
  assert.match(await page.locator("#shots .problem").innerText(), /\w/);
  await page.getByText("The text and how it was read").click();
  assert.equal(await page.locator(".text-again").inputValue(), text);
  await context.close();
});

test("letters in a number column: the line, the column and what was found, and every other row counts", async () => {
  const { page, context } = await open("#shots");
  await type(page, `club,carry\n${shots("Mine", 231, "topped", 226, 240)}\n${shots("New", 238, 229, 244)}`);
  await openShots(page);
  const problem = await page.locator("#shots .problem").innerText();
  assert.match(problem, /Line 3/);
  assert.match(problem, /carry/i);
  assert.match(problem, /topped/);
  await answer(page);
  await context.close();
});

test("10 MB are read without a hang, and the page stays open to a tap meanwhile", async () => {
  const { page, context, watched } = await open("#shots");
  const rows = Array.from({ length: 760_000 }, (_, i) => `${i % 2 ? "Driver B" : "Driver A"},${200 + (i % 71)}.5`);
  const text = `club,carry\n${rows.join("\n")}`;
  assert.ok(text.length > 10_000_000);
  await paste(page, text);
  await page
    .getByText(/^Reading/)
    .first()
    .waitFor();
  const gap = await page.evaluate(
    () =>
      new Promise((resolve) => {
        let last = performance.now();
        let longest = 0;
        const timer = setInterval(() => {
          const now = performance.now();
          longest = Math.max(longest, now - last);
          last = now;
        }, 20);
        setTimeout(() => {
          clearInterval(timer);
          resolve(longest);
        }, 600);
      }),
  );
  assert.ok(gap < 400, `the page answered within ${gap} ms while reading`);
  await page.locator("#answer").waitFor({ timeout: 60_000 });
  await answer(page);
  await openShots(page);
  assert.match(await page.locator("#shots").innerText(), /too long|shots/);
  assertQuiet(watched);
  await context.close();
});

test("names that try to be markup stay text, and long ones do not widen the page", async () => {
  const { page, context, watched } = await open("#shots");
  const names = [`<img src=x onerror=alert(1)>${"very long ".repeat(40)}`, "\u202Eright to left"];
  await type(page, `club,carry\n${names.map((name) => shots(name, 231, 226, 240, 229)).join("\n")}`);
  await answer(page);
  assert.equal(await page.locator("straight-answer-page img").count(), 0);
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("a file that is no text is refused by name with a remedy", async () => {
  const { page, context } = await open("#shots");
  await page.locator("input[type=file]").setInputFiles({
    name: "session.xlsx",
    mimeType: "application/octet-stream",
    buffer: Buffer.from([0x50, 0x4b, 3, 4, 20, 0]),
  });
  assert.match(await page.getByRole("alert").innerText(), /session\.xlsx[\s\S]*paste/i);
  await context.close();
});

test("a chosen file is read like a paste", async () => {
  const { page, context } = await open("#shots");
  const text = `club,carry\n${shots("Mine", 231, 226, 240, 229)}\n${shots("New", 238, 229, 244, 240)}`;
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "shots.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  await answer(page);
  await context.close();
});

test("without a network an example says so, and pasted shots are still answered", async () => {
  const { page, context } = await open("#shots", { serviceWorkers: "block" });
  await goIn(page, "shots");
  await page.waitForLoadState("networkidle");
  await context.setOffline(true);
  await page.getByRole("button", { name: /At the shop/ }).click();
  assert.match(await page.getByRole("alert").innerText(), /offline[\s\S]*paste/);
  await paste(page, `club,carry\n${shots("Mine", 231, 226, 240, 229)}\n${shots("New", 238, 229, 244, 240)}`);
  await answer(page);
  await context.close();
});
