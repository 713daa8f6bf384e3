// The package as npm packs it: unpacked elsewhere, with types, its README's example for Node runs.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";

let folder;
before(() => {
  folder = mkdtempSync(join(tmpdir(), "straight-answer-"));
});
after(() => rmSync(folder, { recursive: true }));

test("npm pack makes a package that Node runs by its README", () => {
  const packed = fileURLToPath(new URL("../../web/pkg/", import.meta.url));
  execFileSync("npm", ["pack", "--silent", "--offline", "--pack-destination", folder], { cwd: packed });
  const modules = join(folder, "node_modules");
  mkdirSync(modules);
  execFileSync("tar", [
    "-xzf",
    join(
      folder,
      readdirSync(folder).find((name) => name.endsWith(".tgz")),
    ),
    "-C",
    modules,
  ]);
  execFileSync("mv", [join(modules, "package"), join(modules, "straight-answer")]);
  const files = readdirSync(join(modules, "straight-answer"));
  for (const name of [
    "README.md",
    "LICENSE-MIT",
    "LICENSE-APACHE",
    "licenses.md",
    "straight_answer.d.ts",
    "straight_answer_bg.wasm",
  ]) {
    assert.ok(files.includes(name), name);
  }
  const [, node] = readFileSync(join(modules, "straight-answer/README.md"), "utf8").match(
    /In Node:\s+```js\n([\s\S]*?)```/,
  );
  assert.ok(node.trim().split("\n").length <= 10, "ten lines");
  writeFileSync(join(folder, "example.mjs"), node);
  const told = execFileSync("node", ["example.mjs"], { cwd: folder, encoding: "utf8" });
  assert.match(told, /^(different|cannot_tell) \S.*\n$/);
});
