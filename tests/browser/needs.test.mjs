// What the page says where it cannot run: "Opening…" never stays alone.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { browser, phone, siteUrl } from "./harness.mjs";
import { serve } from "./site.mjs";
import { answer, demo, paste } from "./steps.mjs";

/** Opens the site after `prepare`, without the watch on errors that other journeys keep. */
async function opened(prepare, rest = "") {
  const context = await (await browser()).newContext({ viewport: phone });
  const page = await context.newPage();
  await prepare(page);
  await page.goto(siteUrl + rest, { waitUntil: "commit" });
  return { page, context };
}

test("a browser without WebAssembly is told what it lacks, in the page's language", async () => {
  for (const [rest, words] of [
    ["", "Open it in a browser of the last three years"],
    ["?lang=es", "Ábrela en un navegador de los últimos tres años"],
  ]) {
    // As where scripts of today do not run either.
    const { page, context } = await opened(async (page) => {
      await page.addInitScript(() => delete globalThis.WebAssembly);
      await page.route(/assets\/main-.*\.js/, (route) => route.fulfill({ contentType: "text/javascript", body: "" }));
    }, rest);
    await page.getByText(words).waitFor();
    await context.close();
  }
});

test("a script that did not arrive is said, and stays said", async () => {
  const { page, context } = await opened(async (page) => {
    await page.clock.install();
    await page.route(/assets\/main-.*\.js/, (route) => route.abort());
  });
  const broken = page.getByText("A part of the page did not arrive");
  await broken.waitFor();
  await page.clock.fastForward(6000);
  assert.equal(await broken.count(), 1);
  await context.close();
});

test("what takes longer than five seconds is said, and gone once the page stands", async () => {
  let arrive;
  const held = new Promise((resolve) => {
    arrive = resolve;
  });
  const { page, context } = await opened(async (page) => {
    await page.clock.install();
    await page.route(/assets\/main-.*\.js/, (route) => held.then(() => route.continue()));
  });
  const slow = page.getByText("Still on its way");
  await page.locator(".opening").waitFor({ state: "attached" });
  assert.equal(await slow.count(), 0);
  // The small script may only now be on its way.
  for (let waits = 0; (await slow.count()) === 0 && waits < 100; waits += 1) {
    await page.clock.fastForward(5000);
    await new Promise((later) => setTimeout(later, 50));
  }
  assert.equal(await slow.count(), 1);
  await page.clock.resume();
  arrive();
  await page.locator("#start .way").first().waitFor();
  await page.waitForFunction(() => !document.querySelector("straight-answer-page .opening"));
  assert.equal(await slow.count(), 0);
  await context.close();
});

test("where no script runs at all, not even the small one, the page says what it needs within five seconds", async () => {
  const { page, context } = await opened(async (page) => {
    await page.route(/\.js$/, (route) => route.abort());
  });
  const late = page.locator("#start").getByText("Nothing yet? Allow scripts");
  await late.waitFor({ state: "visible", timeout: 7000 });
  await context.close();
});

/** The site in a frame that has scripts and nothing else: no origin, no stores, no workers. */
async function sandboxed(headers, rest = "") {
  const site = await serve({ folder: "dist", path: "/", headers });
  const made = {
    "/": `<!doctype html><iframe sandbox="allow-scripts" width="390" height="844" src="${site.origin}/${rest}"></iframe>`,
  };
  const host = await serve({ made, host: "127.0.0.1" });
  const context = await (await browser()).newContext({ viewport: { width: 600, height: 900 } });
  const page = await context.newPage();
  await page.goto(`${host.origin}/`);
  const frame = await (await page.locator("iframe").elementHandle()).contentFrame();
  const close = async () => {
    await context.close();
    await Promise.all([site.close(), host.close()]);
  };
  return { frame, close };
}

for (const [what, headers] of [
  ["that lets any origin in", { "access-control-allow-origin": "*" }],
  ["without a word of CORS", {}],
]) {
  test(`in a frame without an origin, from a host ${what}, it answers on the page's own thread`, async () => {
    const { frame, close } = await sandboxed(headers);
    await paste(frame, await demo("fair-12-yards"));
    const said = await answer(frame);
    assert.equal(said.kind, "different");
    const ground = await frame.evaluate(() => getComputedStyle(document.body).backgroundColor);
    assert.notEqual(ground, "rgba(0, 0, 0, 0)", "with its styles");
    // A room that loads when it is opened.
    await frame.locator("#luck summary").click();
    await frame.locator(".luck-said").waitFor();
    await frame.locator("#fair summary").first().click();
    await frame.locator(".fair-power").waitFor();
    await close();
  });
}

test("in such a frame a link opens, in Spanish too", async () => {
  const { link } = JSON.parse(await readFile(new URL("../links/sales-floor.json", import.meta.url), "utf8"));
  const { frame, close } = await sandboxed({}, `?lang=es#${link}`);
  assert.match((await answer(frame)).everything, /golpes/);
  await frame.locator("#sent").waitFor();
  await close();
});
