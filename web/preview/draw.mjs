// Draws the picture that a link to the site is shown with, the same for every link: `npm run draw-preview`. What a link
// holds stands behind its #, which no server and no preview ever sees.

import { readFileSync, writeFileSync } from "node:fs";
import { chromium } from "playwright-core";

const here = (name) => new URL(name, import.meta.url);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage({ viewport: { width: 1200, height: 630 } });
await page.setContent(`<style>body{margin:0}svg{display:block}</style>${readFileSync(here("preview.svg"), "utf8")}`);
writeFileSync(here("../public/preview.png"), await page.screenshot());
await browser.close();
