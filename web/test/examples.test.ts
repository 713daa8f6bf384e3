/** The examples an address opens. */
import { expect, test } from "vitest";
import { EXAMPLES, exampleIn } from "../src/state/examples.js";

test("an address opens an example by its name and nothing else", () => {
  expect(exampleIn("#example=twelve")?.id).toBe("twelve");
  expect(exampleIn("#answer")).toBeUndefined();
  expect(exampleIn("#example=__proto__")).toBeUndefined();
});

test("every example is there and holds shots", async () => {
  for (const example of EXAMPLES) {
    const rows = (await example.text())
      .trim()
      .split("\n")
      .filter((line) => /^\d/.test(line));
    expect(rows.length, example.id).toBeGreaterThan(20);
  }
});
