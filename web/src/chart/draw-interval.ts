/** Draws the geometry of `interval.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { mark } from "./draw-mark.js";
import { type Bar, type IntervalGeometry, labelPlace } from "./interval.js";

/** The texts a picture carries; the caller has them from the report and the format. */
export interface IntervalTexts {
  /** The whole picture in words. */
  alternative: string;
  /** Named inside the shaded zone. */
  zone: string;
  /** A bar's value and its ends, as the report prints them. */
  printed: (bar: Bar) => { value: string; low: string; high: string };
  tick: (value: number) => string;
}

export const drawInterval = (geometry: IntervalGeometry, texts: IntervalTexts): TemplateResult => html`
  <svg class="interval" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    ${
      geometry.zone
        ? svg`<rect class="zone" x=${percent(geometry.zone.from)} width=${percent(geometry.zone.to - geometry.zone.from)}
          y="22" height=${geometry.axisY - 22} />`
        : nothing
    }
    ${zoneLabel(geometry.none, texts.zone)}
    <line class="axis" x1="0" x2="100%" y1=${geometry.axisY} y2=${geometry.axisY} />
    ${geometry.ticks.map(
      ({ at, value }) => svg`
        <line class="tick" x1=${percent(at)} x2=${percent(at)} y1=${geometry.axisY} y2=${geometry.axisY + 5} />
        <text class="tick-label" x=${percent(at)} y=${geometry.axisY + 21} text-anchor="middle">${texts.tick(value)}</text>`,
    )}
    <line class="none" x1=${percent(geometry.none)} x2=${percent(geometry.none)} y1="22" y2=${geometry.axisY} />
    ${geometry.bars.map((bar) => drawBar(bar, texts))}
  </svg>`;

function zoneLabel(none: number, text: string): TemplateResult {
  const { at, anchor } = labelPlace(none, text.length);
  return svg`<text class="zone-label" x=${percent(at)} y="14" text-anchor=${anchor}>${text}</text>`;
}

function drawBar(bar: Bar, texts: IntervalTexts): TemplateResult {
  const { value, low, high } = texts.printed(bar);
  return svg`
  <g class="bar ${bar.chosen ? "chosen" : ""}">
    <line class="reach" x1=${percent(bar.from)} x2=${percent(bar.to)} y1=${bar.y} y2=${bar.y} />
    <line class="core" x1=${percent(bar.coreFrom)} x2=${percent(bar.coreTo)} y1=${bar.y} y2=${bar.y} />
    <line class="cap" x1=${percent(bar.from)} x2=${percent(bar.from)} y1=${bar.y - 11} y2=${bar.y + 11} />
    <line class="cap" x1=${percent(bar.to)} x2=${percent(bar.to)} y1=${bar.y - 11} y2=${bar.y + 11} />
    <text class="end" x=${percent(bar.from)} dx="-7" y=${bar.y + 5} text-anchor="end">${low}</text>
    <text class="end" x=${percent(bar.to)} dx="7" y=${bar.y + 5} text-anchor="start">${high}</text>
    ${mark(bar.build, percent(bar.at), bar.y)}
    <text class="value" x=${percent(bar.at)} y=${bar.y - 18} text-anchor="middle">${value}</text>
  </g>`;
}

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
