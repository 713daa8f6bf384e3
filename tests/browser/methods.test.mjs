// The methods page: reached from the page, complete without script, and right on paper.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults, overflows } from "./steps.mjs";

test("the numbers lead to the method that decided, the footer to the whole, and the shots stay where they were", async () => {
  const { page, context, watched } = await open("#example=floor");
  await answer(page);
  await page.locator("#numbers > summary").click();
  for (const [from, ends] of [["#numbers", /methods\.html#blocked$/], ["footer", /methods\.html$/]]) {
    const beside = page.waitForEvent("popup");
    await page.locator(from).getByRole("link", { name: /How the answer is found/ }).click();
    const methods = await beside;
    await methods.locator("#blocked").waitFor();
    assert.match(methods.url(), ends);
    await methods.getByRole("link", { name: "Straight Answer", exact: true }).click();
    await methods.locator("#text").waitFor();
  }
  assert.ok(await page.locator("#answer-headline").isVisible());
  assertQuiet(watched);
  await context.close();
});

for (const colorScheme of ["light", "dark"]) {
  test(`complete without script, nothing wider than the screen, axe finds nothing: ${colorScheme}`, async () => {
    const { page, context, watched } = await open("methods.html", { colorScheme, viewport: { width: 360, height: 800 } });
    assert.equal(await page.locator("script").count(), 0);
    const text = await page.locator("main").innerText();
    for (const said of ["Welch", "Bonett", "Holm", "Schuirmann", "Common practice, no source", "Our judgement, measured by simulation"]) {
      assert.ok(text.includes(said), said);
    }
    assert.doesNotMatch(await page.content(), /<!-- (measured|margins|contents|sections)/);
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
    // axe is put in by the test, which the page's policy rightly forbids.
    const free = await open("methods.html", { colorScheme, bypassCSP: true });
    assert.deepEqual(await faults(free.page), []);
    await free.context.close();
  });
}

test("every section can be reached by its address, and the contents name them all", async () => {
  const { page, context } = await open("methods.html");
  const [sections, links] = await page.evaluate(() => [
    [...document.querySelectorAll("section")].map(({ id }) => `#${id}`),
    [...document.querySelectorAll("nav a")].map((link) => link.getAttribute("href")),
  ]);
  assert.deepEqual(links, sections);
  await context.close();
});
