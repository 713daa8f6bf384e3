// Whether the session can be trusted: its warnings, and every shot open to view.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, faults } from "./steps.mjs";

test("the sales floor is told that its order can turn the answer around", async () => {
  const { page, context, watched } = await open("#example=floor");
  await answer(page);
  const panel = page.locator("details.trust");
  assert.match(await panel.locator("summary").innerText(), /^\d+\sserious/);
  await panel.locator("summary").click();
  const serious = await panel.locator(".finding.serious").allInnerTexts();
  assert.ok(serious.some((text) => /^!\s+Serious\s+Own driver was hit first, with 5\sshots/.test(text)), serious.join("\n"));
  assert.deepEqual(await faults(page), []);
  assertQuiet(watched);
  await context.close();
});
