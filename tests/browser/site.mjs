// Small static servers on this machine: the built site under a sub-path, for running these tests without
// `cargo xtask test`, and pages made for a test beside files of the tree.

import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const SUB_PATH = "/some/club/";
const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".csv": "text/csv; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};

/**
 * Serves a folder of the tree under `path`, and before it the texts of `made` by their paths; ends with the process.
 *
 * @returns {Promise<{ origin: string, close: () => Promise<void> }>} `origin` without a slash at its end
 */
export async function serve({ folder, path: under = "/", made = {}, headers = {}, host = "localhost" }) {
  const root = folder && fileURLToPath(new URL(`../../${folder}/`, import.meta.url));
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
    const asked = path.endsWith("/") ? `${path}index.html` : path;
    const type = { "content-type": types[extname(asked)] ?? "text/plain" };
    const body =
      made[path] ??
      (root &&
        asked.startsWith(under) &&
        (await readFile(join(root, normalize(`/${asked.slice(under.length)}`))).catch(() => null)));
    response.writeHead(body ? 200 : 404, { ...type, ...headers }).end(body || "");
  });
  await new Promise((listening) => server.listen(0, host, listening));
  server.unref();
  const close = async () => {
    server.closeAllConnections();
    await new Promise((closed) => server.close(closed));
  };
  return { origin: `http://${host}:${server.address().port}`, close };
}

/** The built site at an address that can go away. */
export async function serveSite() {
  const { origin, close } = await serve({ folder: "dist", path: SUB_PATH });
  return { address: origin + SUB_PATH, close };
}

/** The address of the built site, until the process ends. */
export const serveDist = async () => (await serveSite()).address;
