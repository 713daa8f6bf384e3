// Every state of the page for those who cannot see it, cannot point, or need other colors.

import assert from "node:assert/strict";
import { test } from "node:test";
import { change, hit, start, touched } from "./fair-steps.mjs";
import { open } from "./harness.mjs";
import { answer, faults, goIn, openFact, overflows, type } from "./steps.mjs";

const states = {
  start: (page) => page.locator("#start .way").first().waitFor(),
  "going to a fitting": async (page) => {
    await goIn(page, "fitting");
    for (const answer of ["Yes", "No"]) await page.locator(".fitting .said").getByText(answer).first().click();
    await page.locator(".fitting-outcome").waitFor();
  },
  empty: (page) => goIn(page, "shots"),
  "empty, refused": (page) => type(page, " "),
  answer: (page) => example(page, "twelve"),
  "answer with warnings": (page) => example(page, "floor"),
  "numbers and text open": async (page) => {
    await example(page, "fair");
    for (const details of await page.locator("details > summary").all()) await details.click();
  },
  "planned laps": async (page) => {
    await example(page, "fair");
    await openFact(page, "stopping");
    await page.getByText("In planned laps").click();
    await answer(page);
  },
  "cannot answer, rows not understood": async (page) => {
    await type(page, "club,carry\nMine,231\nMine,topped\nNew,abc\n");
    await answer(page);
  },
};

async function example(page, id) {
  await page.evaluate((name) => (location.hash = `example=${name}`), id);
  await answer(page);
}

for (const colorScheme of ["light", "dark"]) {
  for (const [name, reach] of Object.entries(states)) {
    test(`axe finds nothing: ${name}, ${colorScheme}`, async () => {
      const { page, context } = await open("", { colorScheme, reducedMotion: "reduce" });
      await reach(page);
      assert.deepEqual(await faults(page), []);
      await context.close();
    });
  }
}

for (const [look, options] of [
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced colors", { forcedColors: "active" }],
  ["forced colors on dark", { forcedColors: "active", colorScheme: "dark" }],
]) {
  test(`axe finds nothing in ${look}: start, answer, plan, log, a value that is asked about, a cut link`, async () => {
    const { page, context } = await open("", { ...touched, ...options, reducedMotion: "reduce" });
    await page.locator("#start .way").first().waitFor();
    assert.deepEqual(await faults(page), [], "start");
    await page.evaluate(() => (location.hash = "1.AQYBAgAA"));
    await page.locator("#cut").waitFor();
    assert.deepEqual(await faults(page), [], "cut link");
    await example(page, "floor");
    assert.deepEqual(await faults(page), [], "answer");
    await page.locator("#fair summary").first().click();
    await page.locator(".fair-power").waitFor();
    assert.deepEqual(await faults(page), [], "plan");
    await change(page);
    assert.deepEqual(await faults(page), [], "plan to change");
    await start(page);
    await hit(page, 241);
    assert.deepEqual(await faults(page), [], "log");
    for (const digit of "941")
      await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
    await page.locator(".log-asked").waitFor();
    assert.deepEqual(await faults(page), [], "asked about");
    await context.close();
  });
}

test("nothing is wider than the screen from 360 px up, nor at twice the text size", async () => {
  for (const width of [360, 390, 430, 768, 1280]) {
    const { page, context } = await open("#example=floor", { viewport: { width, height: 800 } });
    await answer(page);
    assert.equal(await overflows(page), false, `${width} px`);
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "212.5%"));
    assert.equal(await overflows(page), false, `${width} px with large text`);
    await context.close();
  }
});

test("every control is large enough for a thumb", async () => {
  const { page, context } = await open("#example=twelve");
  await answer(page);
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        "button, select, summary, textarea, label.option, label.segment, .amount input, .see-answer",
      ),
    ]
      .filter((control) => control.checkVisibility())
      .map((control) => ({
        text: control.textContent.trim().slice(0, 30),
        height: control.getBoundingClientRect().height,
      }))
      .filter(({ height }) => height < 44),
  );
  assert.deepEqual(small, []);
  await context.close();
});

test("the keyboard alone gets from the empty page to a changed answer", async () => {
  const { page, context } = await open("#shots");
  await goIn(page, "shots");
  const tabTo = async (wanted) => {
    for (let press = 0; press < 60; press++) {
      await page.keyboard.press("Tab");
      if (await page.evaluate((selector) => document.activeElement?.matches(selector), wanted)) return;
    }
    assert.fail(`the keyboard never reached ${wanted}`);
  };
  await tabTo("#text");
  await page.keyboard.insertText(
    "club,carry\nMine,231\nMine,226\nMine,240\nMine,229\nNew,238\nNew,229\nNew,244\nNew,241\n",
  );
  await tabTo("button.primary");
  await page.keyboard.press("Enter");
  const first = await answer(page);
  assert.equal(
    await page.evaluate(() => document.activeElement?.id),
    "answer-title",
    "the keyboard stands at the answer",
  );
  await tabTo("#fact-whose > summary");
  await page.keyboard.press("Enter");
  await tabTo("input[name=baseline]");
  await page.keyboard.press("ArrowRight");
  await page.waitForFunction(
    (old) => document.querySelector(".asked")?.innerText.match(/Mine\s+against\s+New/) && old,
    true,
  );
  await tabTo("#fact-margin > summary");
  await page.keyboard.press("Enter");
  await tabTo("#margin");
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("9");
  await tabTo(".numbers summary");
  await page.keyboard.press("Enter");
  await page.locator(".numbers table").first().waitFor();
  assert.ok(first.headline.length > 0);
  await context.close();
});

test("the answer is announced, and its picture is told in words", async () => {
  const { page, context } = await open("#example=twelve");
  const { headline } = await answer(page);
  await page.waitForFunction((said) => document.querySelector("[role=status]").textContent.includes(said), headline);
  const picture = await page.getByRole("img", { name: /Driver B against Own driver/ }).getAttribute("aria-label");
  assert.match(picture, /may lie from/);
  await context.close();
});
