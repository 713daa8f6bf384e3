/** After the build: beside every text of the site the same file after gzip and after brotli, for hosts that send what lies there. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const dist = fileURLToPath(new URL("../dist/", import.meta.url));
const TEXTS = /\.(html|js|css|wasm|json|svg|txt|webmanifest)$/;

for (const name of readdirSync(dist, { recursive: true })) {
  // What starts with a point is not for visitors.
  if (!TEXTS.test(name) || name.startsWith(".")) continue;
  const bytes = readFileSync(`${dist}${name}`);
  writeFileSync(
    `${dist}${name}.gz`,
    gzipSync(bytes, { level: constants.Z_BEST_COMPRESSION, memLevel: constants.Z_MAX_MEMLEVEL }),
  );
  const size = { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  writeFileSync(
    `${dist}${name}.br`,
    brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY, ...size } }),
  );
}
