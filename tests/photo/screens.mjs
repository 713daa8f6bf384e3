// Invented tables of golf numbers as plain pages: every design and number is made up from a seed and imitates nothing.
import { fontCss, pickFont } from "./fonts.mjs";
import { seeded } from "./random.mjs";

/** What a column can be: its headings in plain speech, units, mean, spread, decimals, and whether it has a side. */
const COLUMNS = [
  {
    kind: "carry",
    names: ["Carry", "Carry dist", "Carry distance", "Carry avg"],
    unit: ["yd", "m"],
    mean: [95, 260],
    sd: 7,
    dp: [0, 1],
  },
  { kind: "total", names: ["Total", "Total dist"], unit: ["yd", "m"], mean: [110, 285], sd: 8, dp: [0, 1] },
  {
    kind: "offline",
    names: ["Offline", "Side", "Off line"],
    unit: ["yd", "m"],
    mean: [-4, 6],
    sd: 11,
    dp: [0, 1],
    signed: true,
  },
  { kind: "ballspeed", names: ["Ball speed", "Ball spd"], unit: ["mph", "m/s"], mean: [105, 165], sd: 2.4, dp: [0, 1] },
  { kind: "clubspeed", names: ["Club speed", "Club spd"], unit: ["mph"], mean: [72, 112], sd: 1.6, dp: [0, 1] },
  { kind: "launch", names: ["Launch", "Launch angle"], unit: ["°", "deg"], mean: [11, 26], sd: 1.3, dp: [1] },
  {
    kind: "spin",
    names: ["Spin", "Spin rate", "Back spin"],
    unit: ["rpm"],
    mean: [2200, 8800],
    sd: 420,
    dp: [0],
    big: true,
  },
  {
    kind: "height",
    names: ["Height", "Peak height", "Apex", "Max height"],
    unit: ["yd", "ft", "m"],
    mean: [24, 110],
    sd: 3,
    dp: [0, 1],
  },
  { kind: "descent", names: ["Descent", "Land angle"], unit: ["°", "deg"], mean: [34, 51], sd: 1.8, dp: [0, 1] },
  {
    kind: "direction",
    names: ["Direction", "Start dir"],
    unit: ["°", "deg"],
    mean: [-1, 1],
    sd: 2.1,
    dp: [1],
    signed: true,
  },
  { kind: "ratio", names: ["Ratio", "Speed ratio"], unit: [""], mean: [1.3, 1.48], sd: 0.03, dp: [2] },
];
const CLUB_NAMES = [
  "Wood five",
  "8i old",
  "8i new",
  "Hybrid B",
  "7 iron A",
  "7 iron B",
  "Club A",
  "Club B",
  "Driver 1",
  "Driver 2",
  "Iron six",
  "Demo 3",
  "Own 7i",
  "New 7i",
  "4H",
  "PW",
];

function look(r, dark) {
  const hue = r.int(0, 359);
  return dark
    ? {
        dark,
        bg: `hsl(${hue} ${r.int(0, 30)}% ${r.int(4, 14)}%)`,
        zebra: `hsl(${hue} ${r.int(0, 30)}% ${r.int(15, 22)}%)`,
        ink: `hsl(${hue} ${r.int(0, 20)}% ${r.int(78, 98)}%)`,
        dim: `hsl(${hue} ${r.int(0, 20)}% ${r.int(52, 72)}%)`,
        line: `hsl(${hue} 15% ${r.int(22, 34)}%)`,
        head: `hsl(${hue} ${r.int(10, 50)}% ${r.int(12, 26)}%)`,
        accent: `hsl(${r.int(0, 359)} 80% 62%)`,
      }
    : {
        dark,
        bg: `hsl(${hue} ${r.int(0, 25)}% ${r.int(94, 100)}%)`,
        zebra: `hsl(${hue} ${r.int(0, 30)}% ${r.int(87, 93)}%)`,
        ink: `hsl(${hue} ${r.int(0, 30)}% ${r.int(5, 25)}%)`,
        dim: `hsl(${hue} ${r.int(0, 20)}% ${r.int(35, 48)}%)`,
        line: `hsl(${hue} 10% ${r.int(70, 84)}%)`,
        head: `hsl(${hue} ${r.int(10, 40)}% ${r.int(80, 92)}%)`,
        accent: `hsl(${r.int(0, 359)} 75% 36%)`,
      };
}

function writeNumber(v, col, style) {
  const dp = col.dpUsed;
  const a = Math.abs(v).toFixed(dp);
  const zero = Number(a) === 0;
  let body = a;
  if (style.decimalComma) body = body.replace(".", ",");
  if (col.big && style.thousands) body = body.replace(/^(\d+)(\d{3})$/, `$1${style.thousands}$2`);
  if (!col.signed) return body;
  switch (style.side) {
    case "suffix":
      return zero ? body : `${body}${style.sideGap}${v < 0 ? "L" : "R"}`;
    case "prefix":
      return zero ? body : `${v < 0 ? "L" : "R"}${style.sideGap}${body}`;
    case "plus":
      return zero ? body : `${v < 0 ? style.minus : "+"}${body}`;
    default:
      return v < 0 && !zero ? `${style.minus}${body}` : body;
  }
}

export function makeSpec(seed, i) {
  const r = seeded(seed * 1009 + i * 7919);
  const tiles = r.chance(0.2);
  const dark = r.chance(0.5);
  const font = pickFont(r, true);
  const labelFont = font.seg ? pickFont(r, false) : font;
  const style = {
    decimalComma: !font.seg && r.chance(0.08),
    side: font.seg ? "minus" : r.pick(["minus", "minus", "suffix", "suffix", "prefix", "plus"]),
    sideGap: r.pick(["", " "]),
    minus: font.seg ? "-" : r.pick(["-", "-", "\u2212"]),
    thousands: font.seg ? "" : r.pick(["", "", ",", ","]),
  };
  if (style.decimalComma && style.thousands === ",") style.thousands = ".";
  const ncol = r.int(4, 8);
  const first = COLUMNS[0];
  const cols = [first, ...r.shuffle(COLUMNS.slice(1)).slice(0, ncol - 1)].map((c) => ({
    ...c,
    name: r.pick(c.names),
    unitUsed: r.pick(c.unit),
    dpUsed: r.pick(c.dp),
    mu: r.range(...c.mean),
  }));
  const units = tiles ? r.pick(["label", "after"]) : r.pick(["paren", "paren", "below", "none"]);
  const upper = r.chance(0.3);
  const clubs = r.shuffle(CLUB_NAMES).slice(0, 2);
  const nrow = tiles ? 1 : r.int(5, 30);
  const hasClub = tiles ? false : r.chance(0.75);
  const hasShot = tiles ? false : r.chance(0.6) || !hasClub;
  const hasMean = !tiles && r.chance(0.35);
  const rows = [];
  for (let k = 0; k < nrow; k++)
    rows.push(cols.map((c) => c.mu + c.sd * r.normal() + (k >= nrow / 2 ? c.sd * 0.5 : 0)));
  return {
    i,
    r,
    tiles,
    dark,
    font,
    labelFont,
    weight: r.pick(font.weights),
    style,
    cols,
    units,
    upper,
    clubs,
    nrow,
    hasClub,
    hasShot,
    hasMean,
    rows,
    look: look(r, dark),
    align: r.pick(["right", "right", "center", "left"]),
    zebra: r.chance(0.45),
    lines: r.pick(["none", "rows", "rows", "grid"]),
    density: r.pick([1, 1.5, 2]),
    fs: tiles ? r.int(34, 64) : r.int(14, 22),
    tabular: r.chance(0.7),
    padX: r.int(8, 22),
    padY: r.range(3, 11),
    perRow: r.pick([2, 3, 4]),
  };
}

const esc = (s) => s.replace(/&/g, "&amp;").replace(/</g, "&lt;");
function heading(c, s) {
  const name = s.upper ? c.name.toUpperCase() : c.name;
  if (!c.unitUsed || s.units === "none" || s.units === "after") return `<span>${esc(name)}</span>`;
  if (s.units === "below") return `<span>${esc(name)}</span><br><small>${esc(c.unitUsed)}</small>`;
  return `<span>${esc(name)} (${esc(c.unitUsed)})</span>`;
}

export function page(s) {
  const L = s.look;
  const css = `
${fontCss(s.font)}${s.labelFont === s.font ? "" : fontCss(s.labelFont)}
*{box-sizing:border-box} body{margin:0;background:${L.bg};color:${L.ink};font-family:"${s.labelFont.family}",sans-serif;font-size:${s.fs}px;font-weight:${s.labelFont === s.font ? s.weight : 400};padding:28px}
.n{font-family:"${s.font.family}","${s.labelFont.family}",sans-serif;font-weight:${s.weight};${s.tabular ? "font-variant-numeric:tabular-nums;" : ""}${s.font.seg ? "letter-spacing:.06em;" : ""}white-space:nowrap}
table{border-collapse:collapse;background:${L.bg}} th,td{padding:${s.padY}px ${s.padX}px;text-align:${s.align};white-space:nowrap}
th{background:${L.head};color:${L.dim};font-weight:${Math.max(400, s.weight)};font-size:.88em;vertical-align:bottom} .t{text-align:left;color:${L.dim}}
${s.zebra ? `tr:nth-child(even) td{background:${L.zebra}}` : ""}
${s.lines !== "none" ? `td,th{border-bottom:1px solid ${L.line}}` : ""}${s.lines === "grid" ? `td,th{border-right:1px solid ${L.line}}` : ""}
tr.mean td{border-top:2px solid ${L.dim};color:${L.accent}}
.tiles{display:grid;grid-template-columns:repeat(${s.perRow},max-content);gap:18px}
.tile{background:${L.zebra};padding:14px 22px;border-radius:${(s.i % 3) * 6}px;text-align:${s.align === "right" ? "left" : s.align}} .tile small{display:block;font-size:.36em;color:${L.dim}} .tile em{font-style:normal;font-size:.4em;color:${L.dim};margin-left:.3em}
h1{font-size:1.05em;margin:0 0 12px;color:${L.dim};font-weight:500}`;
  const truth = {
    columns: s.cols.map((c, j) => ({
      j,
      kind: c.kind,
      name: c.name,
      unit: c.unitUsed,
      signed: !!c.signed,
      dp: c.dpUsed,
    })),
    rows: 0,
    cells: [],
    // The club of each row, where the screen says it.
    clubs: s.hasClub ? s.rows.map((_, k) => s.clubs[k < s.nrow / 2 ? 0 : 1]) : [],
  };
  let body = "";
  const cell = (r, j, v) => {
    const c = s.cols[j];
    const text = writeNumber(v, c, s.style);
    const value = Number(v.toFixed(c.dpUsed));
    truth.cells.push({ r, c: j, text, value: value === 0 ? 0 : value });
    return `<span class="n" data-r="${r}" data-c="${j}">${esc(text)}</span>`;
  };
  if (s.tiles) {
    body =
      `<h1>${esc(s.clubs[0])}, average of ${s.r.int(5, 14)} shots</h1><div class="tiles" id="main">` +
      s.cols
        .map(
          (c, j) =>
            `<div class="tile"><small>${s.units === "label" ? heading(c, { ...s, units: "paren" }) : heading(c, s)}</small>${cell(0, j, s.rows[0][j])}${s.units === "after" && c.unitUsed ? `<em>${esc(c.unitUsed)}</em>` : ""}</div>`,
        )
        .join("") +
      "</div>";
    truth.rows = 1;
  } else {
    const th =
      (s.hasShot ? `<th class="t">${s.r.pick(["#", "Shot", "No."])}</th>` : "") +
      (s.hasClub ? `<th class="t">Club</th>` : "") +
      s.cols.map((c, j) => `<th data-h="${j}">${heading(c, s)}</th>`).join("");
    let trs = "";
    s.rows.forEach((row, k) => {
      trs +=
        "<tr>" +
        (s.hasShot ? `<td class="t">${k + 1}</td>` : "") +
        (s.hasClub ? `<td class="t">${esc(truth.clubs[k])}</td>` : "") +
        row.map((v, j) => `<td>${cell(k, j, v)}</td>`).join("") +
        "</tr>";
    });
    truth.rows = s.nrow;
    if (s.hasMean) {
      const lead = (s.hasShot ? 1 : 0) + (s.hasClub ? 1 : 0);
      trs +=
        `<tr class="mean"><td class="t" colspan="${lead}">Average</td>` +
        s.cols.map((_, j) => `<td>${cell(s.nrow, j, s.rows.reduce((a, x) => a + x[j], 0) / s.nrow)}</td>`).join("") +
        "</tr>";
      truth.rows++;
    }
    body = `<table id="main"><thead><tr>${th}</tr></thead><tbody>${trs}</tbody></table>`;
  }
  return { html: `<!doctype html><meta charset="utf-8"><style>${css}</style><body>${body}</body>`, truth };
}
