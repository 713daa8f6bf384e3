/** Puts the page together: styles, engine, element. */
import "./styles/tokens.css";
import "./styles/base.css";
import "./styles/parts.css";
import "./shots/read.css";
import "./start/start.css";
import "./start/adding.css";
import "./question/counts.css";
import "./answer/answer.css";
import "./answer/picture.css";
import "./styles/wide.css";
import { openEngine } from "./core/remote.js";
import { mannerOf, startWorker } from "./core/trusted.js";
import address from "./core/worker.ts?worker&url";
import { hangDoors } from "./page/doors.js";
import { offerOwnLanguage } from "./page/own-language.js";
import { StraightAnswerPage } from "./page/page.js";
import { DRAFT } from "./state/draft-key.js";
import type { PagePort } from "./state/page-port.js";
import print from "./styles/print.css?url";
import english from "./text/en/page.ftl?raw";
import { browserLanguages, holdsSession, unitsOfRegion } from "./text/region.js";
import { learn } from "./text/say.js";
import { languageIn, speak, withTexts } from "./text/spoken.js";
import { showUnits, unitsIn } from "./text/units.js";

/** On somebody else's page nothing is kept. */
const isTop = window.self === window.top;
const wanted = languageIn(location.search);
showUnits(unitsIn(location.search) ?? (holdsSession(location.hash) ? null : unitsOfRegion(browserLanguages())));
offerOwnLanguage(wanted);
const engine = openEngine(
  () => startWorker(address, wanted),
  async (abridged) => (await import("./core/engine.js")).openLocal(mannerOf(wanted), abridged),
);

learn(english);
if (wanted === "en") open();
else void speak(wanted, "page", "embed", "start").then(open);

function open(): void {
  customElements.define(
    "straight-answer-page",
    class extends StraightAnswerPage {
      override engine = engine;
    },
  );
  const page = document.querySelector<StraightAnswerPage>("straight-answer-page")!;
  const port: PagePort = {
    engine,
    current: () => page.current,
    showAnswer: (csv, question, of) => page.showLogged(csv, question, of),
    coverAnswer: () => page.cover(),
  };
  hangDoors(port);
  if (isTop && hasDraft()) void import("./page/draft.js").then(({ restore }) => restore(page));
  void page.standing.then(() => afterwards(page, port));
}

/** Whether a reload has left something; a frame without a store has none. */
function hasDraft(): boolean {
  try {
    return sessionStorage.getItem(DRAFT) !== null;
  } catch {
    return false;
  }
}

// The first number that a page formats costs it a twentieth of a second on a phone: spent while the engine is on its way.
setTimeout(() => new Intl.NumberFormat(wanted).format(1));

/** Once the first answer stands: the other language and units, how the page prints, and the site for the day without a network. */
function afterwards(page: StraightAnswerPage, port: PagePort): void {
  playAtStart();
  // What takes files in is there before one is given: by then the network may be gone.
  void import("./state/intake.js").catch(() => undefined);
  void import("./page/other-ways.js").then(({ offerOtherWays }) => offerOtherWays(port)).catch(() => undefined);
  // Not imported as the other styles are: one for paper alone leaves the page as it stands.
  document.head.append(
    Object.assign(document.createElement("link"), { rel: "stylesheet", media: "print", href: print }),
  );
  // On somebody else's page nothing is kept: their visitors came for one answer.
  if (!isTop) return;
  void import("./page/at-rest.js").then(({ atRest }) => atRest(page)).catch(() => undefined);
}

/** The start's picture, once the start is there to be seen: at first, or when everything was taken off the page. */
function playAtStart(): void {
  const { documentElement } = document;
  const isThere = () => documentElement.dataset["place"] === "start";
  const play = () => void withTexts(["start"], () => import("./start/live.js")).catch(() => undefined);
  if (isThere()) return play();
  const watch = new MutationObserver(() => {
    if (!isThere()) return;
    watch.disconnect();
    play();
  });
  watch.observe(documentElement, { attributeFilter: ["data-place"] });
}
