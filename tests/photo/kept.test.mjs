// The photos of the tree, read by the package that was built: no number may be wrong without a doubt.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { before, test } from "node:test";
import { openReader, unpacked } from "./reader.mjs";
import { score } from "./score.mjs";

const KEPT = new URL("kept/", import.meta.url);
const names = readdirSync(KEPT)
  .filter((file) => file.endsWith(".jpg"))
  .map((file) => file.replace(".jpg", ""));

let reader;
before(async () => {
  reader = await openReader();
});

const bytes = (file) => readFileSync(new URL(file, KEPT));

for (const name of names) {
  test(`${name}: what can be read is right or in doubt, what cannot is refused`, () => {
    const truth = JSON.parse(bytes(`${name}.json`));
    const picture = unpacked(bytes(`${name}.jpg`), truth.photo.exif);
    if (name.startsWith("dark")) {
      assert.throws(() => reader.read(picture), { kind: "too_poor" });
      return;
    }
    const told = [];
    const reading = reader.read(picture, (done, of) => told.push([done, of]));
    const found = score(truth, reading, picture.scale);
    assert.equal(found.silent, 0, JSON.stringify(found.errors));
    assert.ok(found.right >= 0.98 * found.cells, `${found.right} of ${found.cells}: ${JSON.stringify(found.errors)}`);
    assert.ok(found.isGrid || truth.screen.tiles, "rows and columns are those that were drawn");
    assert.equal(reading.is_tiles, truth.screen.tiles);
    assert.deepEqual(told[0], [0, 0], "first it looks for texts");
    assert.ok(told.length > 3 && told.every(([done, of]) => done <= of));
    const size = reading.cells.reduce((sum, { cut }) => sum + (cut?.width ?? 0), 0) * reading.cut_height;
    assert.equal(reading.cuts.length, size, "each number has its cut-out");
  });
}

test("what is no table is refused, whatever its size, and the reader lives on", () => {
  const blank = (width, height) => ({ data: new Uint8Array(4 * width * height).fill(200), width, height });
  for (const [picture, kind] of [
    [blank(1, 1), "no_picture"],
    [blank(5000, 1), "no_picture"],
    [{ ...blank(100, 100), width: 101 }, "no_picture"],
    [blank(200, 60), "no_text"],
  ])
    assert.throws(
      () => reader.read(picture),
      (thrown) => thrown.kind === kind,
    );
});
