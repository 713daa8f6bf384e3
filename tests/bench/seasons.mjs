// Sessions a second in the page's wasm under Node, one thread: read and checked, of a folder of invented files.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { check, initSync, read } from "../../web/pkg/straight_answer.js";

initSync({ module: readFileSync(new URL("../../web/pkg/straight_answer_bg.wasm", import.meta.url)) });
const folder = process.argv[2];
const texts = readdirSync(folder)
  .sort()
  .map((name) => readFileSync(join(folder, name), "utf8"));
const question = { baseline: 0, measure: "carry", stopping: "unknown" };
const answered = (text) => {
  const { session } = read(text, null);
  // As a pile does: the measure asked for alone.
  const shots = session.shots.map((shot) => ({ ...shot, values: { carry: shot.values.carry } }));
  return check({ session: { ...session, measures: ["carry"], shots }, question });
};
texts.slice(0, 50).forEach(answered);
const start = performance.now();
for (const text of texts) answered(text);
console.log(JSON.stringify({ wasm: (1000 * texts.length) / (performance.now() - start) }));
