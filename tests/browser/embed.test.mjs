// The checker inside a page of another origin that allows next to nothing: two of them, the answer only after consent,
// hostile messages passed over, and neither side able to read the other.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { browser, siteUrl } from "./harness.mjs";
import { serveHost, site } from "./host.mjs";
import { serve } from "./site.mjs";
import { demo, faults, openFact } from "./steps.mjs";

let host;
let hostUrl;
before(async () => {
  host = await serveHost();
  ({ hostUrl } = host);
});
after(() => host?.close());

async function openHost(options = {}) {
  const context = await (await browser()).newContext({ viewport: { width: 900, height: 900 }, ...options });
  const page = await context.newPage();
  const watched = { requests: [], errors: [] };
  page.on("request", (request) => watched.requests.push(request.url()));
  page.on("pageerror", (error) => watched.errors.push(String(error)));
  page.on(
    "console",
    (message) =>
      message.type() === "error" && !/favicon/.test(message.location().url) && watched.errors.push(message.text()),
  );
  await page.goto(hostUrl);
  const inside = (id) => page.frameLocator(`#${id} >> iframe`);
  return { page, context, watched, inside };
}

const headline = (frame) => frame.locator("article.answer[aria-busy=false] .headline");
const heard = (page, id, type) => page.locator(`#told li[data-from=${id}][data-type=${type}]`);

test("two on one page under a strict policy: each its own session, as high as what it holds, no strange request", async () => {
  const { page, context, watched, inside } = await openHost();
  assert.match(await headline(inside("by-link")).innerText(), /not hit in turn/);
  assert.match(await headline(inside("by-file")).innerText(), /carries farther.*4\u00a0yd/);
  for (const id of ["by-link", "by-file"]) {
    await page.waitForFunction(
      (id) => Number(document.querySelector(`#${id}`).shadowRoot.querySelector("iframe").height) > 900,
      id,
    );
    const frame = await (await page.locator(`#${id} >> iframe`).elementHandle()).contentFrame();
    await page.locator(`#${id}`).evaluate((element) => element.scrollIntoView());
    // Fails by its time limit when the frame would have to scroll inside.
    await frame.waitForFunction(() => document.documentElement.scrollHeight <= innerHeight + 1);
  }
  assert.equal(await inside("by-link").locator("#share").isVisible(), false, "only the parts asked for");
  assert.equal(await inside("by-file").locator("#share").isVisible(), true);
  const ground = (id) =>
    inside(id)
      .locator("body")
      .evaluate((body) => getComputedStyle(body).backgroundColor);
  assert.notEqual(await ground("by-link"), await ground("by-file"), "one light, one dark");
  assert.equal(await page.evaluate(() => document.activeElement.tagName), "BODY", "the keyboard stays with the host");
  const origins = new Set(watched.requests.filter((url) => url.startsWith("http")).map((url) => new URL(url).origin));
  assert.deepEqual([...origins].sort(), [site, new URL(hostUrl).origin].sort());
  assert.deepEqual(watched.errors, []);
  await context.close();
});

test("the answer goes to the host only once the visitor agrees, and only from that frame", async () => {
  const { page, context, inside } = await openHost();
  const said = await headline(inside("by-file")).innerText();
  await headline(inside("by-link")).waitFor();
  const agree = inside("by-file").getByRole("checkbox", { name: /see the answer/ });
  assert.equal(await agree.isChecked(), false);
  assert.match(await inside("by-file").locator(".consent").innerText(), new RegExp(new URL(hostUrl).host));
  assert.equal(await page.locator("#told li[data-type=answer]").count(), 0);
  await agree.check();
  await heard(page, "by-file", "answer").first().waitFor();
  assert.ok((await heard(page, "by-file", "answer").first().innerText()).includes('"kind":"different"'));
  assert.equal(await heard(page, "by-link", "answer").count(), 0);
  await openFact(inside("by-file"), "compared");
  // Another question, another event; agreement taken back, none.
  await inside("by-file").getByLabel("What to compare").selectOption("spin_rate");
  await page.waitForFunction(
    () => document.querySelectorAll("#told li[data-from=by-file][data-type=answer]").length === 2,
  );
  await agree.uncheck();
  await inside("by-file").getByLabel("What to compare").selectOption("carry");
  await page.waitForFunction(() => true);
  assert.equal(await headline(inside("by-file")).innerText(), said.replace("4\u00a0yd", "5\u00a0yd"));
  assert.equal(await heard(page, "by-file", "answer").count(), 2);
  await context.close();
});

test("a host cannot read the frame, and messages from elsewhere or of another shape change nothing", async () => {
  const { page, context, inside, watched } = await openHost();
  await headline(inside("by-file")).waitFor();
  const before = await headline(inside("by-link")).innerText();
  const reading = await page.evaluate(() => {
    const frame = document.querySelector("#by-link").shadowRoot.querySelector("iframe");
    try {
      return String(frame.contentWindow.document.body.innerText);
    } catch (error) {
      return frame.contentDocument === null ? error.name : "document is there";
    }
  });
  assert.equal(reading, "SecurityError");

  const fake = { decision: { kind: "same" }, estimate: null, words: {}, asked: {} };
  await page.evaluate((fake) => {
    // To the host from itself, as if a frame had spoken.
    for (const message of [
      { straight_answer: 1, type: "answer", answer: fake },
      { straight_answer: 1, type: "resize", height: 9e9 },
    ])
      postMessage(message, "*");
    // To the frame in shapes that it does not know.
    const frame = document.querySelector("#by-link").shadowRoot.querySelector("iframe").contentWindow;
    for (const message of [
      null,
      7,
      "open",
      { type: "open", text: "a,b" },
      { straight_answer: 1, type: "open", text: 7, name: "x" },
      { straight_answer: 2, type: "open", text: "Club,Carry\nA,1", name: "x" },
      { straight_answer: 1, type: "__proto__" },
    ])
      frame.postMessage(message, "*");
  }, fake);
  // To a frame from a window that is not its host, and to the host with answers and heights of the wrong shape.
  const frameOf = async (id) => (await page.locator(`#${id} >> iframe`).elementHandle()).contentFrame();
  await (await frameOf("by-link")).evaluate(() => {
    for (const message of [
      { straight_answer: 1, type: "hello" },
      { straight_answer: 1, type: "open", text: "Club,Carry\nA,1\nB,2", name: "hostile" },
    ])
      postMessage(message, "*");
  });
  const other = await frameOf("by-file");
  await other.evaluate(() => {
    for (const message of [
      { straight_answer: 1, type: "answer", answer: "yes" },
      { straight_answer: 1, type: "resize", height: "9" },
      { straight_answer: 1, type: "resize", height: 1e9 },
    ])
      parent.postMessage(message, "*");
  });
  // The frames stand in shadow trees: one cannot even find the other.
  assert.equal(await other.evaluate(() => parent.frames.length), 0);
  // What is sent after them and known to arrive shows that they have arrived.
  await page.evaluate(() => document.querySelector("#by-file").open("Club,Carry\nA,200\nB,210", "more"));
  await inside("by-file").getByText("too few shots").first().waitFor();
  assert.equal(await headline(inside("by-link")).innerText(), before);
  assert.equal(await page.locator("#told li[data-type=answer]").count(), 0);
  const height = await page.evaluate(() =>
    Number(document.querySelector("#by-file").shadowRoot.querySelector("iframe").height),
  );
  assert.ok(height < 100_000, String(height));
  assert.deepEqual(watched.errors, []);
  await context.close();
});

test("without script the plain link stands in its place; inside, everything is reachable and named", async () => {
  const { page, context } = await openHost({ javaScriptEnabled: false });
  assert.equal(await page.getByRole("link", { name: "Check your own shots" }).isVisible(), true);
  await context.close();
  const opened = await openHost();
  await headline(opened.inside("by-file")).waitFor();
  assert.match(await opened.page.locator("#by-file >> iframe").getAttribute("title"), /Straight Answer/);
  const direct = await opened.context.newPage();
  await direct.goto(
    `${siteUrl}embed.html?scheme=dark&accent=%23222222#${new URL(await opened.page.locator("#by-link a").getAttribute("href")).hash.slice(1)}`,
  );
  await direct.locator("article.answer[aria-busy=false]").waitFor();
  assert.deepEqual(
    (await faults(direct)).filter((fault) => !/^(page-has-heading-one|landmark)/.test(fault)),
    [],
  );
  await opened.context.close();
});

/** The blocks of the README's chapter on other people's sites, with this site in the place of the copy. */
async function readme() {
  const text = await readFile(new URL("../../README.md", import.meta.url), "utf8");
  const chapter = text.split("## In your own site")[1].split("\n## ")[0];
  const blocks = [...chapter.matchAll(/```\w*\n([\s\S]*?)```/g)].map(([, block]) => block);
  const [page, listen, policy] = blocks;
  return {
    page: page.replaceAll("https://YOUR-COPY-OF-THE-SITE/", siteUrl),
    listen,
    policy: policy.replaceAll("https://YOUR-COPY-OF-THE-SITE", site).trim(),
  };
}

/** A page of another origin, and what it says in its console. */
async function openMade(made, headers = {}) {
  const server = await serve({ made, headers, host: "127.0.0.1" });
  const context = await (await browser()).newContext({ viewport: { width: 900, height: 900 } });
  const page = await context.newPage();
  const said = [];
  page.on("console", (message) => /favicon/.test(message.location().url) || said.push(message.text()));
  await page.goto(`${server.origin}/`);
  const close = async () => {
    await context.close();
    await server.close();
  };
  return { page, said, close };
}

test("the README's example runs under the policy that the README states, and hears the answer", async () => {
  const { page: example, listen, policy } = await readme();
  const made = {
    "/": `<!doctype html><title>Invented</title>${example}`,
    "/listen.js": listen,
    "/shots.csv": await demo("fair-12-yards"),
  };
  const { page, said, close } = await openMade(made, { "content-security-policy": `default-src 'none'; ${policy}` });
  const frame = page.frameLocator("straight-answer >> iframe");
  await headline(frame).waitFor();
  await frame.getByRole("checkbox", { name: /see the answer/ }).check();
  for (const patience = Date.now() + 5000; said.length === 0 && Date.now() < patience; ) await page.waitForTimeout(50);
  assert.deepEqual(said, ["different"], "the answer, no complaint and no unknown feature");
  await close();
});

test("what cannot be shots is told as an error: too large, a web page in its place, no file at all", async () => {
  const files = {
    large: { path: "./large.csv", error: /10000000 characters/ },
    page: { path: "./gone.html", error: /a web page came/ },
    disguised: { path: "./gone.csv", error: /a web page came/ },
    data: { path: "data:text/csv,Club%2CCarry", error: /own origin/ },
    broken: { path: "https://[", error: /URL/ },
    missing: { path: "./missing.csv", error: /404/ },
  };
  const elements = Object.entries(files).map(
    ([id, { path }]) => `<straight-answer id="${id}" csv="${path}"></straight-answer>`,
  );
  const gone = "<!doctype html><title>Gone</title>";
  const made = {
    "/": `<!doctype html><title>Invented</title><script src="${siteUrl}embed.js"></script>${elements.join("")}<ol id="told"></ol><script src="/host.js" defer></script>`,
    "/host.js": await readFile(new URL("../../demo/host/host.js", import.meta.url), "utf8"),
    "/large.csv": `Club,Carry\n${"A,231\n".repeat(1_700_000)}`,
    "/gone.html": gone,
    "/gone.csv": gone,
  };
  const { page, close } = await openMade(made);
  for (const [id, { error }] of Object.entries(files)) {
    const told = heard(page, id, "error");
    await told.first().waitFor();
    assert.match(await told.first().innerText(), error, id);
  }
  await close();
});

test("what is written of the element names every language that the frame speaks", async () => {
  const about = JSON.parse(await readFile(new URL("../../web/public/custom-elements.json", import.meta.url), "utf8"));
  const lang = about.modules[0].declarations[0].attributes.find(({ name }) => name === "lang");
  const spoken = await readdir(new URL("../../web/src/text/", import.meta.url), { withFileTypes: true });
  const languages = spoken.filter((one) => one.isDirectory() && one.name.length === 2).map(({ name }) => name);
  assert.deepEqual(lang.type.text.match(/[a-z]{2}/g).sort(), languages.sort());
});

test("the snippet that the page offers shows the same answer on another page", async () => {
  const context = await (await browser()).newContext({ permissions: ["clipboard-read", "clipboard-write"] });
  const owner = await context.newPage();
  await owner.goto(`${siteUrl}#example=twelve`);
  const said = await headline(owner).innerText();
  await owner.locator("#share > details > summary").click();
  await owner.getByText("Embed this session").click();
  assert.match(
    await owner.locator(".share-sends").innerText(),
    /shots stand in the snippet[\s\S]*ticks a box[\s\S]*No cookies/,
  );
  assert.deepEqual(await faults(owner), []);
  await owner.getByRole("button", { name: "Copy the snippet" }).click();
  await owner.getByText("Snippet copied.").waitFor();
  const snippet = await owner.evaluate(() => navigator.clipboard.readText());
  await context.close();
  const policy = `default-src 'none'; script-src ${site}; frame-src ${site}`;
  const made = { "/": `<!doctype html><title>Invented</title>${snippet}` };
  const { page, said: complaints, close } = await openMade(made, { "content-security-policy": policy });
  assert.equal(await headline(page.frameLocator("straight-answer >> iframe")).innerText(), said);
  assert.deepEqual(complaints, []);
  await close();
});
