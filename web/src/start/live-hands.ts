/** The shots of the picture at the start, and what they seem to say when they are dealt in hands. Pure. */

/**
 * Invented: thirty carries of each of two clubs, in yards, all drawn from one normal distribution (mean 238, SD 11). Drawn
 * again and again until the first hand of five showed a large gap, as about one of five such hands does.
 */
const OWN = [
  227, 231, 249, 244, 238, 251, 230, 244, 252, 246, 215, 243, 240, 232, 246, 246, 248, 245, 242, 235, 240, 225, 235,
  244, 241, 237, 248, 246, 232, 251,
];
const OTHER = [
  268, 249, 265, 243, 229, 258, 254, 235, 214, 232, 231, 238, 226, 246, 240, 258, 249, 239, 238, 228, 231, 248, 240,
  248, 235, 243, 227, 254, 242, 233,
];

/** What of the shots lies on the table: those from `from` up to `to`, of each club. */
export interface Dealt {
  from: number;
  to: number;
}

/** How the hands follow one another: two of five, then all thirty. */
export const HANDS: readonly Dealt[] = [
  { from: 0, to: 5 },
  { from: 5, to: 10 },
  { from: 0, to: OWN.length },
];

export const carries = ({ from, to }: Dealt): readonly [readonly number[], readonly number[]] => [
  OWN.slice(from, to),
  OTHER.slice(from, to),
];

/** The gap between the averages, other club minus own, yd. */
export function gap(dealt: Dealt): number {
  const [own, other] = carries(dealt).map(average) as [number, number];
  return other - own;
}

export const average = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** The least and the most of all carries. */
export const RANGE: readonly [number, number] = [Math.min(...OWN, ...OTHER), Math.max(...OWN, ...OTHER)];
