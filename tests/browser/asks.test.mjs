// What only the golfer knows is asked where it matters, and one tap answers it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { assertQuiet, open } from "./harness.mjs";
import { answer, answerAfter, faults, openFact, paste } from "./steps.mjs";

/** Invented: one shot was typed with a wrong first digit. */
const WRONG_DIGIT = [242, 250, 238, 247, 245, 252, 236, 342, 240, 249, 243, 251, 239, 246, 241, 253]
  .map((carry, index) => `${Math.floor(index / 2) + 1},${index % 2 ? "New" : "Mine"},${carry}`)
  .join("\n");

const warning = (page, text) => page.locator(".overlay", { hasText: text });

test("a value that can hardly be is asked about at the top, and set aside the answer is told both ways", async () => {
  const { page, context, watched } = await open("#shots");
  await paste(page, `round,club,carry\n${WRONG_DIGIT}`);
  await answer(page);
  const first = await page.locator(".overlay").first().innerText();
  assert.match(first, /^Is this right\? Shot 8, New: carry 342\syd\./);
  assert.match(await page.locator("details.trust summary").innerText(), /serious/);
  assert.deepEqual(await faults(page), []);
  const tap = () => page.getByRole("button", { name: "A slip: set it aside" }).click();
  const after = await answerAfter(page, tap);
  assert.equal(await warning(page, "Is this right?").count(), 0);
  assert.match(after.headline, /depends on what was left out/);
  assert.match(after.everything, /With every shot: cannot tell[\s\S]*Without 1 of 8 New shots: a difference/);
  assertQuiet(watched);
  await context.close();
});

test("a shot that is said to be right is not asked about again", async () => {
  const { page, context, watched } = await open("#shots");
  await paste(page, `round,club,carry\n${WRONG_DIGIT.replace("342", "144")}`);
  await answer(page);
  await page.getByRole("button", { name: "It is right" }).click();
  assert.match(await warning(page, "Is this right?").innerText(), /You said that it is right/);
  assertQuiet(watched);
  await context.close();
});

test("nobody is told that the number was not fixed: it is asked, and a tap says it", async () => {
  const { page, context, watched } = await open("#shots");
  await paste(page, `round,club,carry\n${WRONG_DIGIT.replace("342", "244")}`);
  const { everything } = await answer(page);
  assert.match(everything, /You didn’t say whether the number of shots was fixed/);
  await answerAfter(page, () => page.getByRole("button", { name: "It was not", exact: true }).click());
  assert.equal(await warning(page, "was not fixed before").count(), 1);
  await openFact(page, "stopping");
  assert.ok(await page.getByLabel("No, it was not", { exact: true }).isChecked());
  assertQuiet(watched);
  await context.close();
});
