/** The page in the browser's own language, offered at its top before anything else is there; it turns to none by itself. */
import { browserLanguages, ownLanguage } from "../text/region.js";
import type { Language } from "../text/say.js";
import { LANGUAGES, pageIn } from "../text/spoken.js";

/** Offers the first of the browser's languages that the page speaks, unless it speaks it already. */
export function offerOwnLanguage(now: Language): void {
  const place = document.querySelector<HTMLElement>("#other-ways");
  const own = ownLanguage(browserLanguages(), Object.keys(LANGUAGES) as Language[]);
  if (!place || own === null || own === now) return;
  const link = Object.assign(document.createElement("a"), {
    // What follows the mark goes along: a session that was sent is not lost to a change of words.
    href: pageIn(own) + location.hash,
    hreflang: own,
    lang: own,
    className: "own",
    textContent: LANGUAGES[own],
  });
  place.replaceChildren(link);
  place.hidden = false;
}
