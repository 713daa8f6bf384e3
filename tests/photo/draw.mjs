// Photographs invented screens with Chromium, straight on, each with the truth beside it: `node draw.mjs FOLDER COUNT SEED`.
import { mkdirSync, realpathSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { makeSpec, page } from "./screens.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const { chromium } = fromWeb("playwright-core");
const [OUT, count, seed] = process.argv.slice(2);
const [COUNT, SEED] = [Number(count), Number(seed)];
const executablePath = process.env.CHROMIUM_PATH ?? "/usr/bin/chromium";

mkdirSync(OUT, { recursive: true });
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
for (let i = 0; i < COUNT; i++) {
  const s = makeSpec(SEED, i);
  const { html, truth } = page(s);
  const id = `s${String(i).padStart(3, "0")}`;
  const file = join(OUT, `${id}.html`);
  writeFileSync(file, html);
  const ctx = await browser.newContext({ viewport: { width: 1400, height: 900 }, deviceScaleFactor: s.density });
  const pg = await ctx.newPage();
  await pg.goto(`file://${realpathSync(file)}`);
  await pg.evaluate(() => document.fonts.ready);
  const geo = await pg.evaluate(() => {
    const box = (e) => {
      const b = e.getBoundingClientRect();
      return [b.left, b.top, b.right, b.bottom].map((x) => x);
    };
    const out = { main: box(document.getElementById("main")), cells: {}, heads: {} };
    for (const e of document.querySelectorAll(".n")) out.cells[`${e.dataset.r},${e.dataset.c}`] = box(e);
    for (const e of document.querySelectorAll("th[data-h]")) out.heads[e.dataset.h] = box(e);
    return out;
  });
  const pad = 28,
    w = Math.ceil(Math.max(geo.main[2], 300) + pad),
    h = Math.ceil(geo.main[3] + pad);
  await pg.setViewportSize({ width: w, height: h });
  await pg.screenshot({ path: join(OUT, `${id}.png`) });
  await ctx.close();
  for (const c of truth.cells) c.box = geo.cells[`${c.r},${c.c}`].map((x) => x * s.density);
  for (const c of truth.columns) if (geo.heads[c.j]) c.box = geo.heads[c.j].map((x) => x * s.density);
  truth.main = geo.main.map((x) => x * s.density);
  truth.screen = {
    id,
    tiles: s.tiles,
    dark: s.dark,
    font: s.font.family,
    weight: s.weight,
    style: s.style,
    density: s.density,
    fontPx: s.fs * s.density,
  };
  writeFileSync(join(OUT, `${id}.json`), JSON.stringify(truth));
}
await browser.close();
