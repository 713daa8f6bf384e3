/**
 * The page in another language or in other units, at its top. Each is an address of the page; the shots on it go along in
 * it as in any link, so that nobody loses a session to a change of words.
 */
import type { PagePort } from "../state/page-port.js";
import { browserLanguages, ownLanguage } from "../text/region.js";
import { type Language, language, type PlainId, say } from "../text/say.js";
import { LANGUAGES, pageIn } from "../text/spoken.js";
import { type System, units } from "../text/units.js";
import { asOwn } from "./own-session.js";

/** How the page would go on. */
interface Way {
  language: Language;
  units: System;
  text: string;
  /** Whether it is the browser's own language. */
  isOwn: boolean;
}

/** What is offered from each system, by what would be other there: lengths first, then speeds. */
const OTHERS: Readonly<Record<System, readonly (readonly [System, PlainId])[]>> = {
  imperial: [["mixed", "show-meters"]],
  mixed: [
    ["imperial", "show-yards"],
    ["metric", "show-kilometers-an-hour"],
  ],
  metric: [
    ["imperial", "show-yards"],
    ["mixed", "show-miles-an-hour"],
  ],
};

export function offerOtherWays(page: PagePort): void {
  const place = document.querySelector<HTMLElement>("#other-ways");
  if (!place) return;
  const now = units() ?? "imperial";
  const own = ownLanguage(browserLanguages(), Object.keys(LANGUAGES) as Language[]);
  const others = (Object.keys(LANGUAGES) as Language[]).filter((one) => one !== language());
  const inLanguages: Way[] = others.map((one) => ({
    language: one,
    units: now,
    text: LANGUAGES[one],
    isOwn: one === own,
  }));
  const inUnits: Way[] = OTHERS[now].map(([one, text]) => ({
    language: language(),
    units: one,
    text: say(text),
    isOwn: false,
  }));
  // The browser's own language stands first, where it was offered before anything else.
  const ways = [...inLanguages.filter(({ isOwn }) => isOwn), ...inUnits, ...inLanguages.filter(({ isOwn }) => !isOwn)];
  place.replaceChildren(...ways.map((way) => linkTo(way, page)));
  place.hidden = false;
}

function linkTo(way: Way, page: PagePort): HTMLAnchorElement {
  const link = document.createElement("a");
  Object.assign(link, {
    href: pageIn(way.language, way.units),
    hreflang: way.language,
    lang: way.language,
    className: way.isOwn ? "own" : "",
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
  const { session, question, isSent } = current;
  return (await (await page.engine).share({ session, question, view: {}, address: isSent ? address : asOwn(address) }))
    .link;
}
