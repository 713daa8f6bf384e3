// The page in Spanish on a phone: what it says, how it counts and writes numbers, and links that stay Spanish.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, demo, faults, overflows, paste } from "./steps.mjs";

/** The texts that can be seen, each once; also what fields say before anything is typed, and names that are only heard. */
const texts = (page) =>
  page.evaluate(() => {
    const found = new Set();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { parentElement: around, data } = walker.currentNode;
      if (around.checkVisibility() && !around.closest("script, style, noscript") && /\p{L}{2}/u.test(data)) found.add(data.trim());
    }
    for (const element of document.querySelectorAll("[aria-label], [placeholder], [alt]")) {
      for (const name of ["aria-label", "placeholder", "alt"]) if (element.getAttribute(name)) found.add(element.getAttribute(name));
    }
    return [...found];
  });

/** What an English page and a Spanish one in the same state both say. */
async function saidInBoth(english, spanish) {
  const known = new Set(await texts(english));
  return (await texts(spanish)).filter((text) => known.has(text));
}

test("the first screen has no English left", async () => {
  const [english, spanish] = [await open(), await open("?lang=es")];
  for (const { page } of [english, spanish]) await page.locator("#text").waitFor();
  assert.equal(await spanish.page.locator("html").getAttribute("lang"), "es");
  assert.match(await spanish.page.title(), /palos/);
  assert.ok((await texts(spanish.page)).length > 20);
  assert.deepEqual(await saidInBoth(english.page, spanish.page), ["Straight Answer"]);
  assert.equal(await overflows(spanish.page), false);
  assert.deepEqual(await faults(spanish.page), []);
  assertQuiet(spanish.watched);
  for (const { context } of [english, spanish]) await context.close();
});

test("one shot and many, decimals with a comma, in words and in tables", async () => {
  const { page, context, watched } = await open("?lang=es");
  await paste(page, "club,carry\nViejo,231.5\nNuevo,226.5\nNuevo,238.5\nNuevo,229.5");
  await page.locator(".builds").waitFor();
  assert.deepEqual(await page.locator(".builds .count").allInnerTexts(), ["1\u00a0golpe", "3\u00a0golpes"]);
  await page.getByRole("button", { name: "Empezar de nuevo" }).click();
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await page.locator("#numbers > summary").click();
  const numbers = await page.locator("#numbers .measured").first().innerText();
  assert.match(numbers, /\d,\d\syd/);
  assert.doesNotMatch(numbers, /\d\.\d/);
  assertQuiet(watched);
  await context.close();
});

test("a link made in Spanish opens in Spanish, and every part of the page is Spanish too", async () => {
  const { page, context, watched } = await open("?lang=es#example=twelve");
  await answer(page);
  await page.locator("#share > details > summary").click();
  const link = await page.locator("#share-address").inputValue();
  assert.match(link, /\?lang=es#\d+\./);
  await page.evaluate(() => document.querySelectorAll(".part > details").forEach((door) => (door.open = true)));
  // Every part is there, and none of them shows an id in the place of its text.
  await page.locator("#claim .claim-form").waitFor();
  await page.locator("#fair .fair-form").waitFor();
  await page.locator("#potential .speed-groups").waitFor();
  const said = await page.locator("body").innerText();
  for (const seen of ["Ancho de la calle", "Golpes mostrados de cada palo", "Mejora prometida", "Rondas de 3\u00a0golpes", "Juegas"]) {
    assert.ok(said.includes(seen), seen);
  }
  assert.doesNotMatch(said, /^[a-z]+(-[a-z]+)+$/m);
  assert.equal(await overflows(page), false);
  assertQuiet(watched);
  await context.close();

  const opened = await open(link.slice(link.indexOf("?")));
  await answer(opened.page);
  assert.equal(await opened.page.locator("html").getAttribute("lang"), "es");
  assert.match(await opened.page.locator("#sent").innerText(), /Alguien compartió esta sesión contigo/);
  assertQuiet(opened.watched);
  await opened.context.close();
});
