/** Draws a hundred dots. Decides nothing; the words beside them say the same, so nobody has to see them. */
import { html, type TemplateResult } from "lit";
import { look } from "../chart/marker.js";
import { type Dot, HEIGHT, type HundredDots, WIDTH } from "./dots.js";

const FILLED = 6.4;
const EMPTY = 3;

/** Filled ones are large and full, the others small and hollow: no color is needed to tell them apart. */
export const drawHundred = ({ dots, range }: HundredDots, build: number): TemplateResult => html`
  <svg class="hundred look-${look(build)}" aria-hidden="true" viewBox="0 0 ${WIDTH} ${HEIGHT}">
    <path class="hundred-on" d=${circles(
      dots.filter(({ filled }) => filled),
      FILLED,
    )} />
    <path class="hundred-off" d=${circles(
      dots.filter(({ filled }) => !filled),
      EMPTY,
    )} />
    <path class="hundred-range" d="M${range.from} ${range.y - 4}v8m0-4H${range.to}m0-4v8" />
  </svg>`;

/** All in one path: a hundred elements would be a page's worth. */
const circles = (dots: readonly Dot[], radius: number): string =>
  dots
    .map(
      ({ x, y }) =>
        `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`,
    )
    .join("");
