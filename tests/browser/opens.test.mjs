// The page opens under a sub-path of a host, loads its wasm there, and asks nobody else for anything.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open, siteUrl } from "./harness.mjs";

test("the site opens with an example under a sub-path, and no request leaves it", async () => {
  const { page, context, watched } = await open("#example=fair");
  await page.waitForLoadState("networkidle");
  assertQuiet(watched);
  const files = watched.requests.filter((url) => url.startsWith("http"));
  assert.ok(
    files.some((url) => url.endsWith(".wasm")),
    "the wasm was loaded",
  );
  assert.deepEqual(
    files.filter((url) => !url.startsWith(siteUrl)),
    [],
    "nothing from outside the sub-path",
  );
  await context.close();
});
