// Each journey once in every browser that is here: Chromium, Firefox and WebKit, through the WebDriver of each.
//
// `cargo xtask test everywhere` names the browsers in EVERYWHERE and has their drivers on PATH; without it every
// browser is taken whose driver is on PATH.

import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { delimiter, join } from "node:path";
import { after, test } from "node:test";
import { Page } from "./page.mjs";

const fromWeb = createRequire(new URL("../../web/package.json", import.meta.url));
const { Builder, Capabilities } = fromWeb("selenium-webdriver");

const onPath = (name) =>
  (process.env.PATH ?? "")
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((file) => existsSync(file));

/** How a driver is started on a port, and what it is asked for. */
const KINDS = {
  Chromium: {
    driver: "chromedriver",
    start: (port) => ["chromedriver", `--port=${port}`],
    wanted: () => ({
      browserName: "chrome",
      "goog:chromeOptions": {
        binary: process.env.CHROMIUM_PATH ?? onPath("chromium"),
        args: ["--headless=new", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"],
      },
    }),
  },
  Firefox: {
    driver: "geckodriver",
    start: (port) => ["geckodriver", "--port", String(port)],
    wanted: () => ({
      browserName: "firefox",
      "moz:firefoxOptions": { binary: onPath("firefox-esr") ?? onPath("firefox"), args: ["-headless"] },
    }),
  },
  // Debian's has no headless mode: it draws on a screen in memory. Its driver knows where its own browser lies.
  WebKit: {
    driver: "WebKitWebDriver",
    start: (port) => ["xvfb-run", "-a", "-s", "-screen 0 1400x1000x24", "WebKitWebDriver", `--port=${port}`],
    wanted: () => ({ browserName: "MiniBrowser" }),
  },
};

const wanted = process.env.EVERYWHERE?.split(",").filter(Boolean);
/** The browsers of this run. */
export const browsers = Object.keys(KINDS).filter((name) => wanted?.includes(name) ?? onPath(KINDS[name].driver));

const started = new Map();
after(async () => {
  for (const one of started.values()) await (await one.catch(() => null))?.end();
});

async function freePort() {
  const server = createServer();
  await new Promise((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address();
  await new Promise((closed) => server.close(closed));
  return port;
}

async function start(name) {
  const kind = KINDS[name];
  const port = await freePort();
  const [program, ...args] = kind.start(port);
  const env = { ...process.env, WEBKIT_DISABLE_COMPOSITING_MODE: "1" };
  const child = spawn(program, args, { stdio: "ignore", detached: true, env });
  // The whole group of processes that this one started.
  const kill = () => {
    try {
      process.kill(-child.pid, "SIGTERM");
    } catch {
      // It is gone already.
    }
  };
  process.once("exit", kill);
  const server = `http://127.0.0.1:${port}`;
  for (let tries = 0; ; tries += 1) {
    if (
      await fetch(`${server}/status`).then(
        (said) => said.ok,
        () => false,
      )
    )
      break;
    if (child.exitCode !== null || tries > 150) throw new Error(`${kind.driver} did not start`);
    await new Promise((later) => setTimeout(later, 200));
  }
  const driver = await new Builder().usingServer(server).withCapabilities(new Capabilities(kind.wanted())).build();
  const end = async () => {
    await driver.quit().catch(() => null);
    kill();
  };
  return { page: new Page(driver, name), end };
}

/** The one page of a browser in this file of journeys; its store is new with every file. */
async function pageIn(name) {
  if (!started.has(name)) started.set(name, start(name));
  return (await started.get(name)).page;
}

/** Runs a journey in each browser, on a phone's width unless it says otherwise. */
export function everywhere(what, journey) {
  for (const name of browsers) {
    test(`${name}: ${what}`, async (context) => {
      const page = await pageIn(name);
      await page.home();
      await page.size(390, 844);
      await journey(page, context);
    });
  }
}
