/**
 * The choice of another language, at the top of the page. Each is the page's own address in that language; the shots on
 * the page go along in it as in any link, so that nobody loses a session to a change of words.
 */
import type { HandOver } from "./hand-over.js";
import { language, type Language } from "./text/say.js";
import { LANGUAGES, pageIn } from "./text/spoken.js";

export function offerLanguages(page: HandOver): void {
  const place = document.querySelector<HTMLElement>("#languages");
  if (!place) return;
  const others = (Object.keys(LANGUAGES) as Language[]).filter((one) => one !== language());
  place.replaceChildren(...others.map((one) => linkTo(one, page)));
  place.hidden = false;
}

function linkTo(other: Language, page: HandOver): HTMLAnchorElement {
  const link = document.createElement("a");
  Object.assign(link, { href: pageIn(other), hreflang: other, lang: other, textContent: LANGUAGES[other] });
  link.addEventListener("click", (event) => {
    event.preventDefault();
    void addressIn(other, page).then((address) => {
      if (address === null) window.open(link.href, "_blank", "noopener");
      else location.assign(address);
    });
  });
  return link;
}

/** Where the page goes on in that language; null when its session is too large for an address, and stays here. */
async function addressIn(other: Language, page: HandOver): Promise<string | null> {
  const current = page.current();
  if (!current) return pageIn(other) + location.hash;
  const { session, question } = current;
  return (await (await page.engine).share({ session, question, view: {}, address: pageIn(other) })).link;
}
