/** Draws the geometry of `interval.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { drawLines } from "./draw-lines.js";
import { mark } from "./draw-mark.js";
import type { Bar, IntervalGeometry } from "./interval.js";

/** The texts a picture carries; the caller has them from the report and the format. */
export interface IntervalTexts {
  /** The whole picture in words. */
  alternative: string;
  /** A bar's value and its ends, as the report prints them. */
  printed: (bar: Bar, at: number) => { value: string; low: string; high: string };
  tick: (value: number) => string;
}

export const drawInterval = (geometry: IntervalGeometry, texts: IntervalTexts): TemplateResult => html`
  <svg class="interval" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    ${
      geometry.zone
        ? svg`<rect class="zone" x=${percent(geometry.zone.from)} width=${percent(geometry.zone.to - geometry.zone.from)}
          y=${geometry.zoneY} height=${geometry.axisY - geometry.zoneY} />`
        : nothing
    }
    ${zoneLabel(geometry)}
    <line class="axis" x1="0" x2="100%" y1=${geometry.axisY} y2=${geometry.axisY} />
    ${geometry.ticks.map(
      ({ at, value }) => svg`
        <line class="tick" x1=${percent(at)} x2=${percent(at)} y1=${geometry.axisY} y2=${geometry.axisY + 5} />
        <text class="tick-label" x=${percent(at)} y=${geometry.axisY + 5 + 16 * geometry.text} text-anchor="middle">${texts.tick(value)}</text>`,
    )}
    <line class="none" x1=${percent(geometry.none)} x2=${percent(geometry.none)} y1=${geometry.zoneY} y2=${geometry.axisY} />
    ${geometry.bars.map((bar, at) => drawBar(bar, geometry.text, texts.printed(bar, at)))}
  </svg>`;

const zoneLabel = ({ label: { at, anchor, lines }, text }: IntervalGeometry): TemplateResult =>
  svg`<text class="zone-label" y=${14 * text} text-anchor=${anchor}>${drawLines(lines, percent(at), 17 * text)}</text>`;

function drawBar(bar: Bar, text: number, { value, low, high }: ReturnType<IntervalTexts["printed"]>): TemplateResult {
  return svg`
  <g class="bar ${bar.chosen ? "chosen" : ""}">
    ${bar.name ? svg`<text class="name" y=${bar.name.y}>${drawLines(bar.name.lines, "0%", 17 * text)}</text>` : nothing}
    <line class="reach" x1=${percent(bar.from)} x2=${percent(bar.to)} y1=${bar.y} y2=${bar.y} />
    <line class="core" x1=${percent(bar.coreFrom)} x2=${percent(bar.coreTo)} y1=${bar.y} y2=${bar.y} />
    <line class="cap" x1=${percent(bar.from)} x2=${percent(bar.from)} y1=${bar.y - 11} y2=${bar.y + 11} />
    <line class="cap" x1=${percent(bar.to)} x2=${percent(bar.to)} y1=${bar.y - 11} y2=${bar.y + 11} />
    <text class="end" x=${percent(bar.from)} dx="-7" y=${bar.y + 5 * text} text-anchor="end">${low}</text>
    <text class="end" x=${percent(bar.to)} dx="7" y=${bar.y + 5 * text} text-anchor="start">${high}</text>
    ${mark(bar.build, percent(bar.at), bar.y)}
    <text class="value" x=${percent(bar.at)} y=${bar.y - 11 - 7 * text} text-anchor="middle">${value}</text>
  </g>`;
}

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
