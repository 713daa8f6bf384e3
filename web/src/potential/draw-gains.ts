/** Draws the geometry of `gains.ts`. Decides nothing; the words beside each bar say the same, so nobody has to see them. */
import { html, nothing, svg, type TemplateResult } from "lit";
import { look } from "../chart/marker.js";
import type { GainBar, GainsGeometry } from "./gains.js";

const HEIGHT = 26;
const MIDDLE = HEIGHT / 2;

export const drawGain = (
  { kind, solid, thin }: GainBar,
  { none, ticks }: GainsGeometry,
  build: number,
): TemplateResult => html`
  <svg class="gain look-${look(build)}" aria-hidden="true" width="100%" height=${HEIGHT}>
    ${ticks.map(({ at }) => svg`<line class="grid" x1=${percent(at)} x2=${percent(at)} y1="0" y2=${HEIGHT} />`)}
    ${
      kind === "not_named"
        ? svg`<line class="gain-open" x1=${percent(none)} x2="98%" y1=${MIDDLE} y2=${MIDDLE} />`
        : svg`
          <rect class="gain-solid" x=${percent(solid.from)} width=${percent(solid.to - solid.from)} y="4" height=${HEIGHT - 8} />
          ${
            thin.to > thin.from
              ? svg`
              <line class="gain-thin" x1=${percent(thin.from)} x2=${percent(thin.to)} y1=${MIDDLE} y2=${MIDDLE} />
              <line class="gain-thin" x1=${percent(thin.to)} x2=${percent(thin.to)} y1="5" y2=${HEIGHT - 5} />`
              : nothing
          }`
    }
    <line class="none" x1=${percent(none)} x2=${percent(none)} y1="0" y2=${HEIGHT} />
  </svg>`;

/** The scale below the last bar; `text` is how large the reader's text is. */
export const drawGainScale = (
  { ticks }: GainsGeometry,
  tick: (value: number) => string,
  text: number,
): TemplateResult => html`
  <svg class="gain" aria-hidden="true" width="100%" height=${18 * text}>
    ${ticks.map(({ value, at }) => svg`<text x=${percent(at)} y=${14 * text} text-anchor=${at < 6 ? "start" : at > 94 ? "end" : "middle"}>${tick(value)}</text>`)}
  </svg>`;

const percent = (value: number): string => `${Math.round(value * 100) / 100}%`;
