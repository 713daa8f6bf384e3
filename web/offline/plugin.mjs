/** After the build: a service worker by workbox that keeps every file of the site, at any sub-path. */
import { fileURLToPath } from "node:url";
import { generateSW } from "workbox-build";

/** The program and the models. */
const PHOTO_FILES = "assets/straight_answer_photo*";

const dist = fileURLToPath(new URL("../../dist/", import.meta.url));

/** @returns {import("vite").Plugin} */
export function offline() {
  return {
    name: "offline",
    apply: "build",
    closeBundle: {
      sequential: true,
      order: "post",
      async handler() {
        const { warnings } = await generateSW({
          globDirectory: dist,
          globPatterns: ["**/*"],
          // What reads photos is large: kept once somebody has chosen one.
          globIgnores: ["sw.js", "licenses.md", PHOTO_FILES],
          runtimeCaching: [
            {
              urlPattern: /\/assets\/straight_answer_photo/,
              handler: "CacheFirst",
              options: { cacheName: "photo", expiration: { maxEntries: 4 } },
            },
          ],
          swDest: `${dist}sw.js`,
          inlineWorkboxRuntime: true,
          // Before the runtime: what is shared with the page is no request of its own.
          importScripts: ["share-target.js"],
          sourcemap: false,
          cleanupOutdatedCaches: true,
          clientsClaim: true,
          // A new version waits until the page is closed: a session on the screen is never swapped under the golfer.
          skipWaiting: false,
          // What the build names by its content needs no second look.
          dontCacheBustURLsMatching: /^assets\//,
          directoryIndex: "index.html",
          ignoreURLParametersMatching: [/./],
          maximumFileSizeToCacheInBytes: 5_000_000,
          mode: "production",
        });
        for (const warning of warnings) this.warn(warning);
      },
    },
  };
}
