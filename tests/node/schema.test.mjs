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

test("real reports, saved and read again, keep the schema; damaged ones do not", () => {
  const Ajv = fromWeb("ajv").default;
  const holds = new Ajv({ allErrors: true }).compile(JSON.parse(text("web/public/report.schema.json")));
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
  for (const { session, question } of asked) {
    const { file } = share({ session, question, address: "" });
    const saved = JSON.parse(JSON.stringify(file));
    assert.ok(
      holds(saved),
      `${session.builds[0].name} ${JSON.stringify(question)}: ${JSON.stringify(holds.errors?.slice(0, 3))}`,
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
