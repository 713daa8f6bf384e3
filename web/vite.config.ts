/** How the page is built: relative paths, so that `dist` works under any sub-path of any host. */
import { defineConfig, type Plugin } from "vite";
import { methodsPage } from "./methods/plugin.mjs";

/** The build server injects styles and a socket that the page's own policy forbids; the built page keeps the policy. */
const policyOnlyWhenBuilt: Plugin = {
  name: "policy-only-when-built",
  apply: "serve",
  transformIndexHtml: (html) => html.replace(/<meta http-equiv="content-security-policy"[^>]*>/i, ""),
};

export default defineConfig({
  base: "./",
  plugins: [policyOnlyWhenBuilt, methodsPage()],
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    license: { fileName: "licenses.md" },
    rolldownOptions: { input: ["index.html", "methods.html"] },
    modulePreload: { polyfill: false },
  },
  worker: { format: "es" },
  server: { fs: { allow: [".."] } },
});
