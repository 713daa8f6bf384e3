/** One shape for each build, so that no picture speaks by color alone. Pure: paths around 0, 0. */

const STEP = Math.PI / 180;

/** A closed outline with corners on a circle, the first one straight up; `inner` makes it a star. */
function polygon(corners: number, radius: number, turn = 0, inner?: number): string {
  const reaches = inner === undefined ? [radius] : [radius, inner];
  const count = corners * reaches.length;
  const points = Array.from({ length: count }, (_, index) => {
    const angle = (turn - 90 + (index * 360) / count) * STEP;
    const reach = reaches[index % reaches.length] ?? radius;
    return `${round(reach * Math.cos(angle))} ${round(reach * Math.sin(angle))}`;
  });
  return `M${points.join("L")}Z`;
}

const round = (value: number) => Math.round(value * 100) / 100;

const CIRCLE = "M-6 0A6 6 0 1 1 6 0A6 6 0 1 1 -6 0Z";
const PLUS = "M-2.2-6.6H2.2V-2.2H6.6V2.2H2.2V6.6H-2.2V2.2H-6.6V-2.2H-2.2Z";

const SHAPES: readonly string[] = [
  CIRCLE,
  polygon(4, 7.6, 45),
  polygon(3, 8),
  polygon(4, 8),
  PLUS,
  polygon(3, 8, 180),
  polygon(5, 8.2, 0, 3.6),
  polygon(6, 7),
];

/** How many builds have a look of their own; later ones begin again with the first. */
export const LOOKS = SHAPES.length;

/** Which look a build has. */
export const look = (build: number): number => build % LOOKS;

/** The outline of a build's marker, about 16 wide. */
export const markerPath = (build: number): string => SHAPES[look(build)] ?? CIRCLE;
