// Screens of the built site, phone and desk, light and dark, into `demo/screens/`: to be looked at. Run by `cargo xtask pictures`.

import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { openPlanner, start } from "./fair-steps.mjs";
import { open, phone } from "./harness.mjs";
import { demo, paste } from "./steps.mjs";

const FOLDER = new URL("../../demo/screens/", import.meta.url);
const SCREENS = { phone, desk: { width: 1280, height: 900 } };
/** All of them together: a folder that is cloned with the tree stays light. */
const MOST_BYTES = 1_500_000;

const link = async () =>
  `#${JSON.parse(await readFile(new URL("../links/in-turn-yards.json", import.meta.url), "utf8")).link}`;
const stands = (page) => page.locator("article.answer[aria-busy=false] .headline").waitFor();

/** What is photographed: where it opens, and what is done until it stands. */
const JOURNEYS = {
  start: ["", (page) => page.locator("#start .way").first().waitFor()],
  answer: [
    "",
    async (page) => {
      await paste(page, await demo("fair-12-yards"));
      await stands(page);
    },
  ],
  link: [await link(), stands],
  planner: [
    "",
    async (page) => {
      await openPlanner(page);
      await page.locator("#fair").evaluate((part) => part.scrollIntoView({ block: "start", behavior: "instant" }));
    },
  ],
  logging: [
    "",
    async (page) => {
      await openPlanner(page);
      await start(page);
    },
  ],
};

const pictures = new Map();
for (const [name, [address, act]] of Object.entries(JOURNEYS))
  for (const [screen, viewport] of Object.entries(SCREENS))
    for (const colorScheme of ["light", "dark"]) {
      const { page, context } = await open(address, { viewport, colorScheme, reducedMotion: "reduce" });
      await act(page);
      // What comes a moment later moves nothing any more.
      await page.waitForLoadState("networkidle");
      await page.evaluate(() => document.activeElement?.blur());
      const picture = await page.screenshot({ type: "jpeg", quality: 62, animations: "disabled" });
      pictures.set(`${name}-${screen}-${colorScheme}.jpg`, picture);
      await context.close();
    }
const bytes = [...pictures.values()].reduce((sum, { length }) => sum + length, 0);
if (bytes > MOST_BYTES) throw new Error(`${bytes} bytes of pictures: more than ${MOST_BYTES}`);
// The old ones go once all of the new ones are there.
await rm(FOLDER, { recursive: true, force: true });
await mkdir(FOLDER, { recursive: true });
for (const [name, picture] of pictures) await writeFile(new URL(name, FOLDER), picture);
console.log(`${pictures.size} pictures, ${Math.round(bytes / 1000)} kB`);
process.exit(0);
