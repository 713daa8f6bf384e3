// How fast the built site is on a slow phone, and what Lighthouse says of it; run by `cargo xtask lighthouse`.
//
// Lighthouse's mobile preset, its own throttling: categories by its simulation; the first answer, that of a link, an answer without a
// network and the next paint after a tap timed on the page itself with the network and the processor really held back,
// workers too, because the answer is computed in one.
// Arguments: the folder whose node_modules hold the packages. SITE_URL is the site, CHROMIUM_PATH the browser.
// Prints a JSON object.

import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { dice } from "../../crates/boundary/plain-sessions.mjs";
import { serveSite } from "../browser/site.mjs";

const RUNS = 3;
/** The same session on every visit. */
const SESSION = "#example=fair";
/** One that somebody sent: clubs hit in turn, in yards. */
const LINK = `#${JSON.parse(readFileSync(new URL("../links/in-turn-yards.json", import.meta.url), "utf8")).link}`;
const packages = process.argv[2];
const from = createRequire(join(packages, "package.json"));
const load = (name) => import(pathToFileURL(from.resolve(name)).href);
const [{ default: lighthouse, defaultConfig }, { default: puppeteer }] = [
  await load("lighthouse"),
  await load("puppeteer-core"),
];
const constants = await import(pathToFileURL(join(packages, "node_modules/lighthouse/core/config/constants.js")).href);
const slow = constants.throttling.mobileSlow4G;
const phone = { width: 412, height: 823, deviceScaleFactor: 1.75, isMobile: true, hasTouch: true };
assert.ok(defaultConfig.settings.formFactor === "mobile", "Lighthouse's own preset is the mobile one");

const site = process.env.SITE_URL;
const launch = () =>
  puppeteer.launch({
    executablePath: process.env.CHROMIUM_PATH,
    headless: true,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
    ],
  });
const median = (times) => times.sort((a, b) => a - b)[times.length >> 1];
const times = async (run) => {
  const found = [];
  for (let i = 0; i < RUNS; i += 1) found.push(await run());
  return Math.round(median(found));
};

/** Every visit in a browser of its own: nothing is kept from the one before. */
async function visiting(act) {
  const browser = await launch();
  try {
    return await act(browser);
  } finally {
    await browser.close();
  }
}

/** Lighthouse's reports of what is opened. */
async function reports(opened, times) {
  const runs = [];
  for (let i = 0; i < times; i += 1) {
    await visiting(async (browser) => {
      const page = await browser.newPage();
      const { lhr } = await lighthouse(
        site + opened,
        { onlyCategories: ["performance", "accessibility", "best-practices"], logLevel: "error" },
        undefined,
        page,
      );
      assert.ok(!lhr.runtimeError, lhr.runtimeError?.message);
      runs.push(lhr);
    });
  }
  return runs;
}

const scoreOf = (runs, id) => Math.round(100 * median(runs.map((run) => run.categories[id].score)));

async function categories() {
  const runs = await reports(SESSION, RUNS);
  // The start and an opened link: whatever is worst of the three stands for what hangs on no clock.
  const [start, link] = [await reports("", 1), await reports(LINK, 1)];
  const score = (id) => scoreOf(runs, id);
  const worst = (id) => Math.min(...[runs, start, link].map((some) => scoreOf(some, id)));
  const audit = (id) => Math.round(median(runs.map((run) => run.audits[id].numericValue)));
  const faults = (id) =>
    [...runs.slice(0, 1), ...start, ...link].flatMap(({ categories, audits }) =>
      categories[id].auditRefs.filter((ref) => ref.weight > 0 && audits[ref.id].score === 0).map((ref) => ref.id),
    );
  return {
    lighthouse: runs[0].lighthouseVersion,
    // Lighthouse's own measure of the machine: below 1000 it was slow or busy, and so are the figures.
    benchmark_index: median(runs.map((run) => run.environment.benchmarkIndex)),
    performance: score("performance"),
    performance_start: scoreOf(start, "performance"),
    performance_link: scoreOf(link, "performance"),
    accessibility: worst("accessibility"),
    best_practices: worst("best-practices"),
    faults: ["accessibility", "best-practices"].flatMap(faults),
    first_contentful_paint_ms: audit("first-contentful-paint"),
    largest_contentful_paint_ms: audit("largest-contentful-paint"),
    total_blocking_ms: audit("total-blocking-time"),
    layout_shift: Number(median(runs.map((run) => run.audits["cumulative-layout-shift"].numericValue)).toFixed(3)),
  };
}

/** A page whose own clock says when the answer's words were painted: `answered`, milliseconds from its opening. */
async function answering(browser) {
  const page = await browser.newPage();
  await page.setViewport(phone);
  await page.evaluateOnNewDocument(() => {
    const look = () => {
      if (document.querySelector("article.answer[aria-busy=false] .headline")?.textContent.trim()) {
        // The frame that shows them has been drawn when the task after it runs.
        requestAnimationFrame(() => setTimeout(() => (globalThis.answered = performance.now())));
        return;
      }
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  return page;
}

/** Holds back the page and its workers. */
async function slowDown(page, { network }) {
  const hold = async (client) => {
    await client.send("Emulation.setCPUThrottlingRate", { rate: slow.cpuSlowdownMultiplier }).catch(() => undefined);
    if (!network) return;
    await client.send("Network.enable");
    await client.send("Network.emulateNetworkConditions", {
      offline: false,
      latency: slow.requestLatencyMs,
      downloadThroughput: (slow.downloadThroughputKbps * 1024) / 8,
      uploadThroughput: (slow.uploadThroughputKbps * 1024) / 8,
    });
  };
  page.on("workercreated", (worker) => void hold(worker.client).catch(() => undefined));
  await hold(await page.createCDPSession());
}

const answered = async (page) =>
  (await page.waitForFunction(() => globalThis.answered, { timeout: 30_000 })).jsonValue();

const cold = (opened) =>
  visiting(async (browser) => {
    const page = await answering(browser);
    await slowDown(page, { network: true });
    await page.goto(site + opened, { waitUntil: "domcontentloaded" });
    return answered(page);
  });

/**
 * What the first answer holds and what its drawing cost, on the slow phone: elements of the document, and the page's own
 * thread's time for layout, style and script until the answer was painted.
 */
const firstAnswer = () =>
  visiting(async (browser) => {
    const page = await answering(browser);
    await slowDown(page, { network: true });
    await page.evaluateOnNewDocument(() => {
      const count = () => {
        if (globalThis.answered) globalThis.elements = document.querySelectorAll("*").length;
        else requestAnimationFrame(count);
      };
      requestAnimationFrame(count);
    });
    await page.goto(site + SESSION, { waitUntil: "domcontentloaded" });
    await answered(page);
    const spent = await page.metrics();
    const ms = (seconds) => Math.round(1000 * seconds);
    return {
      first_answer_elements: await (await page.waitForFunction(() => globalThis.elements)).jsonValue(),
      layout_ms: ms(spent.LayoutDuration),
      style_ms: ms(spent.RecalcStyleDuration),
      script_ms: ms(spent.ScriptDuration),
    };
  });

/** The middle of each figure of several visits. */
async function middles(visit) {
  const found = [];
  for (let i = 0; i < RUNS; i += 1) found.push(await visit());
  return Object.fromEntries(Object.keys(found[0]).map((name) => [name, median(found.map((one) => one[name]))]));
}

/** The second visit, with nobody at the address any more. */
const offline = (isSlow) =>
  visiting(async (browser) => {
    const { address, close } = await serveSite();
    const first = await answering(browser);
    await first.goto(address + SESSION);
    await answered(first);
    await first.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await first.close();
    await close();
    const page = await answering(browser);
    if (isSlow) await slowDown(page, { network: false });
    await page.goto(address + SESSION);
    return answered(page);
  });

/** What a golfer taps first, and the slowest next paint after one of these. */
const TAPS = [
  "#fact-margin > summary",
  "[aria-label='1 yd more']",
  "[aria-label='1 yd less']",
  "#fact-compared > summary",
  "input[name=goal][value=different]",
  "#fact-stopping > summary",
  "input[name=stopping][value=unknown]",
  "summary:has(#luck-title)",
  "summary:has(#landing-title)",
  "summary:has(#cause-title)",
];

const nextPaint = () =>
  visiting(async (browser) => {
    const page = await answering(browser);
    await slowDown(page, { network: false });
    await page.goto(site + SESSION);
    await answered(page);
    await page.evaluate(() => {
      globalThis.paints = [];
      const note = (list) => {
        for (const entry of list.getEntries()) if (entry.interactionId) globalThis.paints.push(entry.duration);
      };
      new PerformanceObserver(note).observe({ type: "event", durationThreshold: 16 });
    });
    for (const tap of TAPS) {
      await page.locator(tap).click();
      await new Promise((done) => setTimeout(done, 700));
    }
    const paints = await page.evaluate(() => globalThis.paints);
    // The browser reports none below 16 ms.
    return Math.max(16, ...paints);
  });

/** Ten thousand invented shots of two clubs in turn. */
function manyShots() {
  const even = dice(7);
  const about = (center, reach) => (center + reach * (even() + even() - 1)).toFixed(1);
  const shots = Array.from({ length: 10_000 }, (_, at) => {
    const club = Math.floor(at / 3) % 2;
    return [club ? "New" : "Own", about(240 + 3 * club, 28), about(0, 40), about(150, 8), about(2600, 800)];
  });
  return [["Club", "Carry (yd)", "Offline (yd)", "Ball speed (mph)", "Spin rate (rpm)"], ...shots].join("\n");
}

/** The longest task of the page's own thread from a large file's choosing until a while after its answer. */
const frozen = () =>
  visiting(async (browser) => {
    const file = join(mkdtempSync(join(tmpdir(), "shots-")), "ten-thousand.csv");
    writeFileSync(file, manyShots());
    const page = await answering(browser);
    await page.goto(`${site}#shots`);
    const input = await page.waitForSelector("input[type=file]");
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.evaluate(() => {
      globalThis.tasks = [];
      const note = (list) => globalThis.tasks.push(...list.getEntries().map((entry) => entry.duration));
      new PerformanceObserver(note).observe({ type: "longtask" });
    });
    await input.uploadFile(file);
    await answered(page);
    await new Promise((done) => setTimeout(done, 3000));
    // The browser reports none below 50 ms.
    return Math.max(50, ...(await page.evaluate(() => globalThis.tasks)));
  });

process.stdout.write(
  JSON.stringify({
    ...(await categories()),
    ...(await middles(firstAnswer)),
    cold_first_answer_ms: await times(() => cold(SESSION)),
    cold_link_ms: await times(() => cold(LINK)),
    offline_answer_slow_ms: await times(() => offline(true)),
    offline_answer_ms: await times(() => offline(false)),
    next_paint_ms: await times(nextPaint),
    frozen_ms: await times(frozen),
    runs: RUNS,
    taps: TAPS.length,
    slow_phone: slow,
    browser: await visiting((browser) => browser.version()),
  }),
);
