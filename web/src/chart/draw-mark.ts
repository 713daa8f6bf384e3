/** Draws a build's marker into a picture. */
import { svg, type TemplateResult } from "lit";
import { look, markerPath } from "./marker.js";

/** A build's marker inside a picture, centered on `x`, `y`. */
export const mark = (build: number, x: string, y: number): TemplateResult => svg`
  <svg class="mark look-${look(build)}" x=${x} y=${y} width="1" height="1" overflow="visible">
    <path d=${markerPath(build)} />
  </svg>`;
