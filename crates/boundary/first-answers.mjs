// What a visitor may ask before anything else, asked of a core; run by `cargo xtask build`, which makes the abridged core of it.
// Prints a JSON object: which points of the core ran, where it notes them, and one text for all that was answered.
// Arguments: the core's script, the core, the whole core, the tables of other languages.
//
// Shots pasted, a link opened; in each language, in all units and with either decimal mark. Every answer more is weight for everybody: what is not
// asked here is answered by the whole core.

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { plainSession } from "./plain-sessions.mjs";

const [script, wasm, whole, ...tables] = process.argv.slice(2);
/** A core of its own, whatever others the script has started. */
const started = async (file) => {
  const core = await import(`${pathToFileURL(script).href}?${file}`);
  return { core, exports: core.initSync({ module: readFileSync(file) }) };
};
const { core, exports } = await started(wasm);
// What packs the links is not what is watched: nobody packs before the first answer.
const { core: sender } = await started(whole);
const root = new URL("../../", import.meta.url);
const read = (name) => readFileSync(new URL(name, root));

/** Shots as most are given: a plain table. */
const SHOTS = ["demo/fair-12-yards.csv", "demo/fair-same.csv", "demo/four-equal.csv", "demo/sales-floor.csv"];
/** How many invented tables besides, in each manner of speaking: others in each. */
const INVENTED = 80;
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
const asked = ({ measures }) => ({
  baseline: 0,
  measure: measures.includes("carry") ? "carry" : (measures[0] ?? "carry"),
  stopping: "unknown",
});

/** What senders say in a link beside the shots; every one is sent in every voice. */
const SAID = [
  {},
  { stopping: "fixed" },
  { stopping: "fixed", margin: 4 },
  { stopping: "not_fixed" },
  { candidate: 1 },
  { goal: "higher", margin: 5 / 0.9144 },
  { baseline: 1 },
  { differs: "head" },
];
/** Every third link has a shot left out, with or without a reason. */
function withLeftOut(session, at) {
  if (at % 3) return session;
  const { columns } = session;
  return { ...session, columns: { ...columns, left_out: [[2, at % 2 ? "mishit" : ""]] } };
}
const link = (session, question, at) => ({
  session: withLeftOut(session, at),
  question: { ...question, ...SAID[at % SAID.length] },
  ...(at % 2 ? { view: { note: "Saturday" } } : {}),
});

/** What a file may be by its first bytes: a workbook, which is opened elsewhere, or a picture, which is refused. */
const OTHERS = [
  [0x50, 0x4b, 3, 4, 20],
  [0xd0, 0xcf, 0x11, 0xe0],
  [0x89, 0x50, 0x4e, 0x47, 0, 1],
];

const texts = SHOTS.map((name) => answer(() => core.decode(read(name), "shots.csv")));

function giveEveryAnswer(manner, voice) {
  const invented = Array.from({ length: INVENTED }, (_, at) => plainSession(manner * INVENTED + at));
  answer(() => core.measures(voice));
  for (const bytes of OTHERS) answer(() => core.decode(Uint8Array.from(bytes), "shots", voice));
  for (const [at, text] of [...texts, ...invented].entries()) {
    const { session } = answer(() => core.read_in_columns(text, {}, voice));
    const question = asked(session);
    for (const stopping of ["unknown", "fixed"])
      answer(() => core.check({ session, question: { ...question, stopping } }, voice));
    const { session: sent, question: what } = answer(() =>
      core.unpack(`#${sender.pack(link(session, question, at))}`, voice),
    );
    answer(() => core.check({ session: sent, question: what }, { ...voice, whose: "sender" }));
    // One's own session, gone on to another language or other units.
    answer(() => core.check({ session: sent, question: what }, voice));
  }
}

const languages = [null, ...tables.map((file) => readFileSync(file, "utf8"))];
const voices = ["yards", "meters", "meters_and_mph"].flatMap((units) => languages.map((table) => ({ table, units })));
voices.push({ table: languages.at(-1), units: "yards", point: true });
for (const [at, voice] of voices.entries()) giveEveryAnswer(at, voice);

const ran = Object.entries(exports).filter(([name, mark]) => name.startsWith("ran ") && mark.value === 1);
process.stdout.write(JSON.stringify({ ran: ran.map(([name]) => Number(name.slice(4))), answers: said.digest("hex") }));
