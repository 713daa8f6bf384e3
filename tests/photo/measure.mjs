// Reads a folder of drawn photos with the built package and prints what came of them: `node measure.mjs FOLDER [FIGURES]`.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openReader, unpacked } from "./reader.mjs";
import { score } from "./score.mjs";

const [folder, figures] = process.argv.slice(2);
const reader = await openReader();
const groups = {};

const SUMMED = ["cells", "right", "doubted", "wrong", "missing", "silent", "invented", "headings", "columns"];
const OF_CLUBS = ["clubs", "clubs_right", "clubs_silent"];
const fresh = () => ({
  photos: 0,
  refused: 0,
  exact: 0,
  seconds: [],
  ...Object.fromEntries([...SUMMED, ...OF_CLUBS].map((name) => [name, 0])),
});

for (const file of readdirSync(folder).sort()) {
  if (!file.endsWith(".jpg")) continue;
  const truth = JSON.parse(readFileSync(join(folder, file.replace(".jpg", ".json")), "utf8"));
  // Digits of seven bars are a kind of their own: the reader was not taught them.
  const name = truth.screen.font === "DSEG7" ? "seven-segment" : truth.photo.level;
  groups[name] ??= fresh();
  const group = groups[name];
  group.photos++;
  const picture = unpacked(readFileSync(join(folder, file)), truth.photo.exif);
  const start = process.cpuUsage();
  const came = attempt(() => reader.read(picture));
  const { user, system } = process.cpuUsage(start);
  group.seconds.push((user + system) / 1e6);
  if (came.kind) {
    group.refused++;
    console.log(`${file} ${name}: ${came.kind} ${came.doubtful} of ${came.of}`);
    continue;
  }
  const found = score(truth, came, picture.scale);
  for (const what of [...SUMMED, ...OF_CLUBS]) group[what] += found[what];
  group.exact += found.isExact ? 1 : 0;
  const errors = [...found.errors, ...new Map(found.names.map((it) => [it.join(), it])).values()].map((error) =>
    error.join("|"),
  );
  console.log(
    `${file} ${name} ${truth.screen.font}${truth.screen.tiles ? " tiles" : ""}: ${found.right} of ${found.cells}, ` +
      `${found.doubted} in doubt, ${found.silent} silent, ${found.isExact ? "exact" : found.isGrid ? "not exact" : "another grid"}` +
      `${found.invented > 0 ? `, ${found.invented} invented` : ""};`,
    ...errors,
  );
}

const share = (part, of) => `${((100 * part) / Math.max(of, 1)).toFixed(2)} %`;
const middle = (values) => [...values].sort((one, other) => one - other)[values.length >> 1] ?? 0;
for (const [name, it] of Object.entries(groups)) {
  const read = it.photos - it.refused;
  console.log(
    `${name}: ${it.photos} photos, ${it.refused} refused; of ${it.cells} cells right ${share(it.right, it.cells)}, ` +
      `in doubt ${share(it.doubted, it.cells)}, silent ${it.silent} (${share(it.silent, it.cells)}); ` +
      `wholly exact ${it.exact} of ${read}; headings ${share(it.headings, it.columns)}; ` +
      `clubs of rows right ${share(it.clubs_right, it.clubs)}, wrong without a doubt ${it.clubs_silent} of ${it.clubs}; ` +
      `processor seconds ${middle(it.seconds).toFixed(1)}`,
  );
}
console.log(`memory of the package ${(reader.bytes() / 1e6).toFixed(0)} MB`);
if (figures) writeFileSync(figures, `${JSON.stringify(summary(), null, 2)}\n`);

function summary() {
  const of = ([name, { seconds, ...counts }]) => [
    name,
    { ...counts, processor_seconds: Number(middle(seconds).toFixed(1)) },
  ];
  return { memory_megabytes: Math.round(reader.bytes() / 1e6), ...Object.fromEntries(Object.entries(groups).map(of)) };
}

function attempt(read) {
  try {
    return read();
  } catch (thrown) {
    // A trap is no refusal.
    if (thrown?.kind === undefined) throw thrown;
    return thrown;
  }
}
