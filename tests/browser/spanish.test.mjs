// The page in Spanish on a phone: what it says, how it counts and writes numbers, and links that stay Spanish.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, demo, faults, goIn, openEverything, openShots, overflows, paste } from "./steps.mjs";

/** The texts that can be seen, each once; also what fields say before anything is typed, and names that are only heard. */
const texts = (page) =>
  page.evaluate(() => {
    const found = new Set();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { parentElement: around, data } = walker.currentNode;
      if (around.checkVisibility() && !around.closest("script, style, noscript") && /\p{L}{2}/u.test(data))
        found.add(data.trim());
    }
    for (const element of document.querySelectorAll("[aria-label], [placeholder], [alt]")) {
      for (const name of ["aria-label", "placeholder", "alt"])
        if (element.getAttribute(name)) found.add(element.getAttribute(name));
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
  for (const { page } of [english, spanish]) await goIn(page, "shots");
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
  await answer(page);
  assert.deepEqual(await page.locator("#shots > details > summary .count").allInnerTexts(), [
    "1\u00a0golpe",
    "3\u00a0golpes",
  ]);
  await openShots(page);
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
  await page.evaluate(() => {
    for (const door of document.querySelectorAll(".part > details")) door.open = true;
  });
  // Every part is there, and none of them shows an id in the place of its text.
  await page.locator("#claim .claim-form").waitFor();
  await page.locator("#fair .fair-plan").waitFor();
  await page.locator("#fair .fair-plan > summary").click();
  await page.locator("#potential .speed-groups").waitFor();
  const said = await page.locator("body").innerText();
  for (const seen of [
    "Ancho de la calle",
    "Golpes mostrados de cada palo",
    "Mejora prometida",
    "Ciclos de 3\u00a0golpes con cada palo",
    "Juegas",
  ]) {
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

/** Said alike in both languages: names, words the two languages share, and what the invented session's own text says. */
const SHARED = new Set([
  "Straight Answer",
  "Own driver",
  "Driver B",
  "Welch",
  "Markdown",
  "Carry",
  "carry",
  "Driver",
  "Spin",
  "Spin, rpm",
  "rpm",
  "Smash factor",
  "Shot",
  "Invented shots: nobody hit them",
  // Headings of the example's file, as they stand in it.
  "Round",
  "Shot Round Build Carry (yd) Offline (yd)…",
]);

test("an answer with everything behind it opened has no English left", async () => {
  const said = [];
  for (const address of ["#example=twelve", "?lang=es#example=twelve"]) {
    const { page, context, watched } = await open(address);
    await answer(page);
    await openEverything(page);
    said.push(new Set(await texts(page)));
    if (address.startsWith("?")) assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  }
  const [english, spanish] = said;
  assert.ok(spanish.size > 250, `${spanish.size} texts`);
  const both = [...spanish].filter((text) => english.has(text) && /\p{Ll}{3}/u.test(text) && !SHARED.has(text));
  assert.deepEqual(both, []);
});

test("a session goes along into the other language, and its answer is the same one", async () => {
  const { page, context, watched } = await open();
  await paste(page, await demo("fair-12-yards"));
  const english = await answer(page);
  await page.getByRole("link", { name: "Español" }).click();
  await page.waitForURL(/\?lang=es#/);
  const spanish = await answer(page);
  const figures = ({ headline }) => headline.match(/\d+/g);
  assert.deepEqual(figures(spanish), figures(english));
  assert.match(spanish.headline, /llega más lejos/);
  assert.equal(spanish.kind, english.kind);
  await page.getByRole("link", { name: "English" }).click();
  await page.waitForFunction(() => document.documentElement.lang === "en");
  assert.equal((await answer(page)).headline, english.headline);
  assertQuiet(watched);
  await context.close();
});

test("a table headed in Spanish is read, its club without a name is asked for, and a fault in it is told in Spanish", async () => {
  const { page, context, watched } = await open("?lang=es");
  await paste(
    page,
    "Palo;Velocidad de bola (km/h);Carry (metros);Desvío\nViejo;231,5;215,5;3 izq\nViejo;230,1;213;x\nNuevo;236;219;8 der\nNuevo;235;218,5;2 izq\n",
  );
  await answer(page);
  await openShots(page);
  assert.match(
    await page.locator(".columns-read summary").innerText(),
    /Velocidad de bola \(km\/h\), Carry \(m\), Desvío/,
  );
  assert.match(await page.locator("#shots").innerText(), /Aquí se esperaba un número/);
  await page.getByRole("button", { name: "Empezar de nuevo" }).click();
  await paste(page, "Carry\n215\n213\n219\n218\n");
  await page.locator(".whose").waitFor();
  assert.match(await page.locator(".builds").innerText(), /Palo 1/);
  assertQuiet(watched);
  await context.close();
});

test("a browser that speaks Spanish is offered it at once, and the page turns to it only when asked", async () => {
  const { page, context, watched } = await open("", { locale: "es-MX" });
  const offer = page.locator("#other-ways a.own");
  await offer.waitFor();
  assert.equal(await offer.innerText(), "Español");
  assert.equal(await offer.getAttribute("lang"), "es");
  await page.getByRole("link", { name: "I have shots" }).waitFor();
  assert.equal(await page.evaluate(() => document.documentElement.lang), "en");
  await offer.click();
  await page.getByRole("link", { name: "Tengo golpes" }).waitFor();
  assert.equal(await page.locator("#other-ways a.own").count(), 0);
  assertQuiet(watched);
  await context.close();
  const english = await open();
  await english.page.getByRole("link", { name: "Español" }).waitFor();
  assert.equal(await english.page.locator("#other-ways a.own").count(), 0);
  await english.context.close();
});

for (const [locale, own, other] of [
  ["es-ES", /\d,\d/, /\d\.\d(?!\d\d)/],
  ["es-MX", /\d\.\d/, /\d,\d(?!\d\d)/],
]) {
  test(`numbers in Spanish are those of the region, in the page's words and the core's: ${locale}`, async () => {
    const { page, context, watched } = await open("?lang=es&units=imperial#example=twelve", { locale });
    await answer(page);
    await page.locator("#numbers > summary").click();
    const said = await page.locator("#answer, #numbers").allInnerTexts();
    assert.match(said.join("\n"), own);
    assert.doesNotMatch(said.join("\n"), other);
    assertQuiet(watched);
    await context.close();
  });
}
