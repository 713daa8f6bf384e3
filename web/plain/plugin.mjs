/**
 * The page as one plain script and one style sheet, for a frame without an origin on a host without CORS: nothing can be
 * fetched there and no module loaded. `public/needs.js` asks for it when the page's own script was refused.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const CORE = "\0plain-core";
const NOTHING = "\0plain-nothing";

/** What fetches, or starts a worker, by what does the same from the script itself. */
const INSTEAD = {
  "remote.js": here("remote.ts"),
  "core.js": here("core.ts"),
  "core-language.js": here("core-language.ts"),
};

/** @returns {import("vite").Plugin} */
export const plain = () => ({
  name: "plain",
  enforce: "pre",
  resolveId(id) {
    if (id === "plain-core") return CORE;
    if (/\?worker&url$|\.css\?url$/.test(id)) return NOTHING;
    return INSTEAD[/^\.\/(?:core\/)?([\w-]+\.js)$/.exec(id)?.[1] ?? ""] ?? null;
  },
  load(id) {
    if (id === NOTHING) return 'export default "";';
    if (id !== CORE) return null;
    const packed = gzipSync(readFileSync(here("../pkg/straight_answer_bg.wasm")), { level: 9 });
    return `export default "${packed.toString("base64")}";`;
  },
  // The glue would take the core along a second time.
  transform: (code, id) =>
    /pkg\/straight_answer\.js$/.test(id)
      ? { code: code.replace(/new URL\('straight_answer_bg\.wasm', import\.meta\.url\)/, "undefined"), map: null }
      : null,
});
