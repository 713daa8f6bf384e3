// The checker inside a page of another origin, in every browser: the answer goes to the host only once the visitor agrees.

import assert from "node:assert/strict";
import { after, before } from "node:test";
import { serveHost } from "../browser/host.mjs";
import { answer } from "../browser/steps.mjs";
import { everywhere } from "./drivers.mjs";

let host;
before(async () => {
  host = await serveHost();
});
after(() => host?.close());

/** Does something inside the frame of one checker. */
async function inside(page, id, act) {
  const frame = await page.wait(`the frame of ${id}`, () =>
    page.evaluate((id) => document.querySelector(`#${id}`)?.shadowRoot?.querySelector("iframe"), id),
  );
  await page.driver.switchTo().frame(frame);
  try {
    return await act();
  } finally {
    await page.driver.switchTo().defaultContent();
  }
}

everywhere("under a strict policy the answer goes to the host only after consent", async (page) => {
  await page.size(900, 900);
  await page.goto(host.hostUrl);
  const heard = (id) => page.locator(`#told li[data-from=${id}][data-type=answer]`);
  const byLink = await inside(page, "by-link", () => answer(page));
  assert.match(byLink.headline, /not hit in turn/);
  const agree = page.getByRole("checkbox", { name: /see the answer/ });
  await inside(page, "by-file", async () => {
    assert.match((await answer(page)).headline, /carries farther.*4\u00a0yd/);
    assert.equal(await agree.isChecked(), false);
  });
  assert.equal(await heard("by-file").count(), 0);
  const height = await page.evaluate(() =>
    Number(document.querySelector("#by-file").shadowRoot.querySelector("iframe").height),
  );
  assert.ok(height > 900, `as high as what it holds: ${height}`);
  await inside(page, "by-file", async () => {
    // The driver of WebKit 2.50 brings neither a click nor a key into a frame of another origin: there the box is
    // clicked by script, which shows what follows from it, and not that a hand reaches it.
    if (page.browserName === "WebKit") await agree.evaluate((box) => box.click());
    else await agree.click();
    assert.equal(await agree.isChecked(), true);
  });
  await heard("by-file").first().waitFor();
  assert.ok((await heard("by-file").first().innerText()).includes('"kind":"different"'));
  assert.equal(await heard("by-link").count(), 0, "and only from that frame");
  const reading = await page.evaluate(() => {
    try {
      return String(document.querySelector("#by-link").shadowRoot.querySelector("iframe").contentWindow.document);
    } catch (error) {
      return error.name;
    }
  });
  assert.equal(reading, "SecurityError", "the host cannot read the frame");
});
