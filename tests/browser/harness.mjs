// One Chromium for a file of browser tests, and pages that report whatever a journey must not do.
//
// `cargo xtask test browser` gives the address of the built site in SITE_URL and the browser in
// CHROMIUM_PATH; without them `dist/` is served from here and Debian's Chromium is taken. playwright-core lives in web/node_modules, which is no parent of this folder.

import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { createRequire } from "node:module";
import { after } from "node:test";
import { serveDist } from "./site.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const { chromium } = fromWeb("playwright-core");

/** Address of the site, with a slash at its end. */
export const siteUrl = process.env.SITE_URL ?? (await serveDist());

/** The screen of a common phone. */
export const phone = { width: 390, height: 844 };

const executablePath = process.env.CHROMIUM_PATH ?? "/usr/bin/chromium";
const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

let launched;
after(async () => (await launched)?.close());

/** The browser of this file's tests; closed after the last of them. */
export function browser() {
  launched ??= chromium.launch({ executablePath, args: quiet });
  return launched;
}

/**
 * A browser of its own, whose files stay in `folder` and which can be killed as by a dead battery: no goodbye, no last
 * write. Playwright's own browsers are closed in order.
 */
export async function ownBrowser(folder) {
  const args = [
    ...quiet,
    "--headless=new",
    "--remote-debugging-port=0",
    `--user-data-dir=${folder}`,
    `--window-size=${phone.width},${phone.height}`,
    "about:blank",
  ];
  const child = spawn(executablePath, args, { stdio: ["ignore", "ignore", "pipe"], detached: true });
  const address = await new Promise((found, failed) => {
    let said = "";
    child.stderr.on("data", (data) => {
      said += data;
      const at = /DevTools listening on (ws:\S+)/.exec(said);
      if (at) found(at[1]);
    });
    child.once("exit", () => failed(new Error(`the browser did not start: ${said}`)));
  });
  const connected = await chromium.connectOverCDP(address);
  const [context] = connected.contexts();
  const kill = async () => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const gone = once(child, "exit");
    // The whole group of processes that this one started.
    process.kill(-child.pid, "SIGKILL");
    await gone;
  };
  return { page: await context.newPage(), kill };
}

/**
 * Opens the site in a context of its own. `watched` grows while the page lives: every request, and
 * every console error or uncaught exception.
 *
 * @param {string} rest what follows the site's address, such as "#example=fair"
 * @param {import("playwright-core").BrowserContextOptions} options
 */
export async function open(rest = "", options = {}) {
  const context = await (await browser()).newContext({ viewport: phone, ...options });
  const page = await context.newPage();
  const watched = { requests: [], errors: [] };
  page.on("request", (request) => watched.requests.push(request.url()));
  page.on("pageerror", (error) => watched.errors.push(String(error)));
  page.on("console", (message) => message.type() === "error" && watched.errors.push(message.text()));
  await page.goto(siteUrl + rest);
  return { page, context, watched };
}

/** Fails when the page asked anyone but the site, or complained. */
export function assertQuiet(watched) {
  const { origin } = new URL(siteUrl);
  const away = watched.requests.filter((url) => /^https?:/.test(url) && new URL(url).origin !== origin);
  assert.deepEqual(away, [], "requests left the origin");
  assert.deepEqual(watched.errors, [], "the page complained");
}
