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
}

export interface MapGeometry {
  height: number;
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
  const { launches, spins, carries, lines } = input;
  const [launchLow, launchHigh] = [launches[0] ?? 0, launches.at(-1) ?? 1];
  const [spinLow, spinHigh] = [spins[0] ?? 0, spins.at(-1) ?? 1];
  const width = WIDTH - LEFT - RIGHT;
  const x = (launch: number) =>
    LEFT + ((clamp(launch, launchLow, launchHigh) - launchLow) / (launchHigh - launchLow)) * width;
  const y = (spin: number) => TOP + FIELD - ((clamp(spin, spinLow, spinHigh) - spinLow) / (spinHigh - spinLow)) * FIELD;
  // Grid cells count from their edges: a value stands in the middle of its cell.
  const place = ([column, row]: readonly number[]): [number, number] => [
    LEFT + clamp(((column ?? 0) - 0.5) / (launches.length - 1), 0, 1) * width,
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
    height: TOP + FIELD + BOTTOM,
    field: { x: LEFT, y: TOP, width, height: FIELD },
    areas: shapes.map(({ value, rings }, index) => ({
      value,
      path: rings.map((ring) => `M${ring.map(([px, py]) => `${round(px)} ${round(py)}`).join("L")}Z`).join(""),
      shade: (index + 1) / shapes.length,
    })),
    labels: labels(shapes, width, [x(input.own.launch), y(input.own.spin)]),
    shots: input.shots.map(({ build, launch, spin }) => ({ build, x: x(launch), y: y(spin) })),
    own: { build: input.own.build, x: x(input.own.launch), y: y(input.own.spin) },
    band: {
      x: x(input.band.launchLow),
      y: y(input.band.spinHigh),
      width: Math.max(x(input.band.launchHigh) - x(input.band.launchLow), 2),
      height: Math.max(y(input.band.spinLow) - y(input.band.spinHigh), 2),
    },
    launches: ticks(launchLow, launchHigh, 6).map((value) => ({ value, x: x(value) })),
    spins: ticks(spinLow, spinHigh, 6).map((value) => ({ value, y: y(value) })),
  };
}

type Point = [number, number];

/** Each line's figure stands on it inside the field, apart from the others and from the
 * large mark. */
function labels(
  shapes: readonly { value: number; rings: readonly (readonly Point[])[] }[],
  width: number,
  own: Point,
): { value: number; x: number; y: number }[] {
  const placed: { value: number; x: number; y: number }[] = [];
  for (const { value, rings } of shapes) {
    const inner = rings
      .flat()
      .filter(([px, py]) => px > LEFT + 14 && px < LEFT + width - 16 && py > TOP + 10 && py < TOP + FIELD - 8);
    const free = inner.filter(
      ([px, py]) =>
        Math.hypot(own[0] - px, own[1] - py) > 34 &&
        placed.every((other) => Math.hypot(other.x - px, (other.y - py) * 1.6) > 34),
    );
    const best = free.sort((a, b) => nearness(a, width) - nearness(b, width))[0];
    if (best) placed.push({ value, x: best[0], y: best[1] });
  }
  return placed;
}

/** Distance from the way up the middle of the picture's upper left, where lines lie apart. */
const nearness = ([px, py]: Point, width: number): number =>
  Math.abs(px - (LEFT + width * 0.3)) + 0.4 * Math.abs(py - (TOP + FIELD * 0.35));

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
const round = (value: number): number => Math.round(value * 10) / 10;
