/** How the page is built: relative paths, so that `dist` works under any sub-path of any host. */
import { defineConfig, type Plugin } from "vite";
import { bareCatalogues } from "./catalogues.mjs";
import { methodsPage } from "./methods/plugin.mjs";
import { offline } from "./offline/plugin.mjs";
import manifest from "./package.json" with { type: "json" };

/** The build server injects styles and a socket that the page's own policy forbids; the built page keeps the policy. */
const policyOnlyWhenBuilt: Plugin = {
  name: "policy-only-when-built",
  apply: "serve",
  transformIndexHtml: (html) => html.replace(/<meta http-equiv="content-security-policy"[^>]*>/i, ""),
};

/**
 * The policy of every page with a script: nothing but the site's own files, and no text that becomes a script.
 * lit makes its templates under the first name, `src/trusted.ts` starts workers under the second.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types lit-html straight-answer",
].join("; ");

const policy: Plugin = { name: "policy", transformIndexHtml: (html) => html.replace("%POLICY%", POLICY) };

/** All that the first answer needs is one file: on a slow network every request costs more than its bytes. */
const firstAnswer = { name: "page", test: /\/web\/src\/page\.ts$/, includeDependenciesRecursively: true };

export default defineConfig({
  base: "./",
  plugins: [bareCatalogues(), policy, policyOnlyWhenBuilt, methodsPage(), offline()],
  define: { APP_VERSION: JSON.stringify(manifest.version) },
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    license: { fileName: "licenses.md" },
    // What `cargo xtask sizes` counts by.
    manifest: true,
    rolldownOptions: {
      input: ["index.html", "methods.html", "methods.es.html", "embed.html"],
      output: { codeSplitting: { groups: [firstAnswer] } },
    },
    modulePreload: { polyfill: false },
  },
  worker: { format: "es" },
  server: { fs: { allow: [".."] } },
});
