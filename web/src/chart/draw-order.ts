/** Draws the geometry of `order.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { look, markerPath } from "./marker.js";
import type { OrderGeometry, Point } from "./order.js";

export interface OrderTexts {
  /** The whole picture in words. */
  alternative: string;
  tick: (value: number) => string;
}

/** How many rounds can carry their number without the numbers touching. */
const NUMBERED = 16;

export const drawOrder = (geometry: OrderGeometry, texts: OrderTexts): TemplateResult => html`
  <svg class="order" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    ${geometry.bands.map(
      ({ from, to, round, shaded }) => svg`
        ${shaded
          ? svg`<rect class="band" x=${percent(from)} width=${percent(to - from)} y=${geometry.top} height=${geometry.bottom - geometry.top} />`
          : nothing}
        ${geometry.bands.length <= NUMBERED
          ? svg`<text class="round" x=${percent((from + to) / 2)} y=${geometry.bottom + 18} text-anchor="middle">${round}</text>`
          : nothing}`,
    )}
    ${geometry.ticks.map(
      ({ value, y }) => svg`
        <line class="grid" x1="12%" x2="100%" y1=${y} y2=${y} />
        <text x="11%" y=${y + 4} text-anchor="end">${texts.tick(value)}</text>`,
    )}
    ${geometry.averages.map(
      ({ build, y, from, to }) =>
        svg`<line class="average look-${look(build)}" x1=${percent(from)} x2=${percent(to)} y1=${y} y2=${y} />`,
    )}
    ${geometry.points.map((point) => drawPoint(point, geometry.marker))}
  </svg>`;

const drawPoint = ({ build, at, y, leftOut }: Point, size: number): TemplateResult => svg`
  <svg class="mark look-${look(build)} ${leftOut ? "left-out" : ""}" x=${percent(at)} y=${y} width="1" height="1" overflow="visible">
    <path d=${markerPath(build)} transform="scale(${size})" />
    ${leftOut ? svg`<line class="strike" x1="-9" x2="9" y1="0" y2="0" />` : nothing}
  </svg>`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
