// The README's picture: three screens of the built site on a phone, side by side. Run by `cargo xtask picture`.

import { writeFile } from "node:fs/promises";
import { open, phone } from "./harness.mjs";
import { answer } from "./steps.mjs";

const MARGIN = 24;

/** One screen, from the heading named on. */
async function screen(example, heading, { part, ...options } = {}) {
  const { page, context } = await open(`#example=${example}`, {
    viewport: phone,
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    ...options,
  });
  await answer(page);
  await page.evaluate(() => {
    for (const row of document.querySelectorAll("#answer details")) row.open = false;
  });
  if (part) {
    await page.locator(`${part} summary`).first().click();
    await page.locator(`${part} .said`).waitFor();
  }
  // What is still on its way below the answer moves nothing any more.
  await page.waitForLoadState("networkidle");
  await page
    .locator(heading)
    .evaluate((element) => scrollTo({ top: scrollY + element.getBoundingClientRect().top - 16, behavior: "instant" }));
  await page.evaluate(() => document.activeElement?.blur());
  const png = await page.screenshot({ animations: "disabled" });
  await context.close();
  return `<img src="data:image/png;base64,${png.toString("base64")}" width="${phone.width}" height="${phone.height}">`;
}

const screens = [
  await screen("twelve", "#answer .answer"),
  await screen("floor", "#answer .answer"),
  await screen("twelve", "#landing", { part: "#landing", colorScheme: "dark" }),
];
const width = screens.length * (phone.width + MARGIN) + MARGIN;
const { page, context } = await open("", { viewport: { width, height: phone.height + 2 * MARGIN } });
// The site's own policy forbids what this page is made of.
await page.goto("about:blank");
await page.setContent(`<style>
  body { margin: 0; padding: ${MARGIN}px; display: flex; gap: ${MARGIN}px; }
  img { border-radius: 28px; box-shadow: 0 0 0 1px #82877d; }
</style>${screens.join("")}`);
await writeFile(new URL("../../demo/picture.png", import.meta.url), await page.screenshot({ omitBackground: true }));
await context.close();
process.exit(0);
