/** Draws the geometry of `luck.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
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
  /** Said of the last deal. */
  dealt: (value: number) => string;
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
        <text class="tick-label" x=${percent(at)} y=${geometry.axisY + 5 + 16 * geometry.text} text-anchor="middle">${texts.tick(value)}</text>`,
    )}
    <line class="none" x1=${percent(geometry.none)} x2=${percent(geometry.none)} y1=${geometry.hillTop} y2=${geometry.height} />
    <line class="whole" x1=${percent(geometry.whole)} x2=${percent(geometry.whole)} y1=${geometry.hillTop - 6} y2=${geometry.axisY} />
    <text class="whole-label" x=${percent(geometry.whole)} y=${geometry.hillTop - 12} text-anchor=${anchor(geometry.whole, geometry.text)}>${texts.whole}</text>
    ${drawDeals(geometry, texts)}
    ${geometry.reaches.map((reach) => drawReach(reach, geometry.text, texts))}
  </svg>`;

/** All deals so far, the last one with its figure: seen to jump about from tap to tap. */
const drawDeals = ({ deals, dealsY, text }: LuckGeometry, texts: LuckTexts): TemplateResult[] =>
  deals.map(({ at, value }, index) => {
    const isLast = index === deals.length - 1;
    return svg`
      <circle class="deal ${isLast ? "last" : ""}" cx=${percent(at)} cy=${dealsY} r=${isLast ? 8 : 4.5} />
      ${isLast ? svg`<text class="deal-label" x=${percent(at)} y=${dealsY - 7 - 7 * text} text-anchor=${anchor(at, text)}>${texts.dealt(value)}</text>` : nothing}`;
  });

const drawReach = ({ role, from, to, y, value }: Reach, size: number, texts: LuckTexts): TemplateResult => svg`
  <g class="reach look-${look(texts.builds[role])}">
    <line class="reach-line" x1=${percent(from)} x2=${percent(to)} y1=${y} y2=${y} />
    ${mark(texts.builds[role], percent(to), y)}
    <text x=${percent(to)} y=${y - 14} text-anchor=${anchor(to, size)}>${texts.best(value)}</text>
  </g>`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;

/** A label centered near an edge would be cut: it starts or ends there instead. */
const anchor = (at: number, text: number): string => {
  const near = Math.min(25 * text, 50);
  return at < near ? "start" : at > 100 - near ? "end" : "middle";
};
