/** Draws writing of several lines. */
import { svg, type TemplateResult } from "lit";

/** Each line below the one before, `step` pixels apart, all from the same place across. */
export const drawLines = (lines: readonly string[], x: string, step: number): TemplateResult[] =>
  lines.map((line, at) => svg`<tspan x=${x} dy=${at === 0 ? 0 : step}>${line}</tspan>`);
