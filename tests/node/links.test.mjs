// Links and what is given away, across the boundary: the links of tests/links, nonsense, and the time they take.

import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { before, test } from "node:test";
import { bet, check, initSync, pack, read, share, typical, unpack } from "../../web/pkg/straight_answer.js";

const root = new URL("../../", import.meta.url);

before(() => {
  initSync({ module: readFileSync(new URL("web/pkg/straight_answer_bg.wasm", root)) });
});

const fair = () => read(readFileSync(new URL("demo/fair-12-yards.csv", root), "utf8"), null).session;
const question = { baseline: 0, measure: "carry", stopping: "fixed" };

test("every link of tests/links opens as what it must hold", () => {
  const files = readdirSync(new URL("tests/links/", root)).filter((name) => name.endsWith(".json"));
  assert.ok(files.length >= 6);
  for (const name of files) {
    const { link, holds } = JSON.parse(readFileSync(new URL(`tests/links/${name}`, root), "utf8"));
    assert.deepEqual(unpack(link), holds, name);
    assert.deepEqual(unpack(`https://example.org/some/club/?x=1#${link}`), holds, name);
  }
});

test("a session and its question go into a text and come back, and the answer is the same", () => {
  const session = fair();
  const text = pack({ session, question: { ...question, margin: 4 }, view: { note: "Saturday" } });
  assert.match(text, /^1\.[\w-]+$/);
  const opened = unpack(text);
  assert.deepEqual(opened, { session, question: { ...question, margin: 4 }, view: { note: "Saturday" }, notices: [] });
  const { session: sent, question: asked } = opened;
  assert.deepEqual(check({ session: sent, question: asked }), check({ session, question: { ...question, margin: 4 } }));
  assert.throws(
    () => check(opened),
    (refusal) => refusal.place === "request.view" && refusal.remedy.includes("`session`"),
  );
});

test("what is no link is refused as an object, with a remedy", () => {
  const good = pack({ session: fair(), question });
  const bad = {
    "": "not_a_link",
    "#example=fair": "not_a_link",
    "2.AAAA": "link_later_version",
    [good.slice(0, -9)]: "link_damaged",
    "1.<b>": "link_damaged",
  };
  for (const [text, kind] of Object.entries(bad)) {
    assert.throws(
      () => unpack(text),
      (refusal) => refusal.kind === kind && refusal.remedy.length > 0,
      text.slice(0, 30),
    );
  }
  for (const request of [
    undefined,
    null,
    {},
    { session: fair() },
    { session: fair(), question: { ...question, baseline: 9 } },
  ]) {
    assert.throws(
      () => pack(request),
      (refusal) => typeof refusal.kind === "string" && refusal.remedy.length > 0,
    );
    assert.throws(
      () => share(request),
      (refusal) => typeof refusal.kind === "string" && refusal.remedy.length > 0,
    );
  }
  for (const none of [7, null, undefined, { text: good }]) {
    assert.throws(
      () => unpack(none),
      (refusal) => refusal.kind === "not_understood" && refusal.place === "text",
    );
  }
  assert.ok(unpack(good), "still alive");
});

test("one call makes everything to give away", () => {
  const session = fair();
  const shared = share({ session, question, address: "https://example.org/club/" });
  assert.deepEqual(JSON.parse(JSON.stringify(shared)), shared);
  assert.equal(shared.link, `https://example.org/club/#${pack({ session, question })}`);
  assert.equal(shared.fits_forums, true);
  const report = check({ session, question });
  const told = { report, bet: bet({ session, question }), typical: typical({ session, question }) };
  assert.deepEqual(shared.file, { format: "straight-answer-report", version: 1, session, question, ...told });
  for (const text of [shared.words.plain, shared.words.markdown, shared.words.brackets]) {
    assert.ok(text.includes(report.answer.words.headline) && text.includes(shared.link));
  }
});
