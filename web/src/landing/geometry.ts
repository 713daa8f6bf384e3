/**
 * Geometry of 'Where they land': the ground from above, one scale for both directions, the target straight ahead. Pure.
 *
 * Lengths are in units of a picture that is `WIDTH` wide. The shots move with the aim; the fairway stays.
 */
import { extent } from "d3-array";
import { roundIn } from "../chart/scale.js";

export const WIDTH = 340;
const LEFT = 34;
const RIGHT = 8;
const TOP = 34;
const BOTTOM = 26;
/** Least and most that the picture shows, yd to each side. */
const NARROWEST = 35;
const WIDEST = 90;
/** Free around the shots, yd. */
const PAD = 8;
/** A longer strip of ground than this is squeezed. */
const TALLEST = 460;
const SHORTEST = 200;
/** Figures along a side. */
const MARKS = 5;

export interface GroundShot {
  shot: number;
  build: number;
  offline: number;
  carry: number;
  leftOut: boolean;
}

export interface GroundBuild {
  build: number;
  center: { offline: number; carry: number };
  ovals: readonly { share: number; major: number; minor: number; angle: number }[];
}

export interface LandingInput {
  shots: readonly GroundShot[];
  builds: readonly GroundBuild[];
  fairway: number;
  /** Yd right of the middle. */
  aim: number;
  farthestAim: number;
  /** What a yard is in the unit shown: marks are round there. */
  scale?: number;
  /** How large the reader's text is beside the page's own. */
  text?: number;
}

export interface LandingGeometry {
  height: number;
  /** What lengths that belong to writing are multiplied by. */
  text: number;
  top: number;
  bottom: number;
  left: number;
  right: number;
  fairway: { x: number; width: number };
  middle: number;
  /** The aim line, and where it can go, in shares of the picture's width. */
  aim: { x: number; share: number; perShare: number };
  shots: { shot: number; build: number; x: number; y: number; leftOut: boolean; outside: boolean }[];
  centers: { build: number; x: number; y: number }[];
  ovals: { build: number; share: number; x: number; y: number; rx: number; ry: number; turn: number }[];
  distances: { value: number; y: number }[];
  sides: { value: number; x: number }[];
}

export function landingGeometry({
  shots,
  builds,
  fairway,
  aim,
  farthestAim,
  scale = 1,
  text = 1,
}: LandingInput): LandingGeometry {
  const reaches = builds.flatMap(({ center, ovals }) => ovals.map((oval) => ({ center, ...reach(oval) })));
  const [near = 0, far = 1] = extent([
    ...shots.map(({ carry }) => carry),
    ...reaches.flatMap(({ center, long }) => [center.carry - long, center.carry + long]),
  ]);
  const sideways = [
    ...shots.map(({ offline }) => Math.abs(offline)),
    ...reaches.map(({ center, wide }) => Math.abs(center.offline) + wide),
  ];
  const widest = Math.max(...sideways, fairway / 2) + PAD;
  // Room for the aim as well, up to what a phone can show.
  const half = Math.min(Math.max(widest + Math.min(farthestAim, 10), NARROWEST), Math.max(WIDEST, fairway / 2 + PAD));
  const edge = LEFT * text;
  const across = (WIDTH - edge - RIGHT) / (2 * half);
  const low = near - PAD;
  const high = far + PAD;
  const tall = Math.min(Math.max((high - low) * across, SHORTEST), TALLEST);
  const along = tall / (high - low);
  const bottom = TOP + tall;
  const x = (offline: number) => edge + (offline + half) * across;
  const y = (carry: number) => bottom - (carry - low) * along;
  const inside = (at: number) => Math.min(Math.max(at, edge), WIDTH - RIGHT);
  const left = x(-fairway / 2);
  // Large figures are fewer.
  const marks = Math.max(Math.round(MARKS / text), 2);
  return {
    height: bottom + BOTTOM * text,
    text,
    top: TOP,
    bottom,
    left: edge,
    right: WIDTH - RIGHT,
    fairway: { x: left, width: x(fairway / 2) - left },
    middle: x(0),
    aim: { x: inside(x(aim)), share: inside(x(aim)) / WIDTH, perShare: WIDTH / across },
    shots: shots.map(({ shot, build, offline, carry, leftOut }) => {
      const at = x(offline + aim);
      return { shot, build, x: inside(at), y: y(carry), leftOut, outside: at !== inside(at) };
    }),
    centers: builds.map(({ build, center }) => ({ build, x: inside(x(center.offline + aim)), y: y(center.carry) })),
    ovals: builds.flatMap(({ build, center, ovals }) =>
      ovals.map(({ share, major, minor, angle }) => ({
        build,
        share,
        x: x(center.offline + aim),
        y: y(center.carry),
        ...stretched(major * across, minor * across, angle, along / across),
      })),
    ),
    distances: roundIn(scale, low, high, marks).map((value) => ({ value, y: y(value) })),
    sides: roundIn(scale, -half, half, marks).map((value) => ({ value, x: x(value) })),
  };
}

/** How far an oval reaches sideways and along, yd. */
function reach({ major, minor, angle }: { major: number; minor: number; angle: number }): {
  wide: number;
  long: number;
} {
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  return { wide: Math.hypot(major * cos, minor * sin), long: Math.hypot(major * sin, minor * cos) };
}

/**
 * An ellipse squeezed along the way from the tee by `squeeze`: half axes and turn, clockwise as pictures count it.
 * Its matrix R diag(major², minor²) Rᵀ is squeezed and taken apart again.
 */
function stretched(
  major: number,
  minor: number,
  angle: number,
  squeeze: number,
): { rx: number; ry: number; turn: number } {
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const xx = (major * cos) ** 2 + (minor * sin) ** 2;
  const xy = (major ** 2 - minor ** 2) * cos * sin * squeeze;
  const yy = ((major * sin) ** 2 + (minor * cos) ** 2) * squeeze ** 2;
  const middle = (xx + yy) / 2;
  const apart = Math.hypot((xx - yy) / 2, xy);
  return {
    rx: Math.sqrt(middle + apart),
    ry: Math.sqrt(Math.max(middle - apart, 0)),
    turn: (-Math.atan2(2 * xy, xx - yy) * 90) / Math.PI,
  };
}

/** The aim that a place across the picture stands for, whole in the unit shown and within what can be asked. */
export const aimAt = (geometry: LandingGeometry, share: number, farthestAim: number, scale = 1): number =>
  wholeAim((share - geometry.middle / WIDTH) * geometry.aim.perShare, farthestAim, scale);

/** The aim nearest to this one that is whole in the unit shown and can be asked. */
export function wholeAim(aim: number, farthestAim: number, scale = 1): number {
  const farthest = Math.floor(farthestAim * scale);
  return Math.min(Math.max(Math.round(aim * scale), -farthest), farthest) / scale + 0;
}
