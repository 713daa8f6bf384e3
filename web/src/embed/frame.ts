/**
 * The page inside a frame of somebody else's page: looks as the host asks, grows with what it holds, takes shots in
 * from the host, and tells it the answer only when the visitor says so.
 */
import "../main.js";
import "./embed.css";
import type { Report } from "../core/engine.js";
import type { StraightAnswerPage } from "../page/page.js";
import english from "../text/en/embed.ftl?raw";
import { learn, say, sayAround } from "../text/say.js";
import { look } from "./look.js";
import { marked, type ToHost, toFrame } from "./messages.js";
import { settingsIn } from "./settings.js";

const settings = settingsIn(location.search);
const page = document.querySelector<StraightAnswerPage>("straight-answer-page")!;
const consent = document.querySelector<HTMLElement>(".consent")!;
const agreed = consent.querySelector<HTMLInputElement>("input")!;
/** Known from the host's first message; results go to this origin and no other. */
let host: string | null = null;
let report: Report | null = null;
let height = 0;

learn(english);
// In another language the page waits for its texts.
void customElements.whenDefined("straight-answer-page").then(start);

function start(): void {
  look(settings);
  page.opening = settings.opening;
  // Until the visitor does something here, the host's page keeps its place and its keyboard.
  page.quiet = true;
  for (const touched of ["pointerdown", "keydown"])
    addEventListener(touched, () => (page.quiet = false), { once: true, capture: true });
  // Says only that there is somebody to talk to; who hears it is not yet known.
  if (parent !== window) parent.postMessage(marked({ type: "ready" }), "*");
}

page.addEventListener("answered", (event) => {
  report = (event as CustomEvent<Report>).detail;
  tellAnswer();
});
page.addEventListener("refused", (event) => send({ type: "error", message: (event as CustomEvent<string>).detail }));
agreed.addEventListener("change", tellAnswer);
new ResizeObserver(tellHeight).observe(document.body);
// A frame that is out of sight is not drawn, and what is not drawn tells no size.
new MutationObserver(tellHeight).observe(page, {
  subtree: true,
  childList: true,
  attributes: true,
  characterData: true,
});

addEventListener("message", (event) => {
  if (event.source !== parent || parent === window) return;
  const message = toFrame(event.data);
  if (!message) return;
  if (message.type === "hello") meet(event.origin);
  else if (event.origin === host) open(message.text, message.name);
});

const open = (text: string, name: string): void =>
  page.open([{ source: { kind: "pasted", name: name || say("embed-shots"), text } }]);

/** The first host stays the host: a page that navigates loads a new frame. */
function meet(origin: string): void {
  if (host !== null || !/^https?:/.test(origin)) return;
  host = origin;
  const name = document.createElement("b");
  name.textContent = new URL(origin).host;
  consent.querySelector("span")!.replaceChildren(...(sayAround("embed-agree", { host: name }) as (string | Node)[]));
  consent.hidden = false;
  tellHeight();
}

function tellHeight(): void {
  const now = Math.ceil(document.body.getBoundingClientRect().height);
  if (now === height || host === null) return;
  height = now;
  send({ type: "resize", height });
}

function tellAnswer(): void {
  if (!agreed.checked || !report) return;
  const { answer, asked } = report;
  send({
    type: "answer",
    answer: { decision: answer.decision, estimate: answer.estimate, words: answer.words, asked },
  });
}

function send(message: ToHost): void {
  if (host !== null) parent.postMessage(marked(message), host);
}
