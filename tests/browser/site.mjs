// The built site under a sub-path, for running these tests without `cargo xtask test`.

import { createServer } from "node:http";
import { readFile } from "node:fs/promises";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const SUB_PATH = "/some/club/";
const dist = fileURLToPath(new URL("../../dist/", import.meta.url));
const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};

/** Serves `dist/` on this machine only and returns the address; ends with the process. */
export async function serveDist() {
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
    const inside = path.startsWith(SUB_PATH) ? normalize("/" + path.slice(SUB_PATH.length)) : null;
    try {
      const file = join(dist, inside === "/" ? "index.html" : inside);
      response.writeHead(200, { "content-type": types[extname(file)] ?? "text/plain" }).end(await readFile(file));
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((listening) => server.listen(0, "localhost", listening));
  server.unref();
  return `http://localhost:${server.address().port}${SUB_PATH}`;
}
