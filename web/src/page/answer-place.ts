/** Where the answer stands, seen from the screen: an answer that was in view has been seen. */
import type { AnswerPlace } from "../state/state.js";

/** The share of the answer's sentence that must be on the screen before it counts as seen. */
const SEEN = 0.5;

/** Tells where the sentence is whenever that changes; to be called with the one that stands on the page now. */
export function watchingWith(tell: (place: AnswerPlace) => void): (headline: Element | null) => void {
  let watches: IntersectionObserver[] | null = null;
  let watched: Element | null = null;
  return (headline) => {
    if (headline === watched) return;
    watches ??= [
      watching("0px", (entry) => tell(place(entry))),
      // A leap over the answer passes no threshold of the screen, but that of all that lies above its end.
      watching("100000px 0px 0px", ({ isIntersecting, boundingClientRect }) => {
        if (!isIntersecting) tell("below");
        else if (boundingClientRect.bottom <= 0) tell("above");
      }),
    ];
    watched = headline;
    for (const watch of watches) {
      watch.disconnect();
      if (headline) watch.observe(headline);
    }
  };
}

function watching(rootMargin: string, tell: (entry: IntersectionObserverEntry) => void): IntersectionObserver {
  return new IntersectionObserver(
    (entries) => {
      const entry = entries.at(-1);
      if (entry) tell(entry);
    },
    { rootMargin, threshold: [0, SEEN] },
  );
}

function place({ intersectionRatio, boundingClientRect }: IntersectionObserverEntry): AnswerPlace {
  if (intersectionRatio >= SEEN) return "in view";
  return boundingClientRect.top > 0 ? "below" : "above";
}
