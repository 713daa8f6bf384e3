/**
 * The page in another language or in other units, at its top. Each is an address of the page; the shots on it go along in
 * it as in any link, so that nobody loses a session to a change of words.
 */
import type { PagePort } from "../state/page-port.js";
import { type Language, language, say } from "../text/say.js";
import { LANGUAGES, pageIn } from "../text/spoken.js";
import { isMetric, type System } from "../text/units.js";

/** How the page would go on. */
interface Way {
  language: Language;
  units: System;
  text: string;
}

export function offerOtherWays(page: PagePort): void {
  const place = document.querySelector<HTMLElement>("#other-ways");
  if (!place) return;
  const units: System = isMetric() ? "metric" : "imperial";
  const others = (Object.keys(LANGUAGES) as Language[]).filter((one) => one !== language());
  const ways: Way[] = [
    {
      language: language(),
      units: isMetric() ? "imperial" : "metric",
      text: isMetric() ? say("show-yards") : say("show-meters"),
    },
    ...others.map((one) => ({ language: one, units, text: LANGUAGES[one] })),
  ];
  place.replaceChildren(...ways.map((way) => linkTo(way, page)));
  place.hidden = false;
}

function linkTo(way: Way, page: PagePort): HTMLAnchorElement {
  const link = document.createElement("a");
  Object.assign(link, {
    href: pageIn(way.language, way.units),
    hreflang: way.language,
    lang: way.language,
    textContent: way.text,
  });
  link.addEventListener("click", (event) => {
    event.preventDefault();
    void addressOf(way, page).then((address) => {
      if (address === null) window.open(link.href, "_blank", "noopener");
      else location.assign(address);
    });
  });
  return link;
}

/** Where the page goes on; null when its session is too large for an address, and stays here. */
async function addressOf(way: Way, page: PagePort): Promise<string | null> {
  const address = pageIn(way.language, way.units);
  const current = page.current();
  if (!current) return address + location.hash;
  const { session, question } = current;
  return (await (await page.engine).share({ session, question, view: {}, address })).link;
}
