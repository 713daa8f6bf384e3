// Holds a reading of a photo against what was drawn: each number by its place, then rows, columns and headings.

const UNIT = /(yds?|mph|m\/s|rpm|deg|ft|m|°|%)$/i;

/** A number as written, so that two ways of writing the same one are equal. */
export function plain(text) {
  const bare = text.replaceAll("\u2212", "-").replaceAll(/[ +']/g, "").replaceAll(",", ".").replace(UNIT, "");
  const found = /^([LR]?)(-?)([\d.]*?)\.?([LR]?)$/.exec(bare);
  return found ? (found[1] || found[4]) + found[2] + found[3] : bare;
}

function value(text) {
  const found = /^([LR]?)(-?)([\d.]+)$/.exec(plain(text));
  if (!found) return null;
  const parts = found[3].split(".");
  const last = parts.length > 1 && parts.at(-1).length !== 3 ? `.${parts.pop()}` : "";
  const size = Number(parts.join("") + last);
  return found[2] || found[1] === "L" ? -size : size;
}

const isSame = (one, other) => plain(one) === plain(other) || (value(one) !== null && value(one) === value(other));

const middle = (quad) => [0, 1].map((axis) => quad.reduce((sum, corner) => sum + corner[axis], 0) / 4);

/** Whether a point lies in a quad, which may be a little wider than drawn. */
function holds(quad, point, scale) {
  const [a, b, , d] = quad.map((corner) => corner.map((it) => it * scale));
  const center = middle(quad).map((it) => it * scale);
  const [width, height] = [Math.hypot(b[0] - a[0], b[1] - a[1]), Math.hypot(d[0] - a[0], d[1] - a[1])];
  const off = [point[0] - center[0], point[1] - center[1]];
  const along = Math.abs((off[0] * (b[0] - a[0]) + off[1] * (b[1] - a[1])) / Math.max(width, 1e-6));
  const down = Math.abs((off[0] * (d[0] - a[0]) + off[1] * (d[1] - a[1])) / Math.max(height, 1e-6));
  return along <= width / 2 + 0.35 * height && down <= height / 2;
}

const letters = (text) =>
  text
    .toLowerCase()
    .replaceAll(/\(.*/g, "")
    .replaceAll(/[^a-z]/g, "");

/** How many rows are given to the club that was drawn, and how many to another without a doubt. */
function clubs(truth, reading, rows) {
  const bare = (text) => text.toLowerCase().replaceAll(/[^a-z0-9]/g, "");
  const drawn = truth.clubs ?? [];
  const at = drawn.map((club, row) => ({ club, row: [...(rows.get(`d${row}`) ?? [])][0] }));
  const cells = (row) => reading.cells.filter((cell) => cell.row === row && !reading.columns[cell.column].is_number);
  const found = { clubs: drawn.length, clubs_right: 0, clubs_silent: 0, names: [] };
  for (const { club, row } of at) {
    const here = row === undefined ? [] : cells(row);
    if (here.some(({ text }) => bare(text) === bare(club))) found.clubs_right++;
    else {
      const isSilent = here.every(({ doubts }) => doubts.length === 0);
      if (isSilent) found.clubs_silent++;
      found.names.push([club, here.map(({ text }) => text).join(" ") || null, isSilent ? "SILENT" : "doubted"]);
    }
  }
  return found;
}

/** What came of one photo; `scale` is that of the picture read to the photo drawn. */
export function score(truth, reading, scale) {
  const read = reading.cells.map((cell) => ({ ...cell, center: middle(cell.quad) }));
  const found = { cells: truth.cells.length, right: 0, doubted: 0, wrong: 0, missing: 0, silent: 0, errors: [] };
  const [rows, columns] = [new Map(), new Map()];
  const same = (pairs, drawn, seen) => {
    pairs.set(`d${drawn}`, (pairs.get(`d${drawn}`) ?? new Set()).add(seen));
    pairs.set(`s${seen}`, (pairs.get(`s${seen}`) ?? new Set()).add(drawn));
  };
  const used = new Set();
  for (const { text, quad, r, c } of truth.cells) {
    const here = read.filter(({ center, column }) => reading.columns[column].is_number && holds(quad, center, scale));
    const width = ({ quad: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1]);
    const cell = here.sort((one, other) => width(other) - width(one))[0];
    const isDoubted = (cell?.doubts.length ?? 0) > 0;
    if (cell) {
      used.add(cell);
      same(rows, r, cell.row);
      same(columns, c, cell.column);
    }
    if (isDoubted) found.doubted++;
    if (cell && isSame(text, cell.text)) {
      found.right++;
      continue;
    }
    if (!cell || cell.text === "") found.missing++;
    else found.wrong++;
    if (!isDoubted) found.silent++;
    found.errors.push([text, cell?.text ?? null, cell?.other ?? null, cell?.doubts.join("+") || "SILENT"]);
  }
  // A number where none was drawn, in a column that was.
  const drawn = new Set([...columns.keys()].filter((key) => key.startsWith("s")).map((key) => Number(key.slice(1))));
  found.invented = read.filter((cell) => !used.has(cell) && drawn.has(cell.column) && value(cell.text) !== null).length;
  const isGrid = [...rows.values(), ...columns.values()].every((seen) => seen.size === 1);
  found.isExact = found.right === found.cells && found.invented === 0 && (isGrid || truth.screen.tiles);
  found.isGrid = isGrid;
  const heads = truth.columns.map(({ j, name }) => {
    const [at] = columns.get(`d${j}`) ?? [];
    return at !== undefined && letters(reading.columns[at].heading) === letters(name);
  });
  found.headings = heads.filter(Boolean).length;
  found.columns = truth.columns.length;
  Object.assign(found, clubs(truth, reading, rows));
  return found;
}
