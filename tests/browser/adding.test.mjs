// More than one text: a second file for the second club, names, sheets of a workbook, and taking each step back.

import assert from "node:assert/strict";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import { assertQuiet, open } from "./harness.mjs";
import { answer, answerAfter, demo, faults, goIn, openFact, openShots, overflows, paste, type } from "./steps.mjs";

const touch = { hasTouch: true, isMobile: true };
const workbook = (name) => fileURLToPath(new URL(`../workbooks/${name}`, import.meta.url));
const file = (name, text) => ({ name, mimeType: "text/csv", buffer: Buffer.from(text) });

const MINE = "Carry (yd),Offline\n240,3\n244,-5\n238,2\n247,9\n241,-1\n243,0\n";
const NEW = "Offline (yd);Carry (m)\n3;240,5\n-5;243\n2;238,5\n9;246\n-1;241\n0;242\n";

async function builds(page) {
  await openShots(page);
  return page.locator(".builds li").allInnerTexts();
}

test("a paste from a spreadsheet, its unit corrected, and the answer follows", async () => {
  const { page, context, watched } = await open("#shots", touch);
  await paste(
    page,
    "Club\tCarry\nMine\t210\nMine\t214\nMine\t208\nMine\t212\nNew\t216\nNew\t219\nNew\t213\nNew\t217\n",
  );
  const before = await answer(page);
  await openShots(page);
  await page.getByText("Columns: Club, Carry").click();
  const after = await answerAfter(page, () => page.getByLabel("Unit of “Carry”").selectOption("m"));
  assert.notEqual(after.everything, before.everything);
  const back = await answerAfter(page, () => page.getByRole("button", { name: /^Undo/ }).click());
  assert.equal(back.headline, before.headline);
  assertQuiet(watched);
  await context.close();
});

test("a file for the second club: whose shots they are is asked, and measures come together in one unit", async () => {
  const { page, context, watched } = await open("#shots", touch);
  await type(page, MINE);
  await page.getByLabel("Which club hit these shots?").fill("Own driver");
  await page.getByRole("button", { name: "Name it" }).click();
  await page.locator(".whose").waitFor({ state: "detached" });
  assert.equal((await answer(page)).kind, "cannot_answer");

  await page.locator(".more input[type=file]").setInputFiles(file("new one.csv", NEW));
  await openShots(page);
  const asked = page.getByLabel("Which club hit the shots in new one.csv?");
  await asked.waitFor();
  const first = await answer(page);
  assert.match(first.headline, /new one/, "the file's name stands in until the club is named");
  assert.equal(await asked.inputValue(), "new one");
  assert.deepEqual(await faults(page), []);
  await asked.fill("Driver B");
  const named = await answerAfter(page, () => page.getByRole("button", { name: "Name it" }).click());
  assert.match(named.headline, /Driver B/);
  assert.match(named.everything, /26\d\syd/, "metres became yards");
  assert.deepEqual(
    (await builds(page)).map((text) => text.replace(/\s+/g, " ")),
    ["Own driver 6 shots Rename", "Driver B 6 shots Rename"],
  );

  await openFact(page, "order");
  const inTurn = await answerAfter(page, () => page.getByLabel("How the clubs were hit").selectOption("interleaved"));
  assert.notEqual(inTurn.everything, named.everything);
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();
});

test("rows without a club are given to one with a tap", async () => {
  const { page, context } = await open("#shots", touch);
  await type(page, "Club,Carry\nMine,231\nMine,226\n,229\nMine,233\nNew,251\nNew,254\nNew,249\n");
  const problem = page.locator(".problem h3", { hasText: "1\u00a0row not understood" });
  await openShots(page);
  await problem.waitFor();
  await page.getByLabel("The club of rows without one").selectOption("Mine");
  await problem.waitFor({ state: "detached" });
  assert.match((await builds(page)).join(), /Mine\s+4\sshots/);
  await context.close();
});

test("two files chosen at once are two clubs, named after them", async () => {
  const { page, context } = await open("#shots", touch);
  const carry = (values) => `Carry\n${values.join("\n")}\n`;
  await page
    .locator(".give input[type=file]")
    .setInputFiles([
      file("old driver.csv", carry([231, 226, 229, 233, 228])),
      file("new driver.csv", carry([251, 254, 249, 252, 250])),
    ]);
  const first = await answer(page);
  assert.match(first.headline, /new driver/);
  assert.equal(await page.locator(".whose").count(), 0);
  assert.deepEqual(
    (await builds(page)).map((text) => text.replace(/\s+/g, " ")),
    ["old driver 5 shots Rename", "new driver 5 shots Rename"],
  );
  await context.close();
});

test("a file of an old spreadsheet keeps its letters and dashes", async () => {
  const { page, context } = await open("#shots", touch);
  const rows = (name) => [231, 226, 229, 233].map((carry) => `${name};${carry},5\n`).join("");
  const text = `Schläger;Carry\n${rows("Mein – alter")}${rows("Größer")}`;
  const windows = Buffer.from([...text].map((c) => (c === "–" ? 0x96 : c.charCodeAt(0))));
  await page
    .locator(".give input[type=file]")
    .setInputFiles({ name: "alt.csv", mimeType: "text/csv", buffer: windows });
  await answer(page);
  assert.match((await builds(page)).join(), /Mein – alter[\s\S]*Größer/);
  await context.close();
});

test("added shots can go to a club that is there, and every step can be taken back", async () => {
  const { page, context } = await open("#shots", touch);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  // All of it, with what loads after it.
  await page.locator("#numbers").waitFor();
  const start = await answer(page);
  await openShots(page);
  await page.locator("details.add summary").click();
  await page.locator("#more").fill("Carry\n250\n255\n249\n");
  await page.getByRole("button", { name: "Add these" }).click();
  await page.locator(".whose").waitFor();
  assert.equal((await builds(page)).length, 3);
  await page.locator(".whose").getByRole("button", { name: "Driver B" }).click();
  await page.locator(".whose").waitFor({ state: "detached" });
  await page.locator(".builds .count").getByText("33\u00a0shots").waitFor();
  await openShots(page);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.locator(".whose").waitFor();
  const back = await answerAfter(page, () => page.getByRole("button", { name: "Undo: added shots" }).click());
  assert.equal(back.everything, start.everything);
  assert.equal((await builds(page)).length, 2);
  await context.close();
});

test("what holds no shots is not added, and is not lost", async () => {
  const { page, context } = await open("#shots");
  await paste(page, await demo("fair-same"));
  const before = await answer(page);
  await openShots(page);
  await page.locator("details.add summary").click();
  await page.locator("#more").fill("nothing here to read");
  await page.getByRole("button", { name: "Add these" }).click();
  await page.getByText("Nothing was added.").waitFor();
  assert.equal(await page.locator("#more").inputValue(), "nothing here to read");
  assert.equal((await answer(page)).headline, before.headline);
  await context.close();
});

test("a club is renamed with a tap and a word, and the answer speaks of it", async () => {
  const { page, context } = await open("#shots", touch);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await openShots(page);
  await page.getByLabel("Rename Driver B", { exact: true }).tap();
  await page.waitForFunction(() => document.activeElement?.getAttribute("name") === "name", undefined);
  await page.keyboard.type("<b>Long one</b>");
  const after = await answerAfter(page, () => page.keyboard.press("Enter"));
  assert.match(after.headline, /<b>Long one<\/b>/);
  const back = await answerAfter(page, () => page.getByRole("button", { name: "Undo: renamed Driver B" }).click());
  assert.match(back.headline, /Driver B/);
  await context.close();
});

test("a shot left out with its reason stays out when another club is added, and can be put back", async () => {
  const { page, context } = await open("#shots", touch);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await page.locator("details.shot-list summary").click();
  const out = await answerAfter(page, () => page.getByLabel("Whether shot 3 counts").selectOption("mishit"));
  assert.match(out.everything, /left out/i);
  await openShots(page);
  await page.locator("details.add summary").click();
  await page.locator("#more").fill("Club,Carry\nThird,250\nThird,255\nThird,249\n");
  await answerAfter(page, () => page.getByRole("button", { name: "Add these" }).click());
  assert.equal(await page.getByLabel("Whether shot 3 counts").inputValue(), "mishit");
  await answerAfter(page, () => page.getByLabel("Whether shot 3 counts").selectOption(""));
  await context.close();
});

test("a workbook with one sheet is read at once, by a package that comes with it", async () => {
  const { page, context, watched } = await open("#shots", touch);
  await goIn(page, "shots");
  const before = watched.requests.length;
  await page.locator(".give input[type=file]").setInputFiles(workbook("one_sheet.xlsx"));
  const { kind, headline } = await answer(page);
  assert.equal(kind, "different");
  assert.match(headline, /Driver B/);
  assert.ok(watched.requests.slice(before).some((url) => /straight_answer_workbook.*\.wasm$/.test(url)));
  assertQuiet(watched);
  await context.close();
});

test("several sheets are offered by name; a sheet for each club gives the clubs their names", async () => {
  const { page, context, watched } = await open("#shots", touch);
  await page.locator(".give input[type=file]").setInputFiles(workbook("several_sheets.xlsx"));
  await page.locator(".sheets").waitFor();
  assert.deepEqual(await faults(page), []);
  assert.equal(await overflows(page), false);
  await page.getByRole("button", { name: "Read what is chosen" }).click();
  await page.getByText("Choose a sheet first.").waitFor();
  await page.getByRole("checkbox", { name: /^Own driver 13/ }).check();
  await page.getByRole("checkbox", { name: /^Driver B 13/ }).check();
  await page.getByRole("button", { name: "Read what is chosen" }).click();
  assert.match((await answer(page)).headline, /Driver B/);
  assert.deepEqual(
    (await builds(page)).map((text) => text.replace(/\s+/g, " ")),
    ["Own driver 12 shots Rename", "Driver B 12 shots Rename"],
  );
  assertQuiet(watched);
  await context.close();
});

test("a damaged workbook and a packed file are refused by name with a remedy", async () => {
  const { page, context } = await open("#shots");
  await goIn(page, "shots");
  for (const [name, buffer, said] of [
    ["cut.xlsx", Buffer.from([0x50, 0x4b, 0x03, 0x04, 1, 2, 3]), /damaged/],
    ["old.xls", Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]), /older kind/],
  ]) {
    await page.locator(".give input[type=file]").setInputFiles({ name, mimeType: "application/octet-stream", buffer });
    await page.getByText(said).waitFor();
    assert.match(await page.locator(".trouble").innerText(), new RegExp(`${name}[\\s\\S]*paste`));
  }
  await context.close();
});

test("without a network a workbook says so, and nothing is lost", async () => {
  const { page, context } = await open("#shots", { serviceWorkers: "block" });
  await page.locator("#text").fill("Mine,2");
  // What takes files in comes a moment after the page; the part for workbooks only with one.
  await page.waitForFunction(() => performance.getEntriesByType("resource").some(({ name }) => /\/intake-/.test(name)));
  await context.setOffline(true);
  await page.locator(".give input[type=file]").setInputFiles(workbook("one_sheet.xlsx"));
  await page.locator(".trouble").waitFor();
  assert.match(await page.locator(".trouble").innerText(), /one_sheet\.xlsx[\s\S]*paste them here/);
  assert.equal(await page.locator("#text").inputValue(), "Mine,2");
  await context.close();
});
