/** Draws the geometry of `landing.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { look, markerPath } from "../chart/marker.js";
import { type LandingGeometry, WIDTH } from "./geometry.js";

export interface LandingTexts {
  /** The whole picture in words. */
  alternative: string;
  distance: (value: number) => string;
  side: (value: number) => string;
}

export const drawLanding = (geometry: LandingGeometry, texts: LandingTexts): TemplateResult => html`
  <svg class="ground" role="img" aria-label=${texts.alternative} viewBox="0 0 ${WIDTH} ${geometry.height}">
    <rect class="rough" x=${geometry.left} width=${geometry.right - geometry.left} y=${geometry.top} height=${geometry.bottom - geometry.top} />
    <rect class="fairway" x=${geometry.fairway.x} width=${geometry.fairway.width} y=${geometry.top} height=${geometry.bottom - geometry.top} />
    ${geometry.distances.map(
      ({ value, y }) => svg`
        <line class="grid" x1=${geometry.left} x2=${geometry.right} y1=${y} y2=${y} />
        <text x=${geometry.left - 5} y=${y + 4 * geometry.text} text-anchor="end">${texts.distance(value)}</text>`,
    )}
    ${geometry.sides.map(
      ({ value, x }) =>
        svg`<text x=${x} y=${geometry.bottom + 3 + 15 * geometry.text} text-anchor="middle">${texts.side(value)}</text>`,
    )}
    <line class="target" x1=${geometry.middle} x2=${geometry.middle} y1=${geometry.top} y2=${geometry.bottom} />
    <svg x=${geometry.left} y=${geometry.top} width=${geometry.right - geometry.left} height=${geometry.bottom - geometry.top}
      viewBox="${geometry.left} ${geometry.top} ${geometry.right - geometry.left} ${geometry.bottom - geometry.top}">
      ${geometry.ovals.map(
        ({ build, share, x, y, rx, ry, turn }) => svg`
          <ellipse class="oval look-${look(build)} ${share > 0.6 ? "most" : ""}" cx=${x} cy=${y} rx=${rx} ry=${ry} transform="rotate(${turn} ${x} ${y})" />`,
      )}
    </svg>
    ${geometry.shots.map(({ build, x, y, leftOut, outside }) => mark(build, x, y, 0.55, `${leftOut ? "left-out" : ""} ${outside ? "outside" : ""}`))}
    ${geometry.centers.map(({ build, x, y }) => svg`<circle class="halo" cx=${x} cy=${y} r="12" />${mark(build, x, y, 1.25, "center")}`)}
  </svg>`;

const mark = (build: number, x: number, y: number, size: number, kind: string): TemplateResult => svg`
  <g class="mark look-${look(build)} ${kind}" transform="translate(${x} ${y}) scale(${size})">
    <path d=${markerPath(build)} />
    ${kind.includes("left-out") ? svg`<line class="strike" x1="-9" x2="9" y1="0" y2="0" />` : nothing}
  </g>`;
