/**
 * Geometry of 'Shots in order': every shot of one measure in the order hit. Pure; positions across are
 * percent of the width, heights are pixels.
 */
import { extent, mean, ticks } from "d3-array";

/** One shot as the picture needs it; `value` is null where the measure was not read. */
export interface OrderedShot {
  build: number;
  round: number | null;
  value: number | null;
  leftOut: boolean;
}

export interface Point {
  /** The shot's place in the session, from 0. */
  index: number;
  build: number;
  value: number;
  leftOut: boolean;
  at: number;
  y: number;
}

export interface OrderGeometry {
  height: number;
  /** Top and bottom of the field that shots lie in. */
  top: number;
  bottom: number;
  points: Point[];
  /** Stretches of one round after the other; `shaded` every second one. */
  bands: { round: number; from: number; to: number; shaded: boolean }[];
  /** The average of all shots of a build, from its first shot to its last. */
  averages: { build: number; value: number; y: number; from: number; to: number }[];
  ticks: { value: number; y: number }[];
  /** Size of a marker against its full size. */
  marker: number;
}

const TOP = 12;
const FIELD = 200;
const BOTTOM = 26;
/** Percent left free on the left, for the figures of the scale. */
const LEFT = 13;
const RIGHT = 2;
/** Markers are full size up to so many shots, and shrink no further than to `SMALLEST`. */
const ROOMY = 20;
const SMALLEST = 0.5;

/** The picture, or null when no shot has a value. */
export function orderGeometry(shots: readonly OrderedShot[]): OrderGeometry | null {
  const [low, high] = extent(shots, ({ value }) => value ?? undefined);
  if (low === undefined || high === undefined) return null;
  const step = (100 - LEFT - RIGHT) / shots.length;
  const across = (index: number) => LEFT + step * (index + 0.5);
  const middle = (low + high) / 2;
  const half = (high - low) / 2 || Math.max(Math.abs(middle) * 0.01, 1);
  const inner = FIELD - 24;
  const y = (value: number) => TOP + FIELD / 2 - ((value - middle) / half) * (inner / 2);
  const points = shots.flatMap(({ value, build, leftOut }, index) =>
    value === null ? [] : [{ index, build, value, leftOut, at: across(index), y: y(value) }],
  );
  return {
    height: TOP + FIELD + BOTTOM,
    top: TOP,
    bottom: TOP + FIELD,
    points,
    bands: bands(shots).map(({ round, first, last }, at) => ({
      round,
      from: LEFT + step * first,
      to: LEFT + step * (last + 1),
      shaded: at % 2 === 0,
    })),
    averages: averages(points, y),
    ticks: ticks(middle - half, middle + half, 5).map((value) => ({ value, y: y(value) })),
    marker: Math.max(SMALLEST, Math.min(1, Math.sqrt(ROOMY / shots.length))),
  };
}

/** Neighbors of one round; shots without a round lie in none. */
function bands(shots: readonly OrderedShot[]): { round: number; first: number; last: number }[] {
  const found: { round: number; first: number; last: number }[] = [];
  shots.forEach(({ round }, index) => {
    const open = found.at(-1);
    if (round === null) return;
    if (open && open.round === round && open.last === index - 1) open.last = index;
    else found.push({ round, first: index, last: index });
  });
  return found;
}

function averages(points: readonly Point[], y: (value: number) => number): OrderGeometry["averages"] {
  const builds = [...new Set(points.map(({ build }) => build))].sort((a, b) => a - b);
  return builds.map((build) => {
    const own = points.filter((point) => point.build === build);
    const value = mean(own, (point) => point.value) ?? 0;
    return { build, value, y: y(value), from: own[0]!.at, to: own.at(-1)!.at };
  });
}
