// A page of another origin with two checkers on it, under a policy that allows next to nothing.

import { readFile } from "node:fs/promises";
import { siteUrl } from "./harness.mjs";
import { serve } from "./site.mjs";
import { demo } from "./steps.mjs";

const root = new URL("../../", import.meta.url);
export const site = new URL(siteUrl).origin;
/** Exactly the directives that the README names, and Trusted Types on top. */
const POLICY = `default-src 'none'; script-src 'self' ${site}; frame-src ${site}; connect-src 'self'; require-trusted-types-for 'script'; trusted-types 'none'`;

/** Serves it under another host name, which is another origin, and in the browser another process. */
export async function serveHost() {
  const read = (file) => readFile(new URL(file, root), "utf8");
  const { link } = JSON.parse(await read("tests/links/sales-floor.json"));
  const made = {
    "/": (await read("demo/host/index.html"))
      .replaceAll("https://straight-answer.example/", siteUrl)
      .replaceAll("LINK", link),
    "/host.js": await read("demo/host/host.js"),
    "/fair-12-yards.csv": await demo("fair-12-yards"),
  };
  const { origin, close } = await serve({ made, headers: { "content-security-policy": POLICY }, host: "127.0.0.1" });
  return { hostUrl: `${origin}/`, close };
}
