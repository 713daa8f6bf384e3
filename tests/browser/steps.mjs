// What a visitor does on the page, and what a visitor then sees, as journeys name it.

import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const { source: axe } = fromWeb("axe-core");

/** An invented session of `demo/`. */
export const demo = (name) => readFile(new URL(`../../demo/${name}.csv`, import.meta.url), "utf8");

/** Goes in by one of the start's ways, or by the row below an answer: to the shots, the claim, the fair test. */
export async function goIn(page, place) {
  const placeNow = () => page.evaluate(() => document.documentElement.dataset.place);
  await page.waitForFunction(
    (wanted) =>
      [...document.querySelectorAll(`.way, .back a, #${wanted} > details, #text`)].some((one) => one.checkVisibility()),
    place,
  );
  if (!["", "start", place].includes(await placeNow())) await page.locator(".back a").click();
  if ((await placeNow()) === "start") await page.locator(`#start a[href="#${place}"]`).click();
  else if (place !== "shots" && !(await page.evaluate((id) => document.querySelector(`#${id} > details`).open, place)))
    await page.locator(`#${place} > details > summary`).click();
  await page.locator(place === "shots" ? "#text" : `#${place} > details > :not(summary)`).waitFor();
}

/** Pastes text into the page as a keyboard or a long press would: by a real paste event. */
export async function paste(page, text) {
  await goIn(page, "shots");
  await page.evaluate((pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", pasted);
    const field = document.querySelector("#text");
    field.focus();
    field.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);
}

/** Types text and asks for it to be read. */
export async function type(page, text) {
  await goIn(page, "shots");
  await page.locator("#text").fill(text);
  await page.getByRole("button", { name: "Read these shots" }).click();
}

/** The answer once it stands: its words, those that are folded too, and the kind of decision they put. */
export async function answer(page) {
  const article = page.locator("article.answer[aria-busy=false]");
  await article.waitFor();
  await page.evaluate(() => {
    for (const row of document.querySelectorAll("#answer details")) row.open = true;
  });
  return {
    headline: await article.locator(".headline").innerText(),
    everything: await page.evaluate(everything),
    kind: (await article.getAttribute("class")).split(" ").at(-1),
  };
}

/** The answer and the measures below it, as the page shows them; the bet comes a moment later, and is none of it. */
const everything = () => {
  const shown = [...document.querySelectorAll("#answer, .measures")].map((one) => one.innerText).join("\n");
  const rest = shown.replace(document.querySelector(".bet-line")?.innerText ?? "", "");
  return rest.replace(/\n+/g, "\n").trim();
};

/** The answer after `act` changed it. */
export async function answerAfter(page, act) {
  const before = (await answer(page)).everything;
  await act();
  for (const patience = Date.now() + 30_000; Date.now() < patience; await page.waitForTimeout(30)) {
    const now = await answer(page);
    if (now.everything !== before) return now;
  }
  throw new Error(`the answer stayed: ${before}`);
}

/** Opens the row of what was read. */
export const openShots = (page) => open(page, "#shots > details");

/** Opens one of the facts that are the settings: compared, margin, order, stopping or whose. */
export const openFact = (page, which) => open(page, `#fact-${which}`);

async function open(page, row) {
  const details = page.locator(row);
  if (!(await details.evaluate(({ open }) => open))) await details.locator(":scope > summary").click();
  await details.locator(":scope > :not(summary)").first().waitFor();
}

/** Opens every row that opens, those inside it too, and waits until nothing is loading or being worked out. */
export async function openEverything(page) {
  for (let round = 0; round < 4; round++) {
    await page.evaluate(() => {
      for (const row of document.querySelectorAll("details")) row.open = true;
    });
    await page.waitForFunction(
      () =>
        !document.querySelector("[aria-busy=true]") &&
        !/(?:Loading|Opening|Cargando|Abriendo)…/.test(document.body.innerText),
    );
    await page.waitForTimeout(200);
  }
}

/** What axe finds wrong with the page as it stands, each with the place. */
export async function faults(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() =>
    globalThis.axe.run(document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    }),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(" | ")}`);
}

/** Whether the page is wider than the screen. */
export const overflows = (page) =>
  page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
