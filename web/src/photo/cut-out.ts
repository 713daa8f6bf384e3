/** A number as the photo shows it: straightened, in gray. */
import { html, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";
import type { PhotoReading } from "../core/photo.js";

/** Drawn once for each place on the screen. */
const drawn = new WeakMap<Element, string>();

export const cutOut = (reading: PhotoReading, at: number, label: string): TemplateResult => html`
  <canvas class="cut-out" role="img" aria-label=${label} ${ref((element) => draw(element, reading, at))}></canvas>`;

function draw(element: Element | undefined, { cells, cuts, cut_height: height }: PhotoReading, at: number): void {
  const cut = cells[at]?.cut;
  if (!(element instanceof HTMLCanvasElement) || !cut) return;
  const what = `${at} ${cut.from} ${cut.width}`;
  if (drawn.get(element) === what) return;
  drawn.set(element, what);
  element.width = cut.width;
  element.height = height;
  const surface = element.getContext("2d");
  if (!surface) return;
  const picture = surface.createImageData(cut.width, height);
  for (let pixel = 0; pixel < cut.width * height; pixel++) {
    const gray = cuts[cut.from + pixel] ?? 255;
    picture.data.set([gray, gray, gray, 255], 4 * pixel);
  }
  surface.putImageData(picture, 0, 0);
}
