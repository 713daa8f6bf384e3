// What a book survives: a browser killed at any moment, two tabs, an older version, a cleared store, a damaged record,
// a private window; and how long it takes to open.

import assert from "node:assert/strict";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { hit, hitTo, openFair, rounds, shots, start, touched } from "./fair-steps.mjs";
import { open, ownBrowser, siteUrl } from "./harness.mjs";
import { answer, demo, goIn, paste } from "./steps.mjs";

/** How often the browser is killed; `KILLS=100` for the figure. */
const KILLS = Number(process.env.KILLS ?? 4);

test(`a browser that is killed at any moment, ${KILLS} times: every shot that was said to be kept is there`, async () => {
  const folder = await mkdtemp(join(tmpdir(), "book-"));
  const told = { kept: 0, kills: 0, lost: 0 };
  let running = await ownBrowser(folder);
  try {
    await running.page.goto(siteUrl);
    await goIn(running.page, "fair");
    await running.page.locator(".fair-power").waitFor();
    await rounds(running.page, 10);
    await start(running.page);
    for (let kill = 0; kill < KILLS; kill += 1) {
      const { page } = running;
      if ((await shots(page)) > 40) await takenBackTo(page, 5);
      // As fast as a thumb never is, so that most kills hit a write.
      await page.evaluate(() => {
        const press = (name) => document.querySelector(`.log-key[aria-label="${name}"]`)?.click();
        const hit = () => Number(document.querySelector("[data-shots]").dataset.shots);
        window.kept = () => Number(/: (\d+) of/.exec(document.querySelector(".log-kept")?.textContent ?? "")?.[1] ?? 0);
        setInterval(() => {
          if (hit() < 59) for (const digit of String(230 + (hit() % 30))) press(digit);
        }, 23);
      });
      await page.waitForTimeout(150 + Math.random() * 500);
      const kept = await page.evaluate(() => window.kept());
      await running.kill();
      told.kills += 1;
      running = await ownBrowser(folder);
      await running.page.goto(siteUrl);
      await running.page.locator("[data-shots]").waitFor();
      const after = await shots(running.page);
      if (after < kept) told.lost += 1;
      told.kept = after;
      assert.match(await running.page.locator(".log-place").innerText(), /Set \d+ of/);
    }
    console.log(`# ${told.kills} kills survived, ${told.lost} of them lost a shot; ${told.kept} shots stand`);
    assert.equal(told.lost, 0);
  } finally {
    await running.kill();
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});

/** Takes shots back one by one, each once the last is on the device. */
async function takenBackTo(page, wanted) {
  for (let n = await shots(page); n > wanted; n -= 1) {
    await page.locator(".log-more button").first().click();
    await page.waitForFunction(
      (left) => document.querySelector(".log-kept")?.textContent.includes(`: ${left} of`),
      n - 1,
    );
  }
}

test("two tabs: the other's shots are seen at once, and neither overwrites", async () => {
  const { page, context } = await openFair();
  await rounds(page, 2);
  await start(page);
  await hitTo(page, 1, 25);
  const second = await context.newPage();
  await second.goto(`${siteUrl}#fair`);
  await second.locator(".log-keys").waitFor();
  assert.equal(await shots(second), 1);
  await hit(page, 251);
  await second.waitForFunction(() => document.querySelector("[data-shots]").dataset.shots === "2");
  await second.getByText("Another tab has gone on with this test.").waitFor();
  await hit(second, 252);
  await page.waitForFunction(() => document.querySelector("[data-shots]").dataset.shots === "3");
  await context.close();
});

test("a tab that hears nothing of the other cannot overwrite it, and its number comes back into the hand", async () => {
  const { page, context } = await openFair();
  await rounds(page, 2);
  await start(page);
  const deaf = await context.newPage();
  await deaf.addInitScript(() => {
    delete window.BroadcastChannel;
  });
  await deaf.goto(`${siteUrl}#fair`);
  await deaf.locator(".log-keys").waitFor();
  await hit(page, 251);
  for (const digit of "199") await deaf.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
  await deaf.getByText("your last number is back in your hand").waitFor();
  assert.equal(await shots(deaf), 1, "the other tab's shot, and not the one of this");
  assert.match(await deaf.locator(".log-field.active").innerText(), /199/);
  await page.reload();
  await page.locator(".log-keys").waitFor();
  assert.equal(await shots(page), 1);
  await context.close();
});

test("a test that an older version keeps is under way in this one", async () => {
  const { page, context } = await open("methods.html", touched);
  await page.evaluate(
    () =>
      new Promise((done) => {
        const request = indexedDB.open("straight-answer");
        request.onupgradeneeded = () => request.result.createObjectStore("log");
        request.onsuccess = () => {
          const during = request.result.transaction("log", "readwrite");
          const plan = { builds: ["My driver", "New driver"], measure: "carry", same_club: false, rounds: 2 };
          const shot = (carry) => ({ turn: 0, values: { carry }, note: null });
          const log = {
            version: 1,
            plan,
            measures: ["carry"],
            warm: true,
            shots: [shot(250), shot(255)],
            ended: [],
            looks: [],
            hand: null,
            say: null,
          };
          during.objectStore("log").put(log, "test");
          during.oncomplete = () => done(request.result.close());
        };
      }),
  );
  await page.goto(siteUrl);
  await page.locator(".log-keys").waitFor();
  assert.equal(await shots(page), 2);
  await hit(page, 249);
  await context.close();
});

test("a store that a later version has is left alone, and it is said", async () => {
  const { page, context } = await openFair();
  await rounds(page, 2);
  await start(page);
  await hitTo(page, 1, 25);
  await page.evaluate(() => new Promise((done) => (indexedDB.open("straight-answer", 99).onsuccess = done)));
  for (const digit of "251") await page.locator(".log-keys").getByRole("button", { name: digit, exact: true }).click();
  await page.getByText("A newer version of this page is open in another tab").waitFor();
  assert.equal(await shots(page), 2, "the shot stays on the screen");
  await context.close();
});

test("a store that the browser clears is written anew, with every shot that is on the screen", async () => {
  const { page, context } = await openFair();
  await rounds(page, 2);
  await start(page);
  await hitTo(page, 3, 25);
  await page.evaluate(() => new Promise((done) => (indexedDB.deleteDatabase("straight-answer").onsuccess = done)));
  await hit(page, 251);
  await page.reload();
  await page.locator(".log-keys").waitFor();
  assert.equal(await shots(page), 4);
  await context.close();
});

test("a private window keeps the book in this page, and says so", async () => {
  const { page, context } = await open("", touched);
  await page.evaluate(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("blocked", "SecurityError");
    };
  });
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await page.locator("#keep > details > summary").click();
  await page.locator("#keep-name").fill("Ada Example");
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("This browser keeps nothing").first().waitFor();
  await page.getByRole("link", { name: "Open the book" }).click();
  await page.locator("#book-rows .book-open-row").waitFor();
  await context.close();
});

/** Fills the store as many visits would. */
const fill = (page, many) =>
  page.evaluate(async (count) => {
    const database = await new Promise((done) => {
      const request = indexedDB.open("straight-answer");
      request.onsuccess = () => done(request.result);
    });
    const during = database.transaction(["records", "bodies"], "readwrite");
    const stamped = (kind, id, data, made, more) => ({
      id,
      kind,
      data,
      stamps: {},
      made,
      revision: made,
      live: made,
      ...more,
    });
    const put = (one) => during.objectStore("records").put(one);
    for (let n = 0; n < count; n += 1) {
      const at = 1000 + 10 * n;
      const [person, visit] = [`p${n % 300}`, `v${n}`];
      if (n < 300)
        put(stamped("person", person, { name: `Pupil ${n} Example` }, at, { words: ["pupil", String(n), "example"] }));
      put(
        stamped("visit", visit, { person, date: "2026-05-30", place: "", note: "", mark: "" }, at + 1, {
          words: ["2026-05-30"],
        }),
      );
      const data = {
        person,
        visit,
        question: { baseline: 0, measure: "carry", stopping: "unknown" },
        clubs: ["Own", "New"],
        shots: 60,
        line: `Answer ${n}`,
        version: "1",
      };
      put(stamped("session", `s${n}`, data, at + 2, { row: at + 2, words: ["own", "new"] }));
      during.objectStore("bodies").put({ id: `s${n}`, csv: "x".repeat(4000) });
    }
    await new Promise((done) => (during.oncomplete = done));
    database.close();
  }, many);

async function opensIn(many) {
  const { page, context } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  await answer(page);
  await page.locator("#keep > details > summary").click();
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("Kept on this device:").first().waitFor();
  await fill(page, many);
  const times = [];
  for (let run = 0; run < 5; run += 1) {
    await page.goto("about:blank");
    await page.goto(siteUrl);
    await page.locator("#start a[href='#book']").waitFor();
    await page.waitForTimeout(500);
    times.push(
      await page.evaluate(
        () =>
          new Promise((done) => {
            const begun = performance.now();
            new MutationObserver((_, observer) => {
              if (document.querySelectorAll("#book-rows .book-open-row").length < 20) return;
              observer.disconnect();
              done(performance.now() - begun);
            }).observe(document.body, { childList: true, subtree: true });
            location.hash = "book";
          }),
      ),
    );
  }
  await page.locator("#book-search").fill("pupil 7");
  await page.waitForFunction(() => document.querySelector("#book-rows .book-who")?.textContent.includes("Pupil 7"));
  await context.close();
  return times.sort((a, b) => a - b)[2];
}

test("2,000 sessions open in about the time of 20: only what is drawn is read", async () => {
  const [few, many] = [await opensIn(20), await opensIn(2000)];
  console.log(
    `# the book opens in ${few.toFixed(0)} ms with 20 sessions, in ${many.toFixed(0)} ms with 2,000: ${(many / few).toFixed(2)} times`,
  );
  // Loading its part takes most of either; reading everything would take many times as long.
  assert.ok(many < 3 * few + 100, `${few} ms and ${many} ms`);
});

test("one damaged record is said and handed over as it lies; all others open", async () => {
  const { page, context } = await open("", touched);
  await paste(page, await demo("fair-12-yards"));
  const { headline } = await answer(page);
  await page.locator("#keep > details > summary").click();
  await page.locator("#keep-name").fill("Ada Example");
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await page.getByText("Kept on this device:").first().waitFor();
  await fill(page, 2);
  await page.evaluate(async () => {
    const request = indexedDB.open("straight-answer");
    await new Promise((done) => (request.onsuccess = done));
    const during = request.result.transaction(["records", "bodies"], "readwrite");
    during.objectStore("records").put({ id: "s0", kind: "session", row: 1002, data: "broken" });
    during.objectStore("bodies").put({ id: "s1", csv: 7 });
    await new Promise((done) => (during.oncomplete = done));
    request.result.close();
  });
  await page.goto("about:blank");
  await page.goto(`${siteUrl}#book`);
  await page.getByText("This record is damaged").waitFor();
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page
      .evaluate(() => {
        delete window.showSaveFilePicker;
      })
      .then(() => page.getByRole("button", { name: "Save it as it lies" }).click()),
  ]);
  assert.match(saved.suggestedFilename(), /^damaged-record-\d{4}-\d\d-\d\d\.json$/);
  await page.locator(".book-open-row", { hasText: "Answer 1" }).click();
  await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Open the answer" }).click()]);
  await page.getByText("The shots of this record are damaged.").waitFor();
  await page.locator(".book-open-row", { hasText: "Ada Example" }).click();
  await page.getByRole("button", { name: "Open the answer" }).click();
  assert.equal((await answer(page)).headline, headline);
  await context.close();
});
