// Invented plain tables of shots, as many and as different as wanted, with the headings, units and marks that people use: what `first-answers.mjs` asks about, so that the abridged
// core knows its way with shots that nobody has seen yet. The same seed gives the same table.

const MEASURES = {
  "Carry (yd)": [210, 270, 9, 1],
  "Offline (yd)": [-12, 12, 14, 1],
  "Ball speed (mph)": [130, 165, 3, 1],
  "Launch angle (deg)": [9, 16, 1.5, 1],
  "Spin rate (rpm)": [2200, 3600, 300, 0],
  "Club speed (mph)": [88, 112, 1.5, 1],
  "Total (yd)": [225, 290, 11, 0],
  "Apex (ft)": [60, 110, 8, 0],
  "Smash factor": [1.42, 1.49, 0.02, 2],
  "Descent angle (deg)": [34, 44, 2, 1],
};
/** Headings as other people write them. */
const WRITTEN = [
  (name) => name,
  (name) => name,
  (name) => name.replace(/ \(.*/, ""),
  (name) => name.replace(/ \(.*/, "").toLowerCase(),
  inMetric,
];
const NAMES = ["Own driver", "Driver B", "7 iron new", "Club 3", "Mine", "New", "Fitted"];

/** A table with headings, commas or tabs between its cells. */
export function plainSession(seed) {
  const draw = dice(seed);
  const pick = (list) => list[Math.floor(draw() * list.length)];
  const between = (low, high) => low + draw() * (high - low);
  const whole = (low, high) => Math.floor(between(low, high + 1));
  const builds = shuffled(NAMES, draw).slice(0, pick([2, 2, 2, 3, 4]));
  const columns = ["Carry (yd)", ...shuffled(Object.keys(MEASURES).slice(1), draw).slice(0, whole(0, 7))];
  const shots = turns(
    pick(["in turn", "reversed", "blocks", "drawn"]),
    builds.length,
    whole(2, 24),
    pick([1, 1, 2, 3]),
    draw,
  );
  const centers = columns.map((name) => between(MEASURES[name][0], MEASURES[name][1]));
  const gaps = builds.map((_, build) => (build === 0 ? 0 : pick([0, 0, 0.3, 0.8, 1.5, 3]) * pick([1, -1])));
  const [withRound, withNumber] = [draw() < 0.4, draw() < 0.4];
  const [drift, missing, isRounded] = [draw() < 0.2 ? 1.5 : 0, draw() < 0.3 ? 0.03 : 0, draw() < 0.3];
  const [mark, point] = pick([
    [",", "."],
    [",", "."],
    ["\t", "."],
    [";", ","],
  ]);
  const written = pick(WRITTEN);
  const value = (name, at, { build }, share, carry) => {
    const [, , scatter, decimals] = MEASURES[name];
    const strayed = draw() < 0.02 ? -5 : 0;
    const drawn = centers[at] + scatter * (gaps[build] + normal(draw) + drift * share + strayed);
    const shot = believable(name, drawn, carry);
    const isLost = draw() < missing;
    const shown = shot * unitOf(name, written(name));
    return { shot, text: isLost ? "" : shown.toFixed(isRounded && scatter > 1 ? 0 : decimals).replace(".", point) };
  };
  const values = (shot, at) => {
    const carry = value("Carry (yd)", 0, shot, at / shots.length);
    const others = columns.slice(1).map((name, column) => value(name, column + 1, shot, at / shots.length, carry.shot));
    return [carry, ...others].map(({ text }) => text);
  };
  const rows = shots.map((shot, at) => [
    ...(withNumber ? [at + 1] : []),
    builds[shot.build],
    ...(withRound ? [shot.round] : []),
    ...values(shot, at),
  ]);
  const headings = [
    ...(withNumber ? ["Shot"] : []),
    pick(["Build", "Club", "club"]),
    ...(withRound ? ["Round"] : []),
    ...columns.map(written),
  ];
  const end = pick(["\n", "\n", "\r\n"]);
  return [headings, ...rows].map((cells) => cells.join(mark)).join(end) + pick(["", end]);
}

/** What goes with a carry, so that nothing about the table is in doubt: what is asked then, the whole core asks. */
function believable(name, drawn, carry) {
  const [low, high] = MEASURES[name];
  const around = (drawn - (low + high) / 2) / (high - low);
  if (name === "Total (yd)") return carry + Math.max(2, 12 + 6 * around);
  if (name === "Ball speed (mph)") return carry * 0.61 + 2 * around;
  if (name === "Club speed (mph)") return carry * 0.42 + 2 * around;
  if (name === "Smash factor") return Math.min(1.54, drawn);
  return name === "Spin rate (rpm)" ? Math.max(900, drawn) : drawn;
}

/** What a value is multiplied by in the unit of its heading; a height without one is in yards. */
function unitOf(name, heading) {
  if (name.endsWith("(ft)") && !heading.includes("(")) return 1 / 3;
  if (heading === name || !heading.includes("(")) return 1;
  const factors = { "(yd)": 0.9144, "(mph)": 1.609344, "(ft)": 0.3048 };
  return factors[name.slice(name.indexOf("("))] ?? 1;
}

/** The same heading with the units of the other half of the world. */
function inMetric(name) {
  return name.replace("(yd)", "(m)").replace("(mph)", "(km/h)").replace("(ft)", "(m)");
}

function turns(order, builds, rounds, atOnce, draw) {
  const clubs = Array.from({ length: builds }, (_, build) => build);
  const hit = (build, round) => Array.from({ length: atOnce }, () => ({ build, round }));
  if (order === "blocks")
    return clubs.flatMap((build) => Array.from({ length: rounds }, (_, round) => hit(build, round + 1)).flat());
  return Array.from({ length: rounds }, (_, round) => {
    const now =
      order === "drawn" ? shuffled(clubs, draw) : order === "reversed" && round % 2 ? [...clubs].reverse() : clubs;
    return now.flatMap((build) => hit(build, round + 1));
  }).flat();
}

/** Numbers from 0 to 1, by a linear congruence. */
export function dice(seed) {
  let state = (Math.imul(seed, 2654435761) ^ 0x9e3779b9) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Near enough to a normal deviate: the sum of twelve. */
const normal = (draw) => Array.from({ length: 12 }, draw).reduce((sum, one) => sum + one, -6);

function shuffled(list, draw) {
  const left = [...list];
  return list.map(() => left.splice(Math.floor(draw() * left.length), 1)[0]);
}
