// The checker inside a page of another origin that allows next to nothing: two of them, the answer only after consent,
// hostile messages passed over, and neither side able to read the other.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { browser, siteUrl } from "./harness.mjs";
import { serveHost, site } from "./host.mjs";
import { faults, openFact } from "./steps.mjs";

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
