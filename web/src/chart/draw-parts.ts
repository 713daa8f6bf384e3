/** Draws the geometry of `parts.ts`. Decides nothing. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { drawLines } from "./draw-lines.js";
import type { PartBar, PartsGeometry } from "./parts.js";

export interface PartsTexts {
  /** The whole picture in words. */
  alternative: string;
  value: (value: number) => string;
  tick: (value: number) => string;
}

export const drawParts = (geometry: PartsGeometry, texts: PartsTexts): TemplateResult => html`
  <svg class="gap-parts" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    <defs>
      <pattern id="swing-stripes" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="7" height="7" class="stripe-under" /><rect width="3.5" height="7" class="stripe" />
      </pattern>
    </defs>
    ${geometry.ticks.map(
      ({ value, at }) => svg`
        <line class="grid" x1=${percent(at)} x2=${percent(at)} y1="0" y2=${geometry.axisY} />
        <text class="tick-label" x=${percent(at)} y=${geometry.axisY + 2 + 16 * geometry.text} text-anchor="middle">${texts.tick(value)}</text>`,
    )}
    <line class="none" x1=${percent(geometry.none)} x2=${percent(geometry.none)} y1="0" y2=${geometry.axisY} />
    ${geometry.bars.map((bar) => drawBar(bar, geometry.text, texts))}
  </svg>`;

const drawBar = (
  { row, lines, nameY, y, from, to, low, high, label, anchor }: PartBar,
  text: number,
  texts: PartsTexts,
): TemplateResult => svg`
  <g class="part-bar ${row.belongs} ${row.inner ? "inner" : ""}">
    <text class="part-name" y=${nameY}>${drawLines(lines, "0", 18 * text)}</text>
    <rect x=${percent(from)} width=${percent(Math.max(to - from, 0.4))} y=${y - (row.inner ? 5 : 8)} height=${row.inner ? 10 : 16} />
    ${
      row.belongs === "gap"
        ? nothing
        : svg`
        <line class="reach" x1=${percent(low)} x2=${percent(high)} y1=${y} y2=${y} />
        <line class="reach" x1=${percent(low)} x2=${percent(low)} y1=${y - 5} y2=${y + 5} />
        <line class="reach" x1=${percent(high)} x2=${percent(high)} y1=${y - 5} y2=${y + 5} />`
    }
    <text class="part-value" x=${percent(label)} y=${y + 5 * text} text-anchor=${anchor}>${texts.value(row.value)}</text>
  </g>`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
