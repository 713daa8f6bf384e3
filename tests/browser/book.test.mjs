// The coach's book: what is kept when it is asked for, found again, taken along and given back.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { hitTo, NOTHING, openFair, rounds, start, stored, touched } from "./fair-steps.mjs";
import { assertQuiet, open, siteUrl } from "./harness.mjs";
import { answer, demo, faults, goIn, overflows, paste } from "./steps.mjs";

/** Keeps what stands on the page under a name. */
async function keep(page, name, date) {
  await page.locator("#keep > details > summary").click();
  await page.locator("#keep-name").fill(name);
  if (date) await page.locator("#keep-date").fill(date);
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("Kept on this device:").first().waitFor();
}

/** Opens the book from wherever the page is. */
async function openBook(page) {
  await page.evaluate(() => {
    location.hash = "book";
  });
  await page.locator("#book .book").waitFor();
}

const lies = (page) => page.locator(".book-lies").innerText();
const rowsShown = (page) => page.locator("#book-rows .book-open-row").allInnerTexts();

/** A whole test of four sets, up to its answer. */
async function wholeTest(page, gap) {
  await hitTo(page, 12, gap);
  await page.getByRole("button", { name: "Look at the answer" }).click();
  await page.getByRole("button", { name: "Now show the answer" }).click();
  await answer(page);
}

test("nothing is kept before Keep is pressed; what is kept opens again as the same answer", async () => {
  const { page, context, watched } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  const before = await answer(page);
  await page.locator("#keep > details > summary").click();
  await page.locator("#keep-name").fill("Ada Example");
  assert.deepEqual((await stored(page)).databases, NOTHING.databases, "a form alone keeps nothing");
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("Kept on this device: Ada Example").waitFor();
  const sheet = page.locator(".sheet-head").getByText("For: Ada Example");
  await sheet.waitFor({ state: "attached" });
  await page.goto("about:blank");
  await page.goto(siteUrl);
  await page.locator("#start a[href='#book']").click();
  await page.locator("#book-rows .book-open-row").waitFor();
  assert.match(await lies(page), /one person, one visit, and one session/);
  assert.ok((await rowsShown(page))[0].includes(before.headline), "the answer's one line stands there");
  await page.locator("#book-rows .book-open-row").click();
  await page.getByRole("button", { name: "Open the answer" }).click();
  assert.equal((await answer(page)).headline, before.headline);
  await sheet.waitFor({ state: "attached" });
  assertQuiet(watched);
  await context.close();
});

test("an afternoon of three pupils: next person, same plan, in two taps; nobody's shots are lost", async () => {
  const { page, context, watched } = await openFair();
  await rounds(page, 2);
  await page.locator("#fair-who").fill("Ada Example");
  await start(page);
  await wholeTest(page, 25);
  for (const [name, gap] of [
    ["Ben Example", 0],
    ["Cleo Example", -20],
  ]) {
    await page.getByRole("button", { name: "Next person, same plan" }).click();
    await page.locator("#fair-who").fill(name);
    await start(page);
    if (name === "Ben Example") await hitTo(page, 5, gap);
    else await wholeTest(page, gap);
    if (name === "Ben Example") {
      await page.getByText("Leave, keep or forget").click();
      await page.getByRole("button", { name: "Leave the test for now" }).click();
    }
  }
  await openBook(page);
  await page.waitForFunction(() => document.querySelectorAll("#book-rows .book-open-row").length === 3);
  assert.match(await lies(page), /3 people, 3 visits, and 3 tests/);
  const all = await rowsShown(page);
  assert.match(all[0], /Cleo Example[\s\S]*carr/);
  assert.match(all[1], /Ben Example[\s\S]*Test that waits/);
  assert.match(all[2], /Ada Example[\s\S]*carries/);
  await page.locator("#book-search").fill("ben");
  await page.waitForFunction(() => document.querySelectorAll("#book-rows .book-open-row").length === 1);
  await page.locator("#book-rows .book-open-row").click();
  await page.locator(".book-opened").getByRole("button", { name: "Go on" }).click();
  await page.locator(".log-keys").waitFor();
  assert.equal(await page.locator("[data-shots]").getAttribute("data-shots"), "5");
  await wholeTest(page, 0);
  assertQuiet(watched);
  await context.close();
});

test("a second visit a week later: clubs and margin are ready, and both visits stand in one picture", async () => {
  const { page, context, watched } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await keep(page, "Ada Example", "2026-05-16");
  // A slip in the date: said anew, the same shots are moved and do not count twice.
  await page.locator("#keep-date").fill("2026-05-23");
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("May 23, 2026").first().waitFor();
  await page.goto("about:blank");
  await page.goto(siteUrl);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await keep(page, "Ada Example", "2026-05-30");
  await openBook(page);
  await page.locator("#book-rows .book-open-row").first().click();
  await page.locator(".book-opened summary").click();
  await page.locator(".book-opened select").selectOption("lesson");
  assert.deepEqual(await faults(page), []);
  await page.getByRole("button", { name: "All of Ada Example" }).click();
  await page.locator(".book-season svg.interval").waitFor();
  assert.deepEqual(await faults(page), []);
  assert.equal(await overflows(page), false);
  assert.equal(await page.locator(".book-season .bar").count(), 3, "two visits, and both together");
  const season = await page.locator(".book-season").innerText();
  assert.match(season, /May 23, 2026/);
  assert.match(season, /May 30, 2026 · a lesson/);
  assert.match(season, /All visits together/);
  assert.ok((await page.locator(".book-together").innerText()).length > 20);
  await page.locator(".book-person .book-open-row").first().click();
  await page.getByRole("button", { name: "Next visit: same clubs and margin" }).click();
  await page.locator(".fair-made").waitFor();
  assert.equal(await page.locator("#fair-who").inputValue(), "Ada Example");
  assert.match(await page.locator(".fair-clubs-made").innerText(), /Carry/);
  assertQuiet(watched);
  await context.close();
});

test("deleting is taken back, a person with all that is theirs", async () => {
  const { page, context } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await keep(page, "Ada Example");
  await openBook(page);
  await page.locator("#book-rows .book-open-row").click();
  await page.getByRole("button", { name: "All of Ada Example" }).click();
  await page.getByRole("button", { name: "Delete Ada Example and all visits" }).click();
  await page.getByText("It can be taken back for 30 days.").waitFor();
  assert.match(await lies(page), /Nothing is kept/);
  await page.locator(".book-done").getByRole("button", { name: "Take back" }).click();
  await page.locator("#book-rows .book-open-row").waitFor();
  assert.match(await lies(page), /one person, one visit, and one session/);
  await context.close();
});

test("a copy is carried to an empty device, locked, shown before it is put in, and twice is the same as once", async () => {
  const { page, context } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  const { headline } = await answer(page);
  await keep(page, "Ada Example");
  await openBook(page);
  await page.getByText("The newest visit is in no copy yet.").waitFor();
  await page.locator(".book-copies > summary").click();
  await page.evaluate(() => {
    delete window.showSaveFilePicker;
  });
  await page.locator("#copy-passphrase").fill("six wooden tees");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a copy" }).click(),
  ]);
  await page.getByText("The copy is saved.").waitFor();
  await page.locator(".book-remind").waitFor({ state: "detached" });
  const text = await readFile(await download.path(), "utf8");
  assert.ok(!text.includes("Ada"), "nobody reads it without the passphrase");
  const other = await open("#book", touched);
  await other.page.locator("#book .book").waitFor();
  assert.match(await lies(other.page), /Nothing is kept/);
  const give = async () => {
    await other.page.locator("#copy-file").setInputFiles(await download.path());
    await other.page.locator("#copy-unlock").fill("wrong");
    await other.page.getByRole("button", { name: "Unlock" }).click();
    await other.page.getByText("That does not open it.").waitFor();
    await other.page.locator("#copy-unlock").fill("six wooden tees");
    await other.page.getByRole("button", { name: "Unlock" }).click();
  };
  await other.page.locator(".book-copies > summary").click();
  await give();
  await other.page.getByText(/It brings: one person, one visit, and one session/).waitFor();
  assert.deepEqual((await stored(other.page)).databases, [], "a preview keeps nothing");
  await other.page.getByRole("button", { name: "Put it in" }).click();
  await other.page.getByText("It is in.").waitFor();
  await other.page.waitForFunction(() =>
    /one person, one visit, and one session/.test(document.querySelector(".book-lies").innerText),
  );
  await give();
  await other.page.getByText("It brings nothing new").waitFor();
  await other.page.locator("#book-rows .book-open-row").click();
  await other.page.getByRole("button", { name: "Open the answer" }).click();
  assert.equal((await answer(other.page)).headline, headline);
  assertQuiet(other.watched);
  await other.context.close();
  await context.close();
});

test("forgetting everything names what goes, and really empties, in every tab", async () => {
  const { page, context } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await keep(page, "Ada Example");
  const second = await context.newPage();
  await second.goto(`${siteUrl}#book`);
  await second.locator("#book-rows .book-open-row").waitFor();
  await openBook(page);
  await page.locator(".book-forget > summary").click();
  assert.match(await page.locator(".book-forget").innerText(), /one person, one visit, and one session/);
  await page.getByRole("button", { name: "Yes, forget all of it" }).click();
  await page.getByText("Nothing is left on this device.").waitFor();
  await second.getByText("Nothing is kept on this device.").first().waitFor();
  assert.deepEqual((await stored(page)).databases, []);
  assert.deepEqual((await stored(page)).marks, []);
  await context.close();
});

test("the file of a planned test answers on another device as the test did, and carries who hit and the day", async () => {
  const { page, context } = await openFair();
  await rounds(page, 2);
  await page.locator("#fair-who").fill("José Example");
  await start(page);
  await wholeTest(page, 13);
  const { headline, everything } = await answer(page);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator(".fair-after > .buttons").getByRole("button", { name: "Save the shots as a file" }).click(),
  ]);
  assert.match(download.suggestedFilename(), /^fair-test-José-Example-My-driver-New-driver-\d{4}-\d\d-\d\d\.csv$/);
  const bytes = await readFile(await download.path());
  assert.deepEqual([...bytes.subarray(0, 3)], [0xef, 0xbb, 0xbf], "a spreadsheet reads names by the mark");
  const other = await open("", touched);
  await goIn(other.page, "shots");
  await other.page.locator("#shots input[type=file]").setInputFiles(await download.path());
  const there = await answer(other.page);
  assert.equal(there.headline, headline);
  assert.equal(there.everything, everything, "to the last word");
  await other.context.close();
  await context.close();
});

test("a claim lies beside the retest of the same person", async () => {
  const { page, context } = await open("", touched);
  await goIn(page, "claim");
  await page.locator("#claim-gain").pressSequentially("20");
  await page.locator(".claim-outcome").waitFor();
  await page.getByText("Keep it for the retest").click();
  await page.locator("#claim-who").fill("Ada Example");
  await page.getByRole("button", { name: "Keep this claim" }).click();
  await page.getByText("Kept in the book on this device.").waitFor();
  await page.goto("about:blank");
  await page.goto(siteUrl);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await keep(page, "Ada Example");
  await openBook(page);
  await page.locator("#book-search").fill("ada");
  await page.waitForFunction(() => document.querySelectorAll("#book-rows .book-open-row").length === 2);
  await page.locator("#book-rows .book-open-row").first().click();
  await page.getByRole("button", { name: "All of Ada Example" }).click();
  await page.getByText("What was claimed, beside the latest retest").waitFor();
  assert.match(await page.locator(".book-person").innerText(), /Claim of [\s\S]*20\syd/);
  await context.close();
});

test("the book speaks Spanish, dates too", async () => {
  const { page, context, watched } = await open("?lang=es", touched);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await page.locator("#keep > details > summary").click();
  await page.locator("#keep-name").fill("José Ejemplo");
  await page.locator("#keep-date").fill("2026-05-30");
  await page.getByRole("button", { name: "Guardar", exact: true }).click();
  await page.getByText("Guardado en este dispositivo: José Ejemplo, 30 may 2026.").waitFor();
  await openBook(page);
  assert.match(await lies(page), /una persona, una visita y una sesión/);
  await page.locator("#book-search").fill("jose");
  await page.locator("#book-rows .book-open-row").click();
  await page.getByRole("button", { name: "Todo de José Ejemplo" }).click();
  await page.locator(".book-season svg.interval").waitFor();
  assert.doesNotMatch(await page.locator("#book").innerText(), /\b(?:book|copy|kept|season|visit)-[a-z]/);
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});
