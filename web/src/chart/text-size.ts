/**
 * How large the reader's text is beside the page's own: 2 at 200 %. Pictures grow their writing, and the room for it, by
 * this; it is asked of the browser once, and again after the window changed, which a change of text size may be.
 */

/** The page's own size of text, in pixels: 106.25 % of 16. */
const OWN = 17;

let known: number | null = null;

export function textSize(): number {
  if (known === null) {
    known = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / OWN || 1;
    window.addEventListener("resize", () => (known = null), { once: true });
  }
  return known;
}
