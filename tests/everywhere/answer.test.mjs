// From shots to an answer in every browser: pasted, opened, typed, out of a workbook; asked differently; shared.

import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { answer, answerAfter, demo, goIn, openFact, overflows } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

everywhere("shots are pasted; another baseline and margin, and the words follow", async (page) => {
  await page.copy(await demo("fair-12-yards"));
  await page.open();
  await goIn(page, "shots");
  await page.paste("#text");
  const first = await answer(page);
  assert.equal(first.kind, "different");
  assert.match(first.headline, /Driver B/);
  await openFact(page, "whose");
  const turned = await answerAfter(page, () => page.locator(".segment", { hasText: "Driver B" }).click());
  assert.notEqual(turned.headline, first.headline);
  const stricter = await answerAfter(page, async () => {
    await openFact(page, "margin");
    await page.locator("#margin").fill("40");
    await page.locator("#margin").press("Enter");
  });
  assert.notEqual(stricter.headline, turned.headline);
  assert.match(stricter.everything, /40\syd/);
  assert.equal(await overflows(page), false);
  await page.assertQuiet();
});

everywhere("an example opens by its address, and its order is corrected", async (page) => {
  await page.open("#example=floor");
  assert.match((await answer(page)).everything, /not in turn|one after the other/i);
  await openFact(page, "order");
  await page.getByLabel("How the clubs were hit").selectOption("unknown");
  await page.waitForFunction(() => /hit in turn is not known/.test(document.querySelector("#answer").innerText));
  await page.assertQuiet();
});

everywhere("a shot is left out with a reason, and taken back", async (page) => {
  await page.open("#example=fair");
  const all = await answer(page);
  await page.locator("details.shot-list summary").click();
  const counts = page.getByLabel("Whether shot 3 counts", { exact: true });
  const out = await answerAfter(page, () => counts.selectOption("mishit"));
  assert.match(out.everything, /left out/i);
  assert.equal(await page.locator("tr.left-out").count(), 1, "it stays in view");
  const back = await answerAfter(page, () => counts.selectOption(""));
  assert.equal(back.everything, all.everything);
  await page.assertQuiet();
});

everywhere("nine shots typed in the grid become an answer", async (page) => {
  await page.open();
  await goIn(page, "shots");
  await page.getByRole("button", { name: "Type shots one by one" }).click();
  await page.locator("table.cells").waitFor();
  const typeRows = async (rows) => {
    await page.locator('[data-cell="0.0"]').focus();
    for (const cell of rows.flat()) {
      await page.keyboard.type(cell);
      await page.keyboard.press("Enter");
    }
  };
  await page.getByLabel("Its name").fill("Old driver");
  await typeRows([
    ["231", "12 L"],
    ["226,5", "3 R"],
    ["229", "-4"],
    ["233", "8 R"],
    ["228", "0"],
  ]);
  await page.locator(".segment", { hasText: "New" }).click();
  await typeRows([
    ["251", "2 L"],
    ["254", "7 R"],
    ["249", "1"],
    ["252,5", "5 L"],
  ]);
  assert.equal(await overflows(page), false);
  await page.getByRole("button", { name: "Read 9\u00a0shots" }).click();
  const { kind, headline, everything } = await answer(page);
  assert.equal(kind, "different");
  assert.match(headline, /New/);
  assert.match(everything, /Old driver/);
  await page.assertQuiet();
});

everywhere("a workbook is read by the package that comes with it", async (page) => {
  await page.open();
  await goIn(page, "shots");
  const file = fileURLToPath(new URL("../workbooks/one_sheet.xlsx", import.meta.url));
  await page.locator(".give input[type=file]").setInputFiles(file);
  const { kind, headline } = await answer(page);
  assert.equal(kind, "different");
  assert.match(headline, /Driver B/);
  await page.assertQuiet();
});

everywhere("a link opened anew says the same words", async (page) => {
  await page.open("#example=twelve");
  const told = await answer(page);
  await page.locator("#share summary").first().click();
  await page.locator("img.share-card").waitFor();
  const link = await page.locator("#share-address").inputValue();
  await page.assertQuiet();
  await page.goto(link);
  const read = await answer(page);
  assert.equal(read.headline, told.headline);
  assert.match(await page.locator("#sent").innerText(), /60\s+shots with 2\s+clubs/);
  await page.assertQuiet();
});
