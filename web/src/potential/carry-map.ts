/**
 * Geometry of the carry map: launch across, spin upward, areas and lines of equal carry, shots on it. Pure.
 *
 * Lengths are in units of a picture that is `WIDTH` wide.
 */
import { ticks } from "d3-array";
import { contours } from "d3-contour";

export const WIDTH = 340;
const LEFT = 46;
const RIGHT = 8;
const TOP = 8;
const FIELD = 270;
const BOTTOM = 44;
/** The corner in which the axis upward is named. */
const AXIS_NAME = { width: 90, height: 26 };

export interface MapInput {
  launches: readonly number[];
  spins: readonly number[];
  /** Row after row of spin. */
  carries: readonly number[];
  lines: readonly number[];
  shots: readonly { build: number; launch: number; spin: number }[];
  /** The group that the map is for, and the band of its best. */
  own: { build: number | null; launch: number; spin: number };
  band: { launchLow: number; launchHigh: number; spinLow: number; spinHigh: number };
  /** How large the reader's text is beside the page's own. */
  text?: number;
}

export interface MapGeometry {
  height: number;
  /** What lengths that belong to writing are multiplied by. */
  text: number;
  field: { x: number; y: number; width: number; height: number };
  /** Everything that carries at least `value`, from the lowest to the highest. */
  areas: { value: number; path: string; shade: number }[];
  labels: { value: number; x: number; y: number }[];
  shots: { build: number; x: number; y: number }[];
  own: { build: number | null; x: number; y: number };
  band: { x: number; y: number; width: number; height: number };
  launches: { value: number; x: number }[];
  spins: { value: number; y: number }[];
}

export function mapGeometry(input: MapInput): MapGeometry {
  const { launches, spins, carries, lines, text = 1 } = input;
  const left = LEFT * text;
  const [launchLow, launchHigh] = [launches[0] ?? 0, launches.at(-1) ?? 1];
  const [spinLow, spinHigh] = [spins[0] ?? 0, spins.at(-1) ?? 1];
  const width = WIDTH - left - RIGHT;
  const x = (launch: number) =>
    left + ((clamp(launch, launchLow, launchHigh) - launchLow) / (launchHigh - launchLow)) * width;
  const y = (spin: number) => TOP + FIELD - ((clamp(spin, spinLow, spinHigh) - spinLow) / (spinHigh - spinLow)) * FIELD;
  // Grid cells count from their edges: a value stands in the middle of its cell.
  const place = ([column, row]: readonly number[]): [number, number] => [
    left + clamp(((column ?? 0) - 0.5) / (launches.length - 1), 0, 1) * width,
    TOP + FIELD - clamp(((row ?? 0) - 0.5) / (spins.length - 1), 0, 1) * FIELD,
  ];
  const areas = contours()
    .size([launches.length, spins.length])
    .thresholds([...lines])([...carries]);
  const shapes = areas.map(({ value, coordinates }) => ({
    value,
    rings: coordinates.flatMap((polygon) => polygon.map((ring) => ring.map((point) => place(point)))),
  }));
  return {
    height: TOP + FIELD + BOTTOM * text,
    text,
    field: { x: left, y: TOP, width, height: FIELD },
    areas: shapes.map(({ value, rings }, index) => ({
      value,
      path: rings.map((ring) => `M${ring.map(([px, py]) => `${round(px)} ${round(py)}`).join("L")}Z`).join(""),
      shade: (index + 1) / shapes.length,
    })),
    labels: labels(shapes, { left, width, text }, [x(input.own.launch), y(input.own.spin)]),
    shots: input.shots.map(({ build, launch, spin }) => ({ build, x: x(launch), y: y(spin) })),
    own: { build: input.own.build, x: x(input.own.launch), y: y(input.own.spin) },
    band: {
      x: x(input.band.launchLow),
      y: y(input.band.spinHigh),
      width: Math.max(x(input.band.launchHigh) - x(input.band.launchLow), 2),
      height: Math.max(y(input.band.spinLow) - y(input.band.spinHigh), 2),
    },
    launches: ticks(launchLow, launchHigh, 6 / text).map((value) => ({ value, x: x(value) })),
    spins: ticks(spinLow, spinHigh, 6 / text).map((value) => ({ value, y: y(value) })),
  };
}

type Point = [number, number];

/** Each line's figure stands on it inside the field, apart from the others and from the
 * large mark. */
function labels(
  shapes: readonly { value: number; rings: readonly (readonly Point[])[] }[],
  { left, width, text }: { left: number; width: number; text: number },
  own: Point,
): { value: number; x: number; y: number }[] {
  const placed: { value: number; x: number; y: number }[] = [];
  for (const { value, rings } of shapes) {
    const inner = rings
      .flat()
      .filter(
        ([px, py]) =>
          px > left + 14 * text && px < left + width - 16 * text && py > TOP + 10 * text && py < TOP + FIELD - 8,
      );
    const free = inner.filter(
      ([px, py]) =>
        !(px < left + AXIS_NAME.width * text && py < TOP + AXIS_NAME.height * text) &&
        Math.hypot(own[0] - px, own[1] - py) > 34 &&
        placed.every((other) => Math.hypot(other.x - px, (other.y - py) * 1.6) > 34 * text),
    );
    const best = free.sort((a, b) => nearness(a, left, width) - nearness(b, left, width))[0];
    if (best) placed.push({ value, x: best[0], y: best[1] });
  }
  return placed;
}

/** Distance from the way up the middle of the picture's upper left, where lines lie apart. */
const nearness = ([px, py]: Point, left: number, width: number): number =>
  Math.abs(px - (left + width * 0.3)) + 0.4 * Math.abs(py - (TOP + FIELD * 0.35));

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
const round = (value: number): number => Math.round(value * 10) / 10;
