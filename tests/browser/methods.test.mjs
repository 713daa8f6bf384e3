// The methods page: reached from the page, complete without script, and right on paper.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults, overflows } from "./steps.mjs";

test("the numbers lead to the method that decided, the footer to the whole, and the shots stay where they were", async () => {
  const { page, context, watched } = await open("#example=floor");
  await answer(page);
  await page.locator("#numbers > summary").click();
  for (const [from, ends] of [
    ["#numbers", /methods-full\.html#blocked$/],
    ["footer", /methods\.html$/],
  ]) {
    const beside = page.waitForEvent("popup");
    await page
      .locator(from)
      .getByRole("link", { name: /How the answer is found/ })
      .click();
    const methods = await beside;
    await methods.locator("#blocked").waitFor();
    assert.match(methods.url(), ends);
    await methods.getByRole("link", { name: "Straight Answer", exact: true }).click();
    await methods.locator("#start .way").first().waitFor();
  }
  assert.ok(await page.locator("#answer-headline").isVisible());
  assertQuiet(watched);
  await context.close();
});

const COMMON = ["Welch", "Bonett", "Holm", "Schuirmann"];
const SAID = {
  "methods.html": ["Cannot tell", "in 100 where 5 are promised"],
  "methods.es.html": ["No se puede saber", "de cada 100 donde se prometen 5"],
  "methods-full.html": [...COMMON, "no study behind it", "Our judgment, measured by simulation"],
  "methods-full.es.html": [...COMMON, "sin ningún estudio detrás", "Criterio nuestro, medido por simulación"],
};

for (const [colorScheme, file] of ["light", "dark"].flatMap((scheme) =>
  Object.keys(SAID).map((file) => [scheme, file]),
)) {
  test(`complete without script, nothing wider than the screen, axe finds nothing: ${file}, ${colorScheme}`, async () => {
    const { page, context, watched } = await open(file, { colorScheme, viewport: { width: 360, height: 800 } });
    assert.equal(await page.locator("script").count(), 0);
    const text = await page.locator("main").innerText();
    for (const said of SAID[file]) assert.ok(text.includes(said), said);
    assert.doesNotMatch(await page.content(), /<!-- |%[a-z]+%/);
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
    // axe is put in by the test, which the page's policy rightly forbids.
    const free = await open(file, { colorScheme, bypassCSP: true });
    assert.deepEqual(await faults(free.page), []);
    await free.context.close();
  });
}

test("in Spanish the methods are in Spanish, and lead back to the Spanish page", async () => {
  const { page, context, watched } = await open("?lang=es#example=floor");
  await answer(page);
  await page.locator("#numbers > summary").click();
  for (const [from, ends] of [
    ["#numbers", /methods-full\.es\.html#blocked$/],
    ["footer", /methods\.es\.html$/],
  ]) {
    const beside = page.waitForEvent("popup");
    await page
      .locator(from)
      .getByRole("link", { name: /Cómo se encuentra la respuesta/ })
      .click();
    const methods = await beside;
    await methods.locator("#blocked").getByText("Un palo después del otro, o en un orden que nadie sabe").waitFor();
    assert.match(methods.url(), ends);
    await methods.getByRole("link", { name: "Straight Answer", exact: true }).click();
    await methods.getByRole("link", { name: "Tengo golpes" }).waitFor();
  }
  const english = await context.newPage();
  await english.goto(new URL("methods.es.html", page.url()).href);
  await english.getByRole("link", { name: "English" }).click();
  await english.getByRole("heading", { name: "How the answer is found" }).waitFor();
  assertQuiet(watched);
  await context.close();
});

test("every section can be reached by its address, and the contents of both pages name them all", async () => {
  const { page, context } = await open("methods-full.html");
  const [sections, links] = await page.evaluate(() => [
    [...document.querySelectorAll("section")].map(({ id }) => `#${id}`),
    [...document.querySelectorAll("nav a")].map((link) => link.getAttribute("href")),
  ]);
  assert.deepEqual(links, sections);
  // A link to a section from before there were two pages leads to the first one, and from there on.
  await page.goto(new URL("methods.html#blocked", page.url()).href);
  await page.locator("#blocked a").click();
  await page.getByRole("heading", { name: "One club after the other, or in an order nobody knows" }).waitFor();
  assert.match(page.url(), /methods-full\.html#blocked$/);
  await context.close();
});
