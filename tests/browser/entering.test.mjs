// Shots and averages entered by hand on a phone: cells, keys that a number pad lacks, mistakes, undo, and the answer after it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, answerAfter, faults, goIn, openShots, overflows } from "./steps.mjs";

const touch = { hasTouch: true, isMobile: true };

/** Types cells row by row, each ended as the keyboard's own key ends it. */
async function typeRows(page, rows, from = 0) {
  await page.locator(`[data-cell="${from}.0"]`).focus();
  for (const cell of rows.flat()) {
    await page.keyboard.type(cell);
    await page.keyboard.press("Enter");
  }
}

async function openGrid() {
  const opened = await open("#shots", touch);
  const before = opened.watched.requests.length;
  await opened.page.getByRole("button", { name: "Type shots one by one" }).click();
  await opened.page.locator("table.cells").waitFor();
  return { ...opened, loaded: opened.watched.requests.slice(before) };
}

test("nine shots typed on a phone become an answer, and a club's name goes with them", async () => {
  const { page, context, watched, loaded } = await openGrid();
  assert.ok(
    loaded.some((url) => /entry-part.*\.js$/.test(url)),
    "the grid is loaded when it is opened",
  );
  assert.equal(await page.locator('[data-cell="0.0"]').getAttribute("inputmode"), "decimal");
  await page.getByLabel("Its name").fill("Old driver");
  await typeRows(page, [
    ["231", "12 L"],
    ["226,5", "3 R"],
    ["229", "-4"],
    ["233", "8 R"],
    ["228", "0"],
  ]);
  await page.locator(".segment", { hasText: "New" }).click();
  await typeRows(page, [
    ["251", "2 L"],
    ["254", "7 R"],
    ["249", "1"],
    ["252,5", "5 L"],
  ]);
  assert.equal(await overflows(page), false);
  assert.deepEqual(await faults(page), []);
  await page.getByRole("button", { name: "Read 9\u00a0shots" }).click();
  const { kind, headline, everything } = await answer(page);
  assert.equal(kind, "different");
  assert.match(headline, /New/);
  assert.match(everything, /Old driver/);
  await openShots(page);
  const read = await page.locator("#shots").innerText();
  assert.match(read, /5\sshots/);
  assert.match(read, /4\sshots/);
  assertQuiet(watched);
  await context.close();
});

test("a mistake stands under its row with what was typed, and is gone when it is mended", async () => {
  const { page, context } = await openGrid();
  await typeRows(page, [
    ["abc", "3"],
    ["2510", "4"],
  ]);
  const wrong = page.locator("tr.wrong");
  await page.waitForFunction(() => document.querySelectorAll("tr.wrong").length === 2);
  assert.match(await wrong.nth(0).innerText(), /number was expected/);
  assert.match(await wrong.nth(1).innerText(), /2510.*outside/);
  assert.equal(await page.locator('[data-cell="0.0"]').inputValue(), "abc");
  assert.equal(await page.locator('[data-cell="0.0"]').getAttribute("aria-invalid"), "true");
  assert.deepEqual(await faults(page), []);
  await page.locator('[data-cell="0.0"]').fill("25O");
  await page.locator('[data-cell="0.0"]').press("Enter");
  await page.getByRole("button", { name: "Use 250" }).click();
  await page.waitForFunction(
    () =>
      document.querySelector('[data-cell="0.0"]').value === "250" && document.querySelectorAll("tr.wrong").length === 1,
  );
  await page.getByRole("button", { name: "Undo" }).click();
  await page.waitForFunction(() => document.querySelector('[data-cell="0.0"]').value === "25O");
  await context.close();
});

test("a grid opened before the core is there waits for the names of its columns", async () => {
  const { page, context } = await open("#shots", touch);
  let release;
  const held = new Promise((settle) => (release = settle));
  await page.route("**/*.wasm", async (route) => {
    await held;
    await route.continue();
  });
  await page.reload({ waitUntil: "commit" });
  await page.getByRole("button", { name: "Type shots one by one" }).click();
  await page.locator(".entry-loading").waitFor();
  assert.equal(await page.locator("table.cells").count(), 0);
  release();
  await page.locator("table.cells").waitFor();
  assert.deepEqual(
    await page
      .locator("table.cells thead")
      .innerText()
      .then((text) => text.match(/Carry|Offline|Lap/g)),
    ["Carry", "Offline"],
  );
  await context.close();
});

test("the keys below the grid put the side, go on, and keep the number pad open", async () => {
  const { page, context } = await openGrid();
  await page.locator('[data-cell="0.0"]').tap();
  await page.keyboard.type("250");
  await page.getByRole("button", { name: "Next cell" }).tap();
  const focused = () => page.evaluate(() => document.activeElement?.dataset.cell);
  await page.waitForFunction(() => document.activeElement?.dataset.cell === "0.1");
  await page.keyboard.type("12");
  await page.getByRole("button", { name: "Left" }).tap();
  await page.waitForFunction(() => document.querySelector('[data-cell="0.1"]').value === "12 L");
  assert.equal(await focused(), "0.1");
  await page.getByRole("button", { name: "Right" }).tap();
  await page.waitForFunction(() => document.querySelector('[data-cell="0.1"]').value === "12 R");
  await page.getByRole("button", { name: "Next cell" }).tap();
  await page.waitForFunction(() => document.activeElement?.dataset.cell === "1.0");
  await context.close();
});

test("cells copied from a spreadsheet fill the grid, another unit is asked for, and typing goes on after the answer", async () => {
  const { page, context, watched } = await openGrid();
  const pasteAt = (cell, text) =>
    page.locator(`[data-cell="${cell}"]`).evaluate((field, pasted) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", pasted);
      field.focus();
      field.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
    }, text);
  await pasteAt("0.0", "210\t3\t7\n212\t-2\t8\n209\t1\t9\n");
  await page.getByText("1 more column found no place").waitFor();
  assert.equal(await page.locator('[data-cell="2.1"]').inputValue(), "1");
  await page.locator(".segment", { hasText: "New" }).click();
  await pasteAt("0.0", "230\t3\n233\t-2\n229\t1\n");
  await page.locator("details.what-is-typed summary").click();
  await page.getByLabel("Unit of Carry").selectOption("m");
  await page.getByRole("button", { name: /^Read 6/ }).click();
  const first = await answer(page);
  assert.match(first.everything, /252\syd/, "230 to 233 m are about 252 yd");
  await openShots(page);
  await page.getByRole("button", { name: "Back to typing" }).click();
  await page.locator(".entry .segment", { hasText: "New" }).click();
  await typeRows(page, [["231", "0"]], 3);
  const more = await answerAfter(page, () => page.getByRole("button", { name: /^Read 7/ }).click());
  assert.notEqual(more.everything, first.everything);
  assertQuiet(watched);
  await context.close();
});

test("what was typed waits when the grid is left, and nothing that slips in takes its place", async () => {
  const { page, context } = await openGrid();
  await typeRows(page, [["250", "12 L"]]);
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "club,carry\nA,1\nB,2\n");
    document.body.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  });
  await page.getByRole("button", { name: "Back", exact: true }).click();
  await goIn(page, "shots");
  await page.getByRole("button", { name: "Type shots one by one" }).click();
  await page.waitForFunction(() => document.querySelector('[data-cell="0.1"]')?.value === "12 L");
  await context.close();
});

test("the other club is typed beside one that was pasted; six columns scroll inside the card of a small phone", async () => {
  const { page, context, watched } = await open("#shots", { ...touch, viewport: { width: 360, height: 740 } });
  await page.locator("#text").fill("club,carry\nOwn driver,231\nOwn driver,226\nOwn driver,229\nOwn driver,233\n");
  await page.getByRole("button", { name: "Read these shots" }).click();
  await page.locator(".add").getByRole("button", { name: "Type shots one by one" }).click();
  await page.locator("table.cells").waitFor();
  assert.equal(await page.getByLabel("Its name").inputValue(), "New");
  await page.locator("details.what-is-typed summary").click();
  for (const id of ["ball_speed", "launch_angle", "spin_rate", "round"])
    await page.getByLabel("Add a measure").selectOption(id);
  await page.waitForFunction(() => document.querySelectorAll("table.cells thead th").length === 7);
  assert.equal(await overflows(page), false);
  await page.getByLabel("Leave Lap out").click();
  await typeRows(page, [
    ["251", "0", "", "", ""],
    ["254", "1", "", "", ""],
    ["249", "2", "", "", ""],
  ]);
  await page.getByRole("button", { name: "Read 3\u00a0shots" }).click();
  const { kind, headline } = await answer(page);
  assert.match(headline, /New/);
  assert.equal(kind, "different");
  assertQuiet(watched);
  await context.close();
});

test("averages from a photo: counts, averages, one scatter; the answer follows, and says what was chosen", async () => {
  const { page, context, watched } = await open("#shots", touch);
  await page.getByRole("button", { name: "Only averages? Enter them" }).click();
  await page.getByLabel("Number of shots of Mine").fill("15");
  await page.getByLabel("Average Carry of Mine").fill("231,5");
  await page.getByLabel("Scatter of Carry of Mine").fill("8");
  await page.getByLabel("Number of shots of New").fill("many");
  await page.getByLabel("Average Carry of New").fill("254,0");
  await page.getByLabel("Scatter of Carry of New").fill("9");
  await page.getByLabel("Scatter of Carry of New").press("Enter");
  await page.getByText("That is not a number of shots.").waitFor();
  assert.equal(await page.getByLabel("Number of shots of New").inputValue(), "many");
  assert.deepEqual(await faults(page), []);
  await page.getByLabel("Number of shots of New").fill("14");
  assert.equal(await overflows(page), false);
  await page.getByRole("button", { name: "Read these averages" }).click();
  const all = await answer(page);
  assert.equal(all.kind, "different");
  assert.match(all.headline, /New/);
  await openShots(page);
  assert.match(await page.locator("#shots").innerText(), /averages of 14\sshots/);
  await page.getByRole("button", { name: "Change the averages" }).click();
  await page.getByLabel("Which shots the averages of New stand for").selectOption("good");
  const chosen = await answerAfter(page, () => page.getByRole("button", { name: "Read these averages" }).click());
  assert.equal(chosen.kind, "cannot_answer");
  assertQuiet(watched);
  await context.close();
});
