/** Which npm packages the built scripts hold a part of: a list for `cargo xtask licenses`. */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Folders of packages below this one, of the page and of its workers alike. */
const folders = new Set();

/**
 * @param {string} build
 * @returns {import("vite").Plugin}
 */
export function bundled(build) {
  const file = new URL(`.vite/bundled-${build}.json`, import.meta.url);
  return {
    name: "bundled",
    apply: "build",
    generateBundle(_, bundle) {
      for (const chunk of Object.values(bundle)) {
        for (const module of chunk.moduleIds ?? []) {
          // The innermost of them.
          const [folder] = module.match(/node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+/) ?? [];
          if (folder !== undefined) folders.add(folder);
        }
      }
      mkdirSync(fileURLToPath(new URL(".", file)), { recursive: true });
      writeFileSync(file, `${JSON.stringify([...folders].sort(), null, 1)}\n`);
    },
  };
}
