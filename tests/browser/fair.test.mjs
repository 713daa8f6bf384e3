// The coach's hour on a phone: plan, log, lose the page, lose the network, finish, read, save; no shot lost.

import assert from "node:assert/strict";
import { test } from "node:test";
import {
  change,
  hit,
  hitTo,
  NOTHING,
  openFair,
  rounds,
  savedShots,
  shots,
  start,
  stored,
  touched,
  whose,
} from "./fair-steps.mjs";
import { assertQuiet, open, siteUrl } from "./harness.mjs";
import { answer, faults, openFact, openShots, overflows } from "./steps.mjs";

test("plan, log, lose the page between shots, lose the network, finish, read the answer and save it", async () => {
  const { page, context, watched } = await openFair();
  assert.deepEqual(await stored(page), NOTHING, "a plan alone stores nothing");
  const long = await page.locator(".fair-power").innerText();
  await rounds(page, 2);
  assert.match(await page.locator(".fair-headline").innerText(), /^2 laps of 3 shots/);
  await page.getByLabel("When to look at the answer").selectOption({ label: "After every lap" });
  await rounds(page, 5);
  await page.getByText("What keeps it fair").click();
  await page.getByText("What each look costs").click();
  const sure = await page.locator(".fair-looks td").allInnerTexts();
  const levels = sure.map((text) => Number(/([\d.]+)\u00a0%$/.exec(text)[1]));
  assert.equal(levels.length, 4, "a look after each round from the second");
  assert.ok(
    levels.every((level, at) => at === 0 || level < levels[at - 1]) && levels.at(-1) > 95,
    `each look less strict than the one before, and none as lax as a single one: ${sure}`,
  );
  await page.getByLabel("When to look at the answer").selectOption({ label: "Halfway and at the end" });
  await rounds(page, 2);
  assert.notEqual(await page.locator(".fair-power").innerText(), long);
  assert.equal(await overflows(page), false);
  // The whole site is kept before the network goes.
  await page.waitForFunction(() => /Works without a network/.test(document.querySelector("#version").textContent));
  await start(page);
  assert.match(await whose(page), /My driver/);
  assert.equal(await page.locator("straight-answer-page").isVisible(), false, "nothing but the card");
  assert.equal(await overflows(page), false);
  await hitTo(page, 4, 25);
  assert.match(await page.locator(".log-place").innerText(), /Set 2 of 4, New driver, shot 2 of 3/);

  // Killed between two shots.
  await page.close();
  const again = await context.newPage();
  await again.goto(siteUrl);
  await again.locator(".log-keys").waitFor();
  assert.equal(await shots(again), 4, "no shot is lost");
  await again.locator(".log-mishit").click();
  await hitTo(again, 6, 25);

  await context.setOffline(true);
  await again.reload();
  await again.locator(".log-keys").waitFor();
  assert.equal(await shots(again), 6, "no shot is lost without a network");
  await hitTo(again, 12, 25);
  await again.getByRole("button", { name: "Look at the answer" }).click();
  await again.locator(".fair-feel .segment", { hasText: "New driver" }).nth(1).click();
  await again.getByRole("button", { name: "Now show the answer" }).click();
  const said = await answer(again);
  assert.equal(said.kind, "different");
  assert.match(said.headline, /New driver carries farther/);
  await openShots(again);
  assert.match(await again.locator("#shots").innerText(), /12\sshots|6\sshots/);
  assert.match(await again.locator(".fair-felt").innerText(), /New driver felt longer, and the shots show it/);

  const saved = await savedShots(again, () =>
    again.locator(".fair-after > .buttons").getByRole("button", { name: "Save the shots as a file" }).click(),
  );
  assert.equal(saved.length, 12, "every shot is in the file");
  assert.equal(saved.filter((line) => line.endsWith(",mishit")).length, 1, "and the note on one");
  assert.equal(await again.locator(".every-shot .order .noted").count(), 1, "which is ringed in the picture");
  assert.match(await again.locator(".every-shot figcaption").innerText(), /Ringed: noted as “mishit”; it counts/);

  await again.getByText("Leave, keep or forget").click();
  await again.getByRole("button", { name: "Forget everything on this device" }).click();
  await again.getByRole("button", { name: "Yes, forget all of it" }).click();
  await again.locator(".fair-power").waitFor();
  assert.deepEqual(await stored(again), NOTHING);
  await again.reload();
  await again.locator(".fair-power").waitFor();
  assert.equal(await again.locator(".log-keys").count(), 0, "nothing is gone on with");
  assertQuiet(watched);
  await context.close();
});

test("the answer is covered; looking early is written down and makes it stricter", async () => {
  const { page, context, watched } = await openFair();
  await rounds(page, 4);
  await start(page);
  await hitTo(page, 7, 25);
  assert.equal(await page.locator(".headline").count(), 0, "covered");
  assert.match(await page.locator(".log-look").innerText(), /covered until lap 2 is complete/);
  await page.getByText("Look now all the same").click();
  assert.match(await page.locator(".log-look").innerText(), /No plan covers a look at this moment/);
  await page.getByRole("button", { name: "Look now", exact: true }).click();
  // The questions open at their first line, wherever the button stood.
  await page.waitForFunction(() => {
    const { top } = document.querySelector(".fair-feel h3").getBoundingClientRect();
    return top >= 0 && top < innerHeight / 2;
  });
  await page.getByRole("button", { name: "Now show the answer" }).click();
  await answer(page);
  assert.match(await page.locator(".fair-after").innerText(), /99\u00a0% in place of 95\u00a0%/);
  await page.getByRole("button", { name: /^Go on/ }).click();
  await page.locator(".log-keys").waitFor();
  assert.equal(await page.locator("straight-answer-page .headline").count(), 0, "covered again");
  assert.equal(await shots(page), 7, "no shot is lost by a look");
  await hitTo(page, 24, 25);
  await page.getByRole("button", { name: "Look at the answer" }).click();
  await answer(page);
  await page.locator("#numbers > summary").click();
  await page.locator("#numbers table").first().waitFor();
  assert.match(await page.locator("#answer").textContent(), /99\s?%/, "the level of the last answer");
  await openFact(page, "stopping");
  assert.equal(await page.locator("input[name=stopping][value=not_fixed]").isChecked(), true);
  assert.match(await page.locator(".fair-after").innerText(), /from 24 of 24 shots/);
  assert.equal(
    (
      await savedShots(page, () =>
        page.locator(".fair-after > .buttons").getByRole("button", { name: "Save the shots as a file" }).click(),
      )
    ).length,
    24,
  );
  assertQuiet(watched);
  await context.close();
});

test("undo, a mishit, an ended set, a pasted set and a tapped strike keep the count", async () => {
  const { page, context, watched } = await openFair();
  await rounds(page, 2);
  await page.locator(".fair-record .option", { hasText: "Strike offset" }).click();
  await page.locator(".fair-record .option", { hasText: "Strike height" }).click();
  await start(page);
  const face = page.locator(".log-face svg");
  const box = await face.boundingBox();
  await page.touchscreen.tap(box.x + box.width * 0.3, box.y + box.height * 0.4);
  await page.waitForFunction(() => /toe/.test(document.querySelector(".log-ends").textContent));
  const dot = await face.locator(".strike").boundingBox();
  const away = Math.hypot(
    dot.x + dot.width / 2 - box.x - box.width * 0.3,
    dot.y + dot.height / 2 - box.y - box.height * 0.4,
  );
  assert.ok(away < 2.5, `the mark lies where it was tapped, to the millimeter it is kept at: ${away} pixels`);
  await page.locator(".log-mishit").click();
  await hit(page, 201);
  assert.match(await page.locator(".log-card").innerText(), /1 shot noted as a mishit/);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.waitForFunction(() => document.querySelector("[data-shots]").dataset.shots === "0");
  assert.match(await page.locator(".log-value").first().innerText(), /201/, "the shot comes back into the hand");
  await page.getByRole("button", { name: "Keep this shot" }).click();
  await page.waitForFunction(() => document.querySelector("[data-shots]").dataset.shots === "1");
  await page.getByText("Paste a shot or a set").click();
  const field = page.getByLabel("Paste here");
  await field.fill("244 3 1\n251 -6 2\n239 0 0");
  await field.press("Enter");
  await page.locator(".log-paste .trouble").waitFor();
  assert.equal(await shots(page), 1, "a set that does not fit is refused whole");
  await field.evaluate((input) => {
    input.value = "";
  });
  await field.evaluate((input) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "244\t3\t1\n251\t-6\t2");
    input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  });
  await page.waitForFunction(() => document.querySelector("[data-shots]").dataset.shots === "3");
  assert.match(await whose(page), /New driver/);
  await page.getByRole("button", { name: "End this set" }).click();
  await page.waitForFunction(() => /Set 3 of 4/.test(document.querySelector(".log-place").textContent));
  assert.equal(await shots(page), 3);
  assert.deepEqual(await faults(page), []);
  assertQuiet(watched);
  await context.close();
});

test("one club under two labels: the answer is not 'different', and says what luck did", async () => {
  const { page, context, watched } = await openFair();
  await change(page);
  await page.getByText("One club under two labels").click();
  await page.getByText(/Both labels are one club/).waitFor();
  await rounds(page, 3);
  await start(page);
  await hitTo(page, 18, 0);
  await page.getByRole("button", { name: "Look at the answer" }).click();
  await page.getByRole("button", { name: "Now show the answer" }).click();
  assert.notEqual((await answer(page)).kind, "different");
  assert.match(await page.locator(".fair-after").innerText(), /from 18 of 18 shots/);
  assert.match(
    await page.locator(".fair-same").innerText(),
    /Both labels are one club, so the true difference is nothing\. Luck alone will set them about \d+\u00a0yd apart/,
  );
  assert.doesNotMatch(await page.locator(".fair-after").innerText(), /choose by feel/);
  assertQuiet(watched);
  await context.close();
});

test("a plan goes to another phone as a link, opens there ready to start, and never over a test under way", async () => {
  const sender = await openFair();
  await sender.context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await rounds(sender.page, 3);
  await sender.page.getByLabel("Name of club 2").fill("Driver B <b>45 in</b>");
  await sender.page.locator(".fair-record").getByText("Club speed", { exact: true }).click();
  const promised = await sender.page.locator(".fair-power").innerText();
  await sender.page.getByRole("button", { name: "Copy the plan as a link" }).click();
  await sender.page.getByText("Link copied.").waitFor();
  const address = await sender.page.evaluate(() => navigator.clipboard.readText());
  assert.match(address, /#plan=1\.[\w-]{20,200}$/);
  assert.deepEqual(await stored(sender.page), NOTHING);
  await sender.context.close();

  const { page, context, watched } = await open(address.slice(siteUrl.length), touched);
  await page.getByText("This plan came with the link.").waitFor();
  assert.equal(await page.locator(".fair-power").innerText(), promised);
  await change(page);
  assert.equal(await page.getByLabel("Name of club 2").inputValue(), "Driver B <b>45 in</b>");
  assert.deepEqual(await stored(page), NOTHING, "a link alone stores nothing");
  assert.deepEqual(await faults(page), []);
  await start(page);
  assert.equal(await page.locator(".log-field").count(), 2, "carry and club speed");
  await hit(page, 241);
  // The same link again, with a test under way: nothing is lost.
  await page.goto(address);
  await page.reload();
  await page.getByText("then the plan from the link opens").waitFor();
  assert.equal(await shots(page), 1);
  // A link that was cut on its way says so.
  const other = await open(address.slice(siteUrl.length, -6), touched);
  await other.page.getByText("This link is not whole").waitFor();
  await other.context.close();
  assertQuiet(watched);
  await context.close();
});

test("plan and card are clean for axe, light and dark, and the sheet goes to one page of paper", async () => {
  for (const colorScheme of ["light", "dark"]) {
    const { page, context } = await openFair({ ...touched, colorScheme, reducedMotion: "reduce" });
    assert.deepEqual(await faults(page), [], `plan, ${colorScheme}`);
    await page.evaluate(() => {
      document.body.dataset.print = "sheet";
    });
    const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
    assert.equal(pdf.match(/\/Type\s*\/Page\b/g).length, 1, "one page");
    await page.evaluate(() => {
      delete document.body.dataset.print;
    });
    await start(page);
    assert.deepEqual(await faults(page), [], `card, ${colorScheme}`);
    await context.close();
  }
});
