/** Draws the geometry of `order.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { look, markerPath } from "../chart/marker.js";
import type { Field, Line, OrderGeometry, Point } from "./order.js";

export interface OrderTexts {
  /** The whole picture in words. */
  alternative: string;
  tick: (value: number) => string;
}

/** How many rounds can carry their number without the numbers touching. */
const NUMBERED = 16;

export const drawOrder = (geometry: OrderGeometry, texts: OrderTexts): TemplateResult => html`
  <svg class="order" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    ${bands(geometry)}
    ${geometry.fields.map((field) => drawField(field, geometry, texts))}
    ${geometry.averages.map((line) => drawLine(line, "average"))}
    ${geometry.points.map((point) => drawPoint(point, geometry.marker))}
    ${geometry.drifts.map((line) => drawLine(line, "drift"))}
  </svg>`;

function bands({ bands: all, top, bottom, text }: OrderGeometry): TemplateResult[] {
  const every = Math.ceil((all.length * text) / NUMBERED);
  return all.map(
    ({ from, to, round, shaded }, index) => svg`
      ${shaded ? svg`<rect class="band" x=${percent(from)} width=${percent(to - from)} y=${top} height=${bottom - top} />` : nothing}
      ${
        index % every === 0
          ? svg`<text class="round" x=${percent((from + to) / 2)} y=${bottom + 3 + 15 * text} text-anchor="middle">${round}</text>`
          : nothing
      }`,
  );
}

const drawField = (
  { build, top, ticks }: Field,
  { left, text }: OrderGeometry,
  texts: OrderTexts,
): TemplateResult => svg`
  ${ticks.map(
    ({ value, y }) => svg`
      <line class="grid" x1=${percent(left - 1)} x2="100%" y1=${y} y2=${y} />
      <text x=${percent(left - 2)} y=${y + 4 * text} text-anchor="end">${texts.tick(value)}</text>`,
  )}
  ${build === null ? nothing : svg`<svg class="mark look-${look(build)}" x="2.4%" y=${top + 6} width="1" height="1" overflow="visible"><path d=${markerPath(build)} /></svg>`}`;

const drawLine = ({ build, from, to, yFrom, yTo }: Line, kind: string): TemplateResult => svg`
  <line class="${kind} look-${look(build)}" x1=${percent(from)} x2=${percent(to)} y1=${yFrom} y2=${yTo} />`;

const drawPoint = ({ build, at, y, leftOut, noted }: Point, size: number): TemplateResult => svg`
  <svg class="mark look-${look(build)} ${leftOut ? "left-out" : ""}" x=${percent(at)} y=${y} width="1" height="1" overflow="visible">
    <path d=${markerPath(build)} transform="scale(${size})" />
    ${noted ? svg`<circle class="noted" r="11" />` : nothing}
    ${leftOut ? svg`<line class="strike" x1="-9" x2="9" y1="0" y2="0" />` : nothing}
  </svg>`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
