// Meters and kilometers an hour on a phone: chosen at the top, kept in links, said everywhere, and never another answer.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";
import { hitTo, rounds, savedShots, start, touched } from "./fair-steps.mjs";
import { assertQuiet, open } from "./harness.mjs";
import { answer, demo, goIn, openEverything, openFact, openShots, overflows, paste } from "./steps.mjs";

before(() => {
  core.initSync({
    module: readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url)),
  });
});

/** Two invented clubs in turn, one ahead by `gap` yards. */
function twelveLaps(gap) {
  const carry = (round, ahead) => 240 + ((round * 7) % 11) + ahead + ((round * 5 + (ahead > 0 ? 3 : 0)) % 4);
  const rows = Array.from({ length: 12 }, (_, round) => [
    `Own driver,${round + 1},${carry(round, 0).toFixed(1)}`,
    `Driver B,${round + 1},${carry(round, gap).toFixed(1)}`,
  ]);
  return ["Build,Round,Carry (yd)", ...rows.flat()].join("\n");
}

const QUESTION = { baseline: 0, measure: "carry", stopping: "fixed" };
const decides = (session, margin) => core.check({ session, question: { ...QUESTION, margin } }).answer.decision;

/** Ahead by about as much as matters: 5 yd are answered otherwise than 5 m. */
function betweenTheMargins() {
  const session = Array.from({ length: 60 }, (_, step) => core.read(twelveLaps(3 + step / 10), null).session).find(
    (tried) => decides(tried, 5).matters !== decides(tried, 5 / 0.9144).matters,
  );
  assert.ok(session, "no session is between the two margins");
  return session;
}

const YARDS = /\b(?:yd|yards?|mph|yardas?|Yards|Yardas)\b/;

test("a session goes along into meters and back, and its answer is the same one", async () => {
  const { page, context, watched } = await open();
  await paste(page, await demo("fair-12-yards"));
  const yards = await answer(page);
  await page.getByRole("link", { name: "Meters" }).click();
  await page.waitForURL(/\?units=mixed#/);
  const meters = await answer(page);
  assert.equal(meters.kind, yards.kind);
  assert.match(yards.headline, /starts to matter at 5\syd/);
  // The margin that was asked with goes along: the answer must not turn with the units.
  assert.match(
    meters.headline,
    /^Driver B carries farther\. On average 6 to 17\sm more; it starts to matter at 4\.6\sm\.$/,
  );
  await openFact(page, "margin");
  assert.equal(await page.locator("#margin").inputValue(), "4.6");
  await page.getByRole("link", { name: "Yards" }).click();
  await page.waitForURL((url) => url.search === "");
  assert.equal((await answer(page)).headline, yards.headline);
  assertQuiet(watched);
  await context.close();
});

test("a link without a margin is the same answer in yards and in meters, where the margins offered would part them", async () => {
  const session = betweenTheMargins();
  const link = core.pack({ session, question: QUESTION });
  const seen = [];
  for (const [units, field] of [
    ["imperial", "5"],
    ["metric", "4.6"],
  ]) {
    const { page, context, watched } = await open(`?units=${units}#${link}`);
    const { kind } = await answer(page);
    const { decision, margin } = await page.evaluate(() => {
      const { report, question: asked } = document.querySelector("straight-answer-page").current;
      return { decision: report.answer.decision, margin: asked.margin ?? null };
    });
    assert.equal(margin, null, "nothing was put into the question");
    await openFact(page, "margin");
    assert.equal(await page.locator("#margin").inputValue(), field);
    seen.push({ kind, decision });
    assertQuiet(watched);
    await context.close();
  }
  assert.deepEqual(seen[1], seen[0]);
  assert.deepEqual(seen[0].decision, decides(session, undefined));
});

test("what is pasted without a unit is in meters, and a link of it stays so", async () => {
  const { page, context, watched } = await open("?units=metric");
  await paste(
    page,
    "club,carry,ball speed\nMine,212,231\nMine,208,228\nMine,215,233\nMine,210,229\nNew,226,240\nNew,222,238\nNew,229,243\nNew,224,239\n",
  );
  const { everything } = await answer(page);
  await openShots(page);
  assert.match(await page.locator(".columns-read summary").innerText(), /Carry \(m\), Ball speed \(km\/h\)/);
  assert.match(everything, /Mine 211\sm over 4/);
  assert.match(everything, /5\sm/);
  await openFact(page, "margin");
  await page.locator(".margin button").last().click();
  await page.waitForFunction(() => document.querySelector("#margin").value === "6");
  await page.locator("#share > details > summary").click();
  const link = await page.locator("#share-address").inputValue();
  assert.match(link, /\?units=metric#/);
  assertQuiet(watched);
  await context.close();

  const reader = await open(link.slice(link.indexOf("?")));
  const read = await answer(reader.page);
  assert.match(read.everything, /Mine 211\sm over 4/);
  await openFact(reader.page, "margin");
  assert.equal(await reader.page.locator("#margin").inputValue(), "6");
  assertQuiet(reader.watched);
  await reader.context.close();
});

for (const [address, mine] of [
  ["?units=metric#example=twelve", "Yards"],
  ["?lang=es&units=metric#example=twelve", "Yardas"],
]) {
  test(`an answer with everything behind it opened names no yard: ${address}`, async () => {
    const { page, context, watched } = await open(address);
    await answer(page);
    await page.getByRole("link", { name: mine }).waitFor();
    await openEverything(page);
    // What was read is quoted as it stands: the invented session is in yards.
    await page.evaluate(() => {
      for (const part of document.querySelectorAll("#shots, #other-ways, #share textarea")) part.remove();
    });
    const said = await page.evaluate(() =>
      [
        document.body.innerText,
        ...[...document.querySelectorAll("[aria-label], [aria-valuetext], [placeholder]")].flatMap((one) =>
          ["aria-label", "aria-valuetext", "placeholder"].map((name) => one.getAttribute(name) ?? ""),
        ),
      ].join("\n"),
    );
    assert.ok(said.length > 8000, `${said.length} characters`);
    const lines = said.split("\n").filter((line) => YARDS.test(line));
    assert.deepEqual(lines, []);
    assert.match(said, /\d\sm\b/);
    assert.match(said, /km\/h/);
    assert.equal(await overflows(page), false);
    assertQuiet(watched);
    await context.close();
  });
}

test("shots are logged in meters and kept in yards", async () => {
  const { page, context, watched } = await open("?units=metric", touched);
  await goIn(page, "fair");
  await page.locator(".fair-power").waitFor();
  await rounds(page, 2);
  assert.equal(await page.locator("#fair-margin").inputValue(), "5");
  await start(page);
  await hitTo(page, 1, 25);
  await page.locator(".log-more button").first().click();
  await page.waitForFunction(() => /240 m/.test(document.querySelector(".log-value").textContent.replace(/\s/g, " ")));
  await page.getByRole("button", { name: "Keep this shot" }).click();
  await hitTo(page, 12, 25);
  const lines = await savedShots(page, () => page.locator(".log-more button").last().click());
  assert.equal(lines.length, 12);
  assert.ok(lines[0].includes("262.46"), lines[0]);
  await page.getByRole("button", { name: "Look at the answer" }).click();
  await page.getByRole("button", { name: "Now show the answer" }).click();
  const { headline } = await answer(page);
  assert.match(headline, /New driver carries farther\..* \d+\sm more; it starts to matter at 5\sm/);
  assertQuiet(watched);
  await context.close();
});

test("where meters are played with miles an hour the page begins so; a link that was sent opens as it was made", async () => {
  const { page, context, watched } = await open("#example=twelve", {
    locale: "en-AU",
  });
  const { headline } = await answer(page);
  assert.match(headline, /\sm\b/);
  const said = await page.locator("body").innerText();
  assert.match(said, /mph/);
  assert.doesNotMatch(said, /\d\skm\/h/);
  await page.getByRole("link", { name: "km/h" }).waitFor();
  await page.getByRole("link", { name: "Yards" }).click();
  await page.waitForURL(/units=imperial/);
  assert.match((await answer(page)).headline, /\syd\b/);
  assertQuiet(watched);
  await context.close();
  const link = core.pack({ session: betweenTheMargins(), question: { ...QUESTION, margin: 5 } });
  const sent = await open(`#${link}`, { locale: "en-AU" });
  assert.match((await answer(sent.page)).headline, /\syd\b/);
  await sent.context.close();
});
