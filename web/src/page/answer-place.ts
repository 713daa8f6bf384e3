/** Whether the answer is on the screen: one that was in view has been seen. */

/** The share of the answer's sentence that must be on the screen before it counts as seen. */
const SEEN = 0.5;

/** Tells whether the sentence is in view whenever that changes; to be called with the one that stands on the page now. */
export function watchingWith(tell: (inView: boolean) => void): (headline: Element | null) => void {
  let watch: IntersectionObserver | null = null;
  let watched: Element | null = null;
  return (headline) => {
    if (headline === watched) return;
    watch ??= new IntersectionObserver((entries) => tell((entries.at(-1)?.intersectionRatio ?? 0) >= SEEN), {
      threshold: [0, SEEN],
    });
    watched = headline;
    watch.disconnect();
    if (headline) watch.observe(headline);
  };
}
