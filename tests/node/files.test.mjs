// Bytes of files into text, by the decoders of the host.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";

before(() => {
  core.initSync({ module: readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url)) });
});

const decode = (bytes, name = "shots.csv") => {
  try {
    return core.decode(Uint8Array.from(bytes), name);
  } catch (refusal) {
    return refusal;
  }
};

test("UTF-8 with and without a mark, UTF-16 both ways, Windows-1252", () => {
  const text = "Schläger;Weite\nÄ · lang;250,5\n";
  const utf16 = (swap) =>
    [...text].flatMap((c) => {
      const pair = [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8];
      return swap ? pair.reverse() : pair;
    });
  // No dashes and quotation marks: some versions of Node take the bytes 0x80 to 0x9F for control characters.
  const windows = [...text].map((c) => c.charCodeAt(0));
  const utf8 = [...new TextEncoder().encode(text)];
  const files = {
    utf8,
    marked: [0xef, 0xbb, 0xbf, ...utf8],
    low: [0xff, 0xfe, ...utf16(false)],
    high: [0xfe, 0xff, ...utf16(true)],
    unmarked: utf16(false),
    windows,
  };
  for (const [name, bytes] of Object.entries(files)) assert.equal(decode(bytes), text, name);
});

test("a workbook is left to its package, and a picture is refused by its name", () => {
  assert.equal(decode([0x50, 0x4b, 3, 4, 20]), undefined);
  assert.equal(decode([0xd0, 0xcf, 0x11, 0xe0]), undefined);
  const refusal = decode([0x89, 0x50, 0x4e, 0x47, 0, 1], "screen.png");
  assert.deepEqual([refusal.kind, refusal.place], ["not_text", "screen.png"]);
});
