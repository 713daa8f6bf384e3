// The bay in one hand: a plan that can be started at once, numbers that keep themselves, slips that are asked about, any way
// the phone is held.

import assert from "node:assert/strict";
import { test } from "node:test";
import { change, hit, openFair, shots, start, touched } from "./fair-steps.mjs";
import { assertQuiet, open } from "./harness.mjs";
import { faults, overflows } from "./steps.mjs";

/** The lower edge of what is on the screen, from its top; with how far the page was scrolled. */
const bottomOf = (page, name) =>
  page.getByRole("button", { name, exact: true }).evaluate((button) => button.getBoundingClientRect().bottom);

const press = async (page, digits) => {
  for (const digit of digits) await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
};

for (const [width, height] of [
  [390, 844],
  [360, 640],
]) {
  test(`${width} × ${height}: a plan is made already, and its start is on the screen with it`, async () => {
    const { page, context, watched } = await openFair({ ...touched, viewport: { width, height } });
    await page.waitForFunction(() => document.querySelector("#fair").getBoundingClientRect().top < 20);
    const bottom = await bottomOf(page, "Start the test on this phone");
    assert.ok(bottom > 0 && bottom <= height, `the start ends at ${bottom}`);
    assert.match(await page.locator(".fair-made").innerText(), /My driver[\s\S]*10 laps of 3[\s\S]*true difference/);
    assert.equal(await page.locator("#fair-margin").isVisible(), false, "the rest is behind a tap");
    await page.getByText("Works without a network").first().waitFor();
    await change(page);
    assert.equal(await page.locator("#fair-margin").isVisible(), true);
    assert.equal(await overflows(page), false);
    await page.getByLabel("Name of club 2").fill("");
    await page.getByLabel("Name of club 2").blur();
    await page.getByText("A club has no name").waitFor();
    const disabled = () => page.getByRole("button", { name: "Start the test on this phone" }).isDisabled();
    assert.equal(await disabled(), true, "no plan, no start");
    await page.getByLabel("Name of club 2").fill("Other");
    await page.getByLabel("Name of club 2").blur();
    await page.waitForFunction(() => !document.querySelector(".fair-made .trouble"));
    assert.equal(await disabled(), false);
    assertQuiet(watched);
    await context.close();
  });

  test(`${width} × ${height}: three taps keep a carry; set, test and last shot are seen, and so is the button`, async () => {
    const { page, context, watched } = await openFair({ ...touched, viewport: { width, height } });
    await start(page);
    assert.match(await page.locator(".log-place").innerText(), /^Set 1 of 20, My driver, shot 1 of 3$/);
    assert.match(await page.locator(".log-told").innerText(), /Whole test: 0 of 60 shots/);
    await press(page, "241");
    assert.equal(await shots(page), 1, "three digits keep themselves");
    await press(page, "95");
    assert.equal(await shots(page), 1, "two may go on");
    await page.getByRole("button", { name: "Keep this shot" }).click();
    assert.equal(await shots(page), 2);
    assert.match(await page.locator(".log-set").innerText(), /This set\s+241\s+95\s+·/);
    assert.match(await page.locator(".log-last").innerText(), /Last shot:\s+My driver\s+95\syd/);
    await page.locator(".log-last").getByRole("button", { name: "Mishit" }).click();
    await page.getByText("1 shot noted as a mishit").waitFor();
    assert.match(await page.locator(".log-set").innerText(), /95\s+Mishit\s+\*/);
    assert.ok((await bottomOf(page, "Keep this shot")) <= height, "the button is on the screen");
    await hit(page, 244);
    assert.match(await page.locator(".log-place").innerText(), /^Set 2 of 20, New driver, shot 1 of 3$/);
    assert.match(await page.locator(".log-last").innerText(), /My driver\s+244\syd/, "of the set before");
    assert.ok((await bottomOf(page, "Keep this shot")) <= height, "with the club to change to");
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  });
}

test("a value outside the usual is asked about before it is kept", async () => {
  const { page, context, watched } = await openFair();
  await start(page);
  await press(page, "941");
  const asked = page.locator(".log-asked");
  await asked.waitFor();
  assert.match(await asked.innerText(), /Carry: 941\syd is not usual/);
  assert.equal(await shots(page), 0);
  assert.deepEqual(await faults(page), []);
  await asked.getByRole("button", { name: "Type it again" }).click();
  assert.match(await page.locator(".log-value").innerText(), /–/);
  await press(page, "241");
  assert.equal(await shots(page), 1);
  await press(page, "441");
  await asked.getByRole("button", { name: "Yes, keep it" }).click();
  assert.equal(await shots(page), 2);
  assert.match(await page.locator(".log-last").innerText(), /441/);
  // A pasted one too.
  await page.getByText("Paste a shot or a set").click();
  const field = page.getByLabel("Paste here");
  await field.fill("2410");
  await field.press("Enter");
  await asked.waitFor();
  assert.equal(await shots(page), 2);
  await asked.getByRole("button", { name: "Yes, keep it" }).click();
  assert.equal(await shots(page), 3);
  assertQuiet(watched);
  await context.close();
});

test("two numbers for each shot: the first goes on to the second, and what has decimals waits for the button", async () => {
  const { page, context, watched } = await openFair();
  await change(page);
  await page.locator(".fair-record .option", { hasText: "Ball speed" }).first().click();
  await start(page);
  await press(page, "241");
  assert.equal(await shots(page), 0);
  assert.match(await page.locator(".log-field.active").innerText(), /Ball speed/);
  await press(page, "152");
  await page.locator(".log-keys").getByRole("button", { name: "Point" }).click();
  await press(page, "4");
  assert.equal(await shots(page), 0);
  await page.getByRole("button", { name: "Keep this shot" }).click();
  assert.equal(await shots(page), 1);
  assert.match(await page.locator(".log-last").innerText(), /241\syd · 152\.4\smph/);
  assertQuiet(watched);
  await context.close();
});

for (const [width, height] of [
  [844, 390],
  [640, 360],
  [956, 440],
]) {
  test(`held sideways, ${width} × ${height}: keys, number and button are on the screen together`, async () => {
    const { page, context, watched } = await openFair({ ...touched, viewport: { width, height } });
    await start(page);
    // It is scrolled to, which takes a moment; fails by its time limit when a part stays outside.
    await page.waitForFunction(() =>
      [".log-place", ".log-who", ".log-field", ".log-keys", ".log-save"].every((part) => {
        const { top, bottom } = document.querySelector(part).getBoundingClientRect();
        return top >= -1 && bottom <= innerHeight + 1;
      }),
    );
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  });
}

test("a session that is shared while a test runs is shown, and the test waits below it with every shot", async () => {
  const sender = await open("#example=twelve");
  await sender.page.locator("#share > details > summary").click();
  const link = await sender.page.locator("#share-address").inputValue();
  await sender.context.close();
  const { page, context, watched } = await openFair();
  await start(page);
  await hit(page, 241);
  await page.goto(link);
  await page.locator("#sent").waitFor();
  await page.locator("article.answer").waitFor();
  assert.match(await page.locator(".fair-after").innerText(), /The test waits: 1 of 60 shots/);
  // The same after the page was lost.
  await page.reload();
  await page.locator("#sent").waitFor();
  await page.locator(".fair-after").waitFor();
  await page.locator("article.answer").waitFor();
  await page.getByRole("button", { name: /^Go on/ }).click();
  await page.locator(".log-keys").waitFor();
  assert.equal(await shots(page), 1);
  assert.equal(new URL(page.url()).hash, "#fair");
  await page.reload();
  await page.locator(".log-keys").waitFor();
  assert.equal(await shots(page), 1);
  assertQuiet(watched);
  await context.close();
});
