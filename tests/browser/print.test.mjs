// The sheet that is taken home: one page of A4 or Letter from any screen, with the answer, every shot and a code that
// reads back, and nothing drawn over anything else.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { test } from "node:test";
import { assertQuiet, open, phone } from "./harness.mjs";
import { answer } from "./steps.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const desktop = { width: 1280, height: 900 };
const PAPERS = { A4: [8.27, 11.69], Letter: [8.5, 11] };

/** The pages of what a print would be, as texts. */
async function printed(page, context, [paperWidth, paperHeight]) {
  const client = await context.newCDPSession(page);
  const { data } = await client.send("Page.printToPDF", { paperWidth, paperHeight });
  const { getDocument } = await import(fromWeb.resolve("pdfjs-dist/legacy/build/pdf.mjs"));
  const pdf = await getDocument({ data: new Uint8Array(Buffer.from(data, "base64")), verbosity: 0 }).promise;
  const texts = [];
  for (let at = 1; at <= pdf.numPages; at += 1) {
    const { items } = await (await pdf.getPage(at)).getTextContent();
    texts.push(
      items
        .map(({ str }) => str)
        .join(" ")
        .replace(/\s+/g, " "),
    );
  }
  return texts;
}

/** Opens the room of what is kept, where the code is drawn. */
async function coded(page) {
  await page.locator("#share summary").first().click();
  await page.locator(".sheet-code svg").waitFor({ state: "attached" });
}

for (const [example, screen, language] of [
  ["fair", phone, "en"],
  ["floor", desktop, "en"],
  ["floor", { width: 360, height: 640 }, "es"],
  ["twelve", phone, "es"],
]) {
  test(`${example} in ${language} from ${screen.width} px is one sheet with answer, shots and next step`, async () => {
    const { page, context, watched } = await open(`${language === "es" ? "?lang=es" : ""}#example=${example}`, {
      viewport: screen,
    });
    const { headline } = await answer(page);
    await coded(page);
    for (const [name, paper] of Object.entries(PAPERS)) {
      const pages = await printed(page, context, paper);
      assert.equal(pages.length, 1, `${name}: ${pages.length} pages`);
      const [text] = pages;
      assert.ok(text.includes(headline.replace(/\s+/g, " ")), text.slice(0, 600));
      assert.match(text, language === "es" ? /Impreso el .* 20\d\d/ : /Printed on .* 20\d\d/);
      const shots = text.slice(text.search(/Every shot, in the order hit|Cada golpe, en el orden/));
      const listed = shots.match(/\b\d{3}\b/g).length;
      assert.ok(listed >= (example === "floor" ? 35 : 60), `${listed} values`);
      assert.match(text, /How the answer is found|Cómo se encuentra/);
      assert.doesNotMatch(text, /Copy the link|Start again|Copiar el enlace|Empezar de nuevo|All ways in/);
    }
    assertQuiet(watched);
    await context.close();
  });
}

test("the code on the sheet reads back as the link", async () => {
  const { page, context } = await open("#example=fair", { viewport: phone, deviceScaleFactor: 3 });
  await answer(page);
  await coded(page);
  const link = await page.locator("#share-address").inputValue();
  await page.emulateMedia({ media: "print" });
  const picture = await page.locator(".sheet-code svg").screenshot();
  const { PNG } = fromWeb("pngjs");
  const { data, width, height } = PNG.sync.read(picture);
  const jsQr = fromWeb("jsqr");
  const found = (jsQr.default ?? jsQr)(new Uint8ClampedArray(data), width, height);
  assert.equal(found?.data, link);
  await context.close();
});

test("on paper no legend or word lies over a mark, and no chart is cut by a page's end", async () => {
  for (const example of ["fair", "floor"]) {
    const { page, context } = await open(`#example=${example}`, { viewport: { width: 730, height: 1000 } });
    await answer(page);
    await page.locator("svg.order .average").first().waitFor({ state: "attached" });
    await page.emulateMedia({ media: "print" });
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    const laid = await page.evaluate(() => {
      const box = (element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        return { left, right, top, bottom };
      };
      return [...document.querySelectorAll("figure.picture")]
        .filter((figure) => figure.getBoundingClientRect().height > 0)
        .map((figure) => ({
          whole: getComputedStyle(figure).breakInside,
          marks: [...figure.querySelectorAll("svg .mark, svg .point, svg .core, svg .average")].map(box),
          words: [...figure.querySelectorAll("ul, figcaption, .sides")].map(box),
        }));
    });
    assert.ok(laid.length >= 2, `${laid.length} pictures`);
    for (const { whole, marks, words } of laid) {
      assert.equal(whole, "avoid");
      assert.ok(marks.length > 0 && words.length > 0);
      for (const word of words)
        for (const mark of marks)
          assert.ok(
            mark.bottom <= word.top + 0.5 || mark.top >= word.bottom - 0.5,
            `${JSON.stringify(word)} over ${JSON.stringify(mark)}`,
          );
    }
    await context.close();
  }
});

test("what is asked for at a fitting is one sheet", async () => {
  const { page, context } = await open("#fitting", { viewport: phone });
  await page.locator(".fitting > ol > li").first().waitFor();
  for (const paper of Object.values(PAPERS)) {
    const pages = await printed(page, context, paper);
    assert.equal(pages.length, 1);
    assert.match(pages[0], /My own club is hit too/);
    assert.doesNotMatch(pages[0], /All ways in/);
  }
  await context.close();
});
