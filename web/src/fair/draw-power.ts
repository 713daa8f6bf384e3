/** Draws the geometry of `power.ts`. Decides nothing. */
import { html, svg, type TemplateResult } from "lit";
import type { Length } from "../core/planner.js";
import { say } from "../text/say.js";
import type { PowerGeometry, PowerPoint } from "./power.js";

export interface PowerTexts {
  /** The whole picture in words. */
  alternative: string;
  /** The sizes the two lines stand for. */
  margin: string;
  double: string;
  rounds: (row: Length) => string;
}

export const drawPower = (geometry: PowerGeometry, texts: PowerTexts): TemplateResult => html`
  <svg class="power" role="img" aria-label=${texts.alternative} width="100%" height=${geometry.height}>
    ${geometry.grid.map(
      ({ y, share }) => svg`
        <line class="grid" x1="0" x2="100%" y1=${y} y2=${y} />
        <text class="grid-label" x="0" y=${y - 3}>${say("fair-lengths-tick", { tenths: Math.round(share * 10) })}</text>`,
    )}
    ${geometry.margin.map(
      ({ x, row }) => svg`
        ${row.is_plan ? svg`<line class="own" x1=${percent(x)} x2=${percent(x)} y1=${geometry.top} y2=${geometry.bottom} />` : ""}`,
    )}
    ${geometry.told.map(
      ({ x, row }) => svg`
        <text class=${row.is_plan ? "rounds is-plan" : "rounds"} x=${percent(x)} y=${geometry.bottom + 20 * geometry.text} text-anchor="middle">${texts.rounds(row)}</text>`,
    )}
    ${line(geometry, "double", texts.double)} ${line(geometry, "margin", texts.margin)}
  </svg>`;

const line = (geometry: PowerGeometry, kind: "margin" | "double", name: string): TemplateResult => {
  const points: readonly PowerPoint[] = geometry[kind];
  const last = points.at(-1);
  return svg`
    ${points.slice(1).map((to, index) => {
      const from = points[index]!;
      return svg`<line class="power-line ${kind}" x1=${percent(from.x)} y1=${from.y} x2=${percent(to.x)} y2=${to.y} />`;
    })}
    ${points.map(({ x, y }) =>
      kind === "margin"
        ? svg`<circle class="power-dot margin" cx=${percent(x)} cy=${y} r="5" />`
        : svg`<svg class="power-dot double" x=${percent(x)} y=${y} width="1" height="1" overflow="visible"><rect x="-5" y="-5" width="10" height="10" /></svg>`,
    )}
    ${last ? svg`<text class="power-name" x=${percent(last.x + 4)} y=${last.y + 20 * geometry.text} text-anchor="end">${name}</text>` : ""}`;
};

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
