/** Draws the geometry of `luck.ts`. Decides nothing. */
import { html, svg, type TemplateResult } from "lit";
import { mark } from "../chart/draw-mark.js";
import { look } from "../chart/marker.js";
import type { LuckGeometry, Reach, Role } from "./geometry.js";

/** What the picture carries besides its shape; the caller has it from the core and the format. */
export interface LuckTexts {
  /** The whole picture in words. */
  alternative: string;
  builds: Record<Role, number>;
  /** Said of all shots. */
  whole: string;
  best: (value: number) => string;
  tick: (value: number) => string;
}

export const drawLuck = (geometry: LuckGeometry, texts: LuckTexts): TemplateResult => html`
  <svg class="hill" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    ${geometry.bars.map(
      (bar) => svg`<rect class="hill-bar ${bar.speaksFor ? `speaks look-${look(texts.builds[bar.speaksFor])}` : ""}"
        x=${percent(bar.from)} width=${percent(bar.to - bar.from)} y=${bar.y} height=${bar.height} />`,
    )}
    <line class="axis" x1="0" x2="100%" y1=${geometry.axisY} y2=${geometry.axisY} />
    ${geometry.ticks.map(
      ({ at, value }) => svg`
        <line class="tick" x1=${percent(at)} x2=${percent(at)} y1=${geometry.axisY} y2=${geometry.axisY + 5} />
        <text class="tick-label" x=${percent(at)} y=${geometry.axisY + 21} text-anchor="middle">${texts.tick(value)}</text>`,
    )}
    <line class="none" x1=${percent(geometry.none)} x2=${percent(geometry.none)} y1=${geometry.hillTop} y2=${geometry.height} />
    <line class="whole" x1=${percent(geometry.whole)} x2=${percent(geometry.whole)} y1=${geometry.hillTop - 6} y2=${geometry.axisY} />
    <text class="whole-label" x=${percent(geometry.whole)} y=${geometry.hillTop - 12} text-anchor=${anchor(geometry.whole)}>${texts.whole}</text>
    ${geometry.reaches.map((reach) => drawReach(reach, texts))}
  </svg>`;

const drawReach = ({ role, from, to, y, value }: Reach, texts: LuckTexts): TemplateResult => svg`
  <g class="reach look-${look(texts.builds[role])}">
    <line class="reach-line" x1=${percent(from)} x2=${percent(to)} y1=${y} y2=${y} />
    ${mark(texts.builds[role], percent(to), y)}
    <text x=${percent(to)} y=${y - 14} text-anchor=${anchor(to)}>${texts.best(value)}</text>
  </g>`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;

/** A label centered near an edge would be cut: it starts or ends there instead. */
const anchor = (at: number): string => (at < 25 ? "start" : at > 75 ? "end" : "middle");
