/**
 * Geometry of 'Shots in order': every shot of one measure in the order hit. Pure; positions across are
 * percent of the width, heights are pixels.
 *
 * Few shots share one field, where clubs lie over each other; many get a field for each club, on one scale.
 */
import { extent, mean } from "d3-array";
import { roundIn } from "../chart/scale.js";

/** One shot as the picture needs it; `value` is null where the measure was not read. */
export interface OrderedShot {
  build: number;
  round: number | null;
  value: number | null;
  leftOut: boolean;
  /** Whether the golfer noted something of it; it counts all the same. */
  noted?: boolean;
}

/** A drift that the report has found: the change from the first to the last shot of these builds. */
export interface Drift {
  change: number;
  builds: readonly number[];
}

export interface Point {
  /** The shot's place in the session, from 0. */
  index: number;
  build: number;
  value: number;
  leftOut: boolean;
  noted: boolean;
  at: number;
  y: number;
}

/** A stretch of a line that belongs to a build. */
export interface Line {
  build: number;
  from: number;
  to: number;
  yFrom: number;
  yTo: number;
}

export interface Field {
  /** The one build that it shows; null for all of them. */
  build: number | null;
  top: number;
  bottom: number;
  ticks: { value: number; y: number }[];
}

export interface OrderGeometry {
  height: number;
  /** Where the shots begin, percent; the figures of the scale stand before it. */
  left: number;
  /** What lengths that belong to writing are multiplied by. */
  text: number;
  top: number;
  bottom: number;
  fields: Field[];
  points: Point[];
  /** Stretches of one round after the other; `shaded` every second one. */
  bands: { round: number; from: number; to: number; shaded: boolean }[];
  /** The average of all shots of a build, from its first shot to its last. */
  averages: (Line & { value: number })[];
  /** The drift, through the middle of each of its builds' shots; empty without one. */
  drifts: Line[];
  /** Size of a marker against its full size. */
  marker: number;
}

const TOP = 12;
const FIELD = 200;
const LANE = 84;
const GAP = 8;
const BOTTOM = 26;
/** Free inside a field above the highest and below the lowest shot. */
const MARGIN = 10;
/** Percent left free on the left, for the figures of the scale. */
const LEFT = 13;
const RIGHT = 2;
/** More shots than these lie too close in one field of a phone's width. */
const TOGETHER = 80;
/** Markers are full size up to so many shots in a field, and shrink no further than to `SMALLEST`. */
const ROOMY = 20;
const SMALLEST = 0.42;

/** The picture, or null when no shot has a value; `scale` is what one is in the unit shown: marks are round there; `text` how large
 * the reader's text is. */
export function orderGeometry(
  shots: readonly OrderedShot[],
  drift: Drift | null = null,
  scale = 1,
  text = 1,
): OrderGeometry | null {
  const [low, high] = extent(shots, ({ value }) => value ?? undefined);
  if (low === undefined || high === undefined) return null;
  const half = (high - low) / 2 || Math.max(Math.abs(low) * 0.01, 1);
  const range = { middle: (low + high) / 2, half };
  const left = LEFT * text;
  const step = (100 - left - RIGHT) / shots.length;
  const across = (index: number) => left + step * (index + 0.5);
  const builds = [...new Set(shots.filter(({ value }) => value !== null).map(({ build }) => build))].sort(
    (a, b) => a - b,
  );
  const fields = fieldsFor(shots.length > TOGETHER ? builds : [null], range, scale);
  const y = (build: number, value: number) => {
    const field = fields.find((one) => one.build === build) ?? fields[0]!;
    return height(value, range, field);
  };
  const points = shots.flatMap(({ value, build, leftOut, noted = false }, index) =>
    value === null ? [] : [{ index, build, value, leftOut, noted, at: across(index), y: y(build, value) }],
  );
  const bottom = fields.at(-1)!.bottom;
  const crowd = Math.max(
    ...fields.map(({ build }) =>
      build === null ? shots.length : points.filter((point) => point.build === build).length,
    ),
  );
  return {
    height: bottom + BOTTOM * text,
    left,
    text,
    top: TOP,
    bottom,
    fields,
    points,
    bands: bands(shots).map(({ round, first, last }, at) => ({
      round,
      from: left + step * first,
      to: left + step * (last + 1),
      shaded: at % 2 === 0,
    })),
    averages: builds.map((build) => {
      const own = points.filter((point) => point.build === build);
      const value = mean(own, (point) => point.value)!;
      return { build, value, from: own[0]!.at, to: own.at(-1)!.at, yFrom: y(build, value), yTo: y(build, value) };
    }),
    drifts: drift ? drifts(points, drift, across, y) : [],
    marker: Math.max(SMALLEST, Math.min(1, Math.sqrt(ROOMY / crowd))),
  };
}

interface Span {
  middle: number;
  half: number;
}

function fieldsFor(builds: readonly (number | null)[], range: Span, scale: number): Field[] {
  const size = builds.length > 1 ? LANE : FIELD;
  return builds.map((build, index) => {
    const top = TOP + index * (size + GAP);
    const field = { top, bottom: top + size };
    const marks = roundIn(scale, range.middle - range.half, range.middle + range.half, size / 40);
    return { build, ...field, ticks: marks.map((value) => ({ value, y: height(value, range, field) })) };
  });
}

function height(value: number, { middle, half }: Span, { top, bottom }: Pick<Field, "top" | "bottom">): number {
  return (top + bottom) / 2 - ((value - middle) / half) * ((bottom - top) / 2 - MARGIN);
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

/** One slope for all of its builds, each at its own level, as the report's drift is meant. */
function drifts(
  points: readonly Point[],
  { change, builds }: Drift,
  across: (index: number) => number,
  y: (build: number, value: number) => number,
): Line[] {
  const theirs = points.filter(({ build }) => builds.includes(build));
  const span = (theirs.at(-1)?.index ?? 0) - (theirs[0]?.index ?? 0);
  if (span === 0) return [];
  return builds.flatMap((build) => {
    const own = theirs.filter((point) => point.build === build);
    const [first, last] = [own[0], own.at(-1)];
    if (!first || !last) return [];
    const center = { index: mean(own, (point) => point.index)!, value: mean(own, (point) => point.value)! };
    const value = (index: number) => center.value + ((index - center.index) * change) / span;
    return [
      {
        build,
        from: across(first.index),
        to: across(last.index),
        yFrom: y(build, value(first.index)),
        yTo: y(build, value(last.index)),
      },
    ];
  });
}
