// What a visitor may ask before anything else, asked of a core; run by `cargo xtask build`, which makes the abridged core of it.
// Prints a JSON object: which points of the core ran, where it notes them, and one text for all that was answered.
// Arguments: the core's script, the core, the tables of other languages.
//
// Shots pasted in any shape there is an example of, a link opened; in each language and in both units. What is not asked
// here is answered by the whole core.

import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { pathToFileURL } from "node:url";

const [script, wasm, ...tables] = process.argv.slice(2);
const core = await import(pathToFileURL(script).href);
const exports = core.initSync({ module: readFileSync(wasm) });
const root = new URL("../../", import.meta.url);
const texts = (folder, ending) => {
  const place = new URL(folder, root);
  const names = readdirSync(place).filter((name) => ending.test(name)).sort();
  return names.map((name) => readFileSync(new URL(name, place)));
};
const shots = [...texts("demo/", /\.csv$/), ...texts("tests/csv/", /\.(csv|txt|html|json|tsv)$/)];
const links = texts("tests/links/", /\.json$/).map((file) => JSON.parse(file.toString("utf8")).link);
const said = createHash("sha256");

/** The answer, or the refusal. */
function answer(call) {
  let given;
  try {
    given = call();
  } catch (refusal) {
    if (refusal instanceof Error) throw refusal;
    given = refusal;
  }
  said.update(JSON.stringify(given) ?? "nothing");
  return given;
}

/** As the page asks first: of carry, or of what there is. */
const asked = ({ measures }) => ({ baseline: 0, measure: measures.includes("carry") ? "carry" : (measures[0] ?? "carry"), stopping: "unknown" });

function giveEveryAnswer() {
  answer(() => core.measures());
  for (const bytes of shots) {
    const text = answer(() => core.decode(bytes, "shots.csv"));
    if (typeof text !== "string") continue;
    const { session } = answer(() => core.read(text, {}));
    const question = asked(session);
    for (const stopping of ["unknown", "fixed"]) answer(() => core.check({ session, question: { ...question, stopping } }));
  }
  for (const link of links) {
    const { session, question } = answer(() => core.unpack(`#${link}`));
    answer(() => core.check({ session, question }));
  }
}

for (const metric of [false, true]) {
  core.show_metric(metric);
  for (const table of ["", ...tables.map((file) => readFileSync(file, "utf8"))]) {
    if (!core.speak(table)) throw new Error("a table of another build");
    giveEveryAnswer();
  }
}

const ran = Object.entries(exports).filter(([name, mark]) => name.startsWith("ran ") && mark.value === 1);
process.stdout.write(JSON.stringify({ ran: ran.map(([name]) => Number(name.slice(4))), answers: said.digest("hex") }));
