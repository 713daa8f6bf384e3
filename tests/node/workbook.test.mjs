// The package for workbooks in Node, and that the reader understands what it gives.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import * as core from "../../web/pkg/straight_answer.js";
import * as workbook from "../../web/pkg/straight_answer_workbook.js";

const bytes = (path) => readFileSync(new URL(`../../${path}`, import.meta.url));

before(() => {
  core.initSync({ module: bytes("web/pkg/straight_answer_bg.wasm") });
  workbook.initSync({ module: bytes("web/pkg/straight_answer_workbook_bg.wasm") });
});

test("both formats are read into the same session, nothing amiss", () => {
  const [xlsx] = workbook.sheets(bytes("tests/workbooks/one_sheet.xlsx"));
  assert.deepEqual([xlsx.name, xlsx.rows], ["Shots", 25]);
  const { session, problems } = core.read(xlsx.text, null);
  assert.deepEqual(problems, []);
  assert.deepEqual(session.builds, [{ name: "Own driver" }, { name: "Driver B" }]);
  assert.deepEqual([session.shots.length, session.order], [24, "interleaved"]);
  assert.deepEqual(session.measures, ["carry", "ball_speed", "offline"]);
  const [ods] = workbook.sheets(bytes("tests/workbooks/open_document.ods"));
  assert.deepEqual(core.read(ods.text, null).session.shots, session.shots);
});

test("every sheet is there by its name, and a hint can make that name the club", () => {
  const sheets = workbook.sheets(bytes("tests/workbooks/several_sheets.xlsx"));
  assert.deepEqual(
    sheets.map(({ name }) => name),
    ["Notes", "Own driver", "Driver B", "Empty", "Odd cells"],
  );
  const read = (name) => core.read(sheets.find((sheet) => sheet.name === name).text, { build: name }).session;
  assert.deepEqual(read("Driver B").builds, [{ name: "Driver B" }]);
  assert.equal(read("Driver B").shots.length, 12);
});

test("cells of every kind and a stray one far away leave the shots readable", () => {
  const sheets = workbook.sheets(bytes("tests/workbooks/several_sheets.xlsx"));
  const { session } = core.read(sheets.at(-1).text, null);
  assert.equal(session.shots[0].values.carry, 251.4);
  assert.equal(session.shots[0].values.smash, 1.482);
});

test("what is no workbook is refused with a remedy", () => {
  for (const [name, kind] of [
    ["no_workbook.zip", "no_workbook"],
    ["make.py", "broken"],
  ]) {
    assert.throws(
      () => workbook.sheets(bytes(`tests/workbooks/${name}`)),
      (refusal) => refusal.kind === kind && refusal.message.length > 0 && refusal.remedy.length > 0,
    );
  }
  assert.equal(workbook.sheets(bytes("tests/workbooks/one_sheet.xlsx")).length, 1, "still alive");
});
