/** Small pieces that several views share: a build's marker and name, a choice drawn as a chip. */
import { html, type TemplateResult } from "lit";
import { look, markerPath } from "../chart/marker.js";

/** A build's marker in text. */
export const marker = (build: number): TemplateResult => html`
  <svg class="marker mark look-${look(build)}" width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
    <path d=${markerPath(build)} />
  </svg>`;

/** Text that somebody else wrote: never markup, clipped when long, its own writing direction. */
export const foreign = (text: string): TemplateResult => html`<bdi class="foreign" title=${text}>${text}</bdi>`;

/** A build's marker and name. */
export const build = (index: number, name: string): TemplateResult =>
  html`<span class="build">${marker(index)}${foreign(name)}</span>`;

/** One entry of a choice. */
export interface Option {
  value: string;
  label: string;
}

/** A choice that the device opens in its own way. */
export const choice = (
  name: string,
  options: readonly Option[],
  value: string,
  onChange: (value: string) => void,
): TemplateResult => html`
  <select aria-label=${name} @change=${(event: Event) => onChange((event.target as HTMLSelectElement).value)}>
    ${options.map((option) => html`<option value=${option.value} ?selected=${option.value === value} .selected=${option.value === value}>${option.label}</option>`)}
  </select>`;

/** A part of the page with its heading and its place in the address. */
export const part = (id: string, title: string, body: unknown): TemplateResult => html`
  <section class="part" id=${id} aria-labelledby="${id}-title">
    <h2 id="${id}-title" tabindex="-1">${title}</h2>
    ${body}
  </section>`;
