/** Draws the geometry of `carry-map.ts`. Decides nothing. */
import { html, svg, type TemplateResult } from "lit";
import { look, markerPath } from "../chart/marker.js";
import { say } from "../text/say.js";
import { type MapGeometry, WIDTH } from "./carry-map.js";

export interface MapTexts {
  /** The whole picture in words. */
  alternative: string;
  launch: (value: number) => string;
  spin: (value: number) => string;
  carry: (value: number) => string;
}

export const drawCarryMap = (geometry: MapGeometry, texts: MapTexts): TemplateResult => {
  const { field } = geometry;
  return html`
    <svg class="carry-map" role="img" aria-label=${texts.alternative} viewBox="0 0 ${WIDTH} ${geometry.height}">
      <rect class="map-low" x=${field.x} y=${field.y} width=${field.width} height=${field.height} />
      ${geometry.areas.map(({ path, shade }) => svg`<path class="area" d=${path} fill-opacity=${(0.08 + 0.14 * shade).toFixed(3)} />`)}
      <rect class="best" x=${geometry.band.x} y=${geometry.band.y} width=${geometry.band.width} height=${geometry.band.height} />
      ${geometry.launches.map(
        ({ value, x }) =>
          svg`<text x=${x} y=${field.y + field.height + 3 + 14 * geometry.text} text-anchor="middle">${texts.launch(value)}</text>`,
      )}
      ${geometry.spins.map(({ value, y }) => svg`<text x=${field.x - 5} y=${y + 4 * geometry.text} text-anchor="end">${texts.spin(value)}</text>`)}
      <text class="axis-name" x=${field.x + field.width / 2} y=${geometry.height - 6} text-anchor="middle">${say("axis-launch")}</text>
      <text class="axis-name" x=${field.x + 6} y=${field.y + 3 + 13 * geometry.text}>${say("axis-spin")}</text>
      ${geometry.shots.map(({ build, x, y }) => mark(build, x, y, 0.5))}
      ${geometry.labels.map(({ value, x, y }) => svg`<text class="line-label" x=${x} y=${y + 4 * geometry.text} text-anchor="middle">${texts.carry(value)}</text>`)}
      ${
        geometry.own.build === null
          ? svg`<circle class="own" cx=${geometry.own.x} cy=${geometry.own.y} r="8" />`
          : svg`<circle class="halo" cx=${geometry.own.x} cy=${geometry.own.y} r="13" />${mark(geometry.own.build, geometry.own.x, geometry.own.y, 1.3)}`
      }
    </svg>`;
};

const mark = (build: number, x: number, y: number, size: number): TemplateResult => svg`
  <g class="mark look-${look(build)}" transform="translate(${x} ${y}) scale(${size})"><path d=${markerPath(build)} /></g>`;
