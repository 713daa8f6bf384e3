// The published JSON Schema of the report's file: it is that of the structs, and real reports keep it.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { before, test } from "node:test";
import { initSync, read, share, unpack } from "../../web/pkg/straight_answer.js";
import { schema } from "../../web/schema.mjs";

const root = new URL("../../", import.meta.url);
const fromWeb = createRequire(new URL("web/package.json", root));
const text = (path) => readFileSync(new URL(path, root), "utf8");

before(() => {
  initSync({ module: readFileSync(new URL("web/pkg/straight_answer_bg.wasm", root)) });
});

test("the schema in the tree is that of the structs", () => {
  assert.equal(text("web/public/report.schema.json"), schema(), "run `cargo xtask types` and commit it");
});

const schemaInTree = () => JSON.parse(text("web/public/report.schema.json"));
const Ajv = fromWeb("ajv").default;

/** Files of many kinds of answers, as they are saved. */
function savedFiles() {
  const sessions = ["fair-same", "fair-12-yards", "sales-floor", "four-equal"].map(
    (name) => read(text(`demo/${name}.csv`), null).session,
  );
  const asked = sessions.flatMap((session) => [
    { session, question: { baseline: 0, measure: "carry", stopping: "fixed" } },
    { session, question: { baseline: 1, measure: "offline", goal: "tighter", stopping: "unknown" } },
    {
      session,
      question: {
        baseline: 0,
        measure: "carry",
        margin: 3,
        first_margin: 5,
        stopping: { planned_rounds: 20, looked_after: [2, 5] },
      },
    },
  ]);
  for (const name of [
    "averages-only",
    "own-columns-gaps",
    "blocked-metric-left-out",
    "rounded",
    "planned-every-round",
  ]) {
    asked.push(unpack(JSON.parse(text(`tests/links/${name}.json`)).link));
  }
  return asked.map(({ session, question }) =>
    JSON.parse(JSON.stringify(share({ session, question, address: "" }).file)),
  );
}

/** Every object of a file with its place; of those that stand in the same list, the first one. */
function* objects(value, place = "") {
  if (Array.isArray(value)) {
    for (const item of value.slice(0, 1)) yield* objects(item, `${place}/0`);
  } else if (value !== null && typeof value === "object") {
    yield [place, value];
    for (const [key, item] of Object.entries(value)) yield* objects(item, `${place}/${key}`);
  }
}

test("real reports, saved and read again, keep the schema; damaged ones do not", () => {
  const holds = new Ajv({ allErrors: true }).compile(schemaInTree());
  for (const saved of savedFiles()) {
    assert.ok(
      holds(saved),
      `${saved.session.builds[0].name} ${JSON.stringify(saved.question)}: ${JSON.stringify(holds.errors?.slice(0, 3))}`,
    );
    assert.equal(
      holds({
        ...saved,
        report: { ...saved.report, answer: { ...saved.report.answer, decision: { kind: "better" } } },
      }),
      false,
    );
    assert.equal(holds({ ...saved, session: undefined }), false);
  }
});

test("a file of another version or another format is refused", () => {
  const holds = new Ajv().compile(schemaInTree());
  const [saved] = savedFiles();
  for (const version of [0, 2, 1.5, "1", null]) assert.equal(holds({ ...saved, version }), false, `version ${version}`);
  for (const format of ["", "straight-answer-session"])
    assert.equal(holds({ ...saved, format }), false, `format ${format}`);
});

test("what the schema does not name is refused, wherever it stands", () => {
  const holds = new Ajv().compile(schemaInTree());
  const places = new Set();
  for (const saved of savedFiles()) {
    for (const [place, object] of objects(saved)) {
      object.margn = "99";
      assert.equal(holds(saved), false, `${place || "the file itself"} takes a field that nothing names`);
      delete object.margn;
      places.add(place);
    }
    assert.ok(holds(saved), "whole again");
  }
  for (const place of ["", "/question", "/session/shots/0", "/session/shots/0/values", "/report/answer/decision"]) {
    assert.ok(places.has(place), `${place} was tried, of ${[...places].sort().join(" ")}`);
  }
});
