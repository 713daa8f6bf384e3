/** Bars on a scale with what stands around them: which side means what, above; a legend and a line of text, below. */
import { html, nothing, type TemplateResult } from "lit";
import type { Row } from "./interval.js";

/** A bar, and what is printed of it. */
export interface Drawn {
  row: Row;
  printed: { value: string; low: string; high: string };
}

export const figure = (
  { left, right }: { left: string; right: string },
  drawing: TemplateResult,
  caption: unknown,
  legend: TemplateResult | typeof nothing = nothing,
): TemplateResult => html`
  <figure class="picture">
    <div class="sides" aria-hidden="true">
      <span>← ${left}</span>
      <span>${right} →</span>
    </div>
    ${drawing} ${legend}
    <figcaption>${caption}</figcaption>
  </figure>`;
