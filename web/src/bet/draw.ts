/** Draws ten dots. Decides nothing; the words beside them say the same, so nobody has to see them. */
import { html, svg, type TemplateResult } from "lit";
import { look } from "../chart/marker.js";
import { DOT, type Dot, WIDTH } from "./geometry.js";

const MIDDLE = DOT.height / 2;

export const drawDots = (row: readonly Dot[], build: number): TemplateResult => html`
  <svg class="bet-dots look-${look(build)}" aria-hidden="true" viewBox="0 0 ${WIDTH} ${DOT.height}" width=${WIDTH} height=${DOT.height}>
    ${row.map(
      ({ x, filling }) => svg`
        <circle class="bet-dot ${filling}" cx=${x} cy=${MIDDLE} r=${DOT.radius} />
        ${filling === "half" ? svg`<path class="bet-half" d="M${x} ${MIDDLE - DOT.radius}A${DOT.radius} ${DOT.radius} 0 0 0 ${x} ${MIDDLE + DOT.radius}Z" />` : ""}`,
    )}
  </svg>`;
