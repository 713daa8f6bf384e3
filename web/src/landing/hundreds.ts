/** A hundred dots for each club, with what they show in words. */
import { html, nothing, type TemplateResult } from "lit";
import type { BuildLanding } from "../core/flights.js";
import { build } from "../pieces/pieces.js";
import { hundredDots } from "./dots.js";
import { drawHundred } from "./draw-dots.js";

/** Clubs with too few shots have no dots: what is said of them stands in their words. */
export function hundreds(
  builds: readonly BuildLanding[],
  name: (build: number) => string,
): TemplateResult | typeof nothing {
  const counted = builds.flatMap(({ build: of, of_100, words }) => (of_100 ? [{ of, of_100, words }] : []));
  if (counted.length === 0) return nothing;
  return html`
    <ul class="hundreds">
      ${counted.map(
        ({ of, of_100, words }) => html`
          <li><p>${build(of, name(of))} <span>${words.dots}</span></p>${drawHundred(hundredDots(of_100), of)}</li>`,
      )}
    </ul>`;
}
