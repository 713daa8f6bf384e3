// What a coach and a golfer do in the fair test, and what is then kept of it, as journeys name it.

import { readFile } from "node:fs/promises";
import { open } from "./harness.mjs";
import { goIn } from "./steps.mjs";

export const touched = { hasTouch: true, isMobile: true };

/** What is stored of the golfer on this device: names of databases and marks; files kept for offline are no shots. */
export const stored = (page) =>
  page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name),
    marks: Object.keys(localStorage),
    session: Object.keys(sessionStorage),
    cookies: document.cookie,
  }));
export const NOTHING = { databases: [], marks: [], session: [], cookies: "" };

export async function openFair(options = touched, rest = "") {
  const opened = await open(rest, options);
  await openPlanner(opened.page);
  return opened;
}

export async function openPlanner(page) {
  await goIn(page, "fair");
  await page.locator(".fair-power").waitFor();
}

/** Opens what can be changed of the plan. */
export const change = (page) =>
  page.evaluate(() => {
    document.querySelector(".fair-plan").open = true;
  });

/** Sets the number of rounds by the buttons, as a thumb would. */
export async function rounds(page, wanted) {
  await change(page);
  for (;;) {
    const now = Number(await page.locator("#fair-rounds").innerText());
    if (now === wanted) return;
    await page.getByRole("button", { name: now > wanted ? "One lap less" : "One lap more" }).click();
    await page.waitForFunction((before) => document.querySelector("#fair-rounds").textContent !== String(before), now);
  }
}

export async function start(page) {
  await page.getByRole("button", { name: "Start the test on this phone" }).click();
  await page.getByRole("button", { name: "I’m warmed up" }).click();
  await page.locator(".log-keys").waitFor();
}

/** Types a number on the big keys and keeps the shot, if it did not keep itself; waits until it is on the device. */
export async function hit(page, carry, keptText = "Kept on this device") {
  const before = await shots(page);
  for (const digit of String(carry))
    await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
  if ((await shots(page)) === before) await page.getByRole("button", { name: "Keep this shot" }).click();
  await page.waitForFunction((n) => Number(document.querySelector("[data-shots]")?.dataset.shots) === n, before + 1);
  await page.waitForFunction(
    ([text, n]) => {
      const note = document.querySelector(".log-kept")?.textContent ?? "";
      return note.includes(text) && note.includes(`: ${n} of`);
    },
    [keptText, before + 1],
  );
}

export const shots = async (page) => Number(await page.locator("[data-shots]").getAttribute("data-shots"));
export const whose = (page) => page.locator(".log-who").innerText();

/** Hits until so many shots are in; the new club carries farther by `gap`. */
export async function hitTo(page, wanted, gap) {
  for (let n = await shots(page); n < wanted; n += 1) {
    const isNew = (await whose(page)).includes("New driver");
    await hit(page, 240 + (isNew ? gap : 0) + ((n * 5) % 7));
  }
}

/** The lines of shots in the file that a click saves. */
export async function savedShots(page, click) {
  const [download] = await Promise.all([page.waitForEvent("download"), click()]);
  const csv = await readFile(await download.path(), "utf8");
  return csv.split("\n").filter((line) => line.startsWith("shot,"));
}
