/** The page as a whole: which parts there are in which state. */
import { html, nothing, type TemplateResult } from "lit";
import { answer, landed, measured } from "../answer/answer.js";
import { entry } from "../entry/entry.js";
import { later } from "../pieces/later.js";
import { part } from "../pieces/pieces.js";
import { counts } from "../question/counts.js";
import { read } from "../shots/read.js";
import { undo } from "../shots/undo.js";
import { give } from "../start/give.js";
import type { Actions } from "../state/actions.js";
import { namesTooMany } from "../state/doubts.js";
import { type Entry, hasUnseenAnswer, type State } from "../state/state.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";
import type { Place } from "./place.js";

const sent = later(() => withTexts(["sent"], () => import("../sent/sent.js")).then((module) => module.sent));
/** What stands above the answer of a link is fetched with the link: once the answer is there, nothing pushes it down. */
export const aheadOfLink = sent.ahead;
const cut = later(() => withTexts(["sent"], () => import("../sent/cut.js")).then((module) => module.cutView));
const below = later(() => withTexts(["trust"], () => import("./below.js")).then((module) => module.below));

const photos = later(() => withTexts(["photo"], () => import("../photo/part.js")).then((module) => module.photos));

/** What of the page is drawn already. */
export interface Drawn {
  /** What stands in the answer's column under it: from the first answer on, or once there is something to settle first. */
  readonly under: boolean;
  /** What stands below the answer: once the first answer can be seen. */
  readonly whole: boolean;
}

/** Before the first answer, what stands under it would be moved away by it; once it was there, it stays. */
export const hasUnder = ({ read, report, wants }: State, was: boolean): boolean =>
  read !== null && (was || report !== null || wants !== "check");

export function page(state: State, actions: Actions, { under, whole }: Drawn, place: Place | null): TemplateResult {
  const above = state.cut ? cut(actions.drawAgain, state.cut, state.measures, actions) : nothing;
  if (!state.read) return html`${above}${before(state, actions, place)}${announcement(state)}`;
  const { session } = state.read;
  const comparable = session.builds.length > 1 && !namesTooMany(state.given);
  return html`
    ${above}
    ${state.sent ? sent(actions.drawAgain, state, state.sent, session, actions) : nothing}
    <div class="parts">
      <div class="told">
        ${state.entry ? entered(state, state.entry, actions) : nothing}
        ${answer(state, session, actions)}
        ${under && comparable && state.question ? counts(state, session, state.question, actions) : nothing}
        ${comparable ? landed(state, session) : nothing}
        ${state.entry || !under ? nothing : read(state, session, actions)}
        ${state.report ? measured(state, state.report, session, actions) : nothing}
      </div>
      ${whole && state.report && state.question ? below(actions.drawAgain, state, state.report, state.question, session, actions) : nothing}
    </div>
    ${hasUnseenAnswer(state) ? html`<a class="see-answer" href="#answer">${say("see-answer")}</a>` : nothing}
    ${announcement(state)}`;
}

/** Before anything is read. The start and what stands behind its doors are no part of this element. */
function before(state: State, actions: Actions, place: Place | null): TemplateResult | typeof nothing {
  if (place === "start") return undone(state, actions);
  const back =
    place && document.querySelector("#start")
      ? html`<p class="back"><a href="#start">${say("start-back")}</a></p>`
      : nothing;
  if (place && place !== "shots") return html`${back}`;
  const first = state.wants
    ? reading(state, actions)
    : state.entry
      ? entered(state, state.entry, actions)
      : give(state, actions);
  return html`${back}<div class="parts empty">${first}</div>${undone(state, actions)}`;
}

/** What was there before starting again is one tap away, wherever that led. */
const undone = (state: State, actions: Actions): TemplateResult | typeof nothing =>
  state.past.length > 0 ? html`<div class="left-behind">${undo(state, actions)}</div>` : nothing;

/** What is entered in the place of the shots. */
function entered(state: State, shown: Entry, actions: Actions): TemplateResult {
  if (shown.kind !== "photos") return entry(state, shown, actions);
  const taking = {
    measures: state.measures,
    read: (text: string) => actions.read(text, {}),
    taken: actions.photographed,
    averages: (draft: unknown) => actions.enter({ kind: "averages", at: null, draft }),
    type: () => actions.enter({ kind: "grid", at: null }),
    cancel: () => actions.enter(null),
  };
  return part("shots", say("photo-title"), photos(actions.drawAgain, shown.files, taking));
}

/** Before it is known what there is to show, as the page's own file has it. */
export const fetching = (): TemplateResult =>
  part("shots", say("your-shots"), html`<div class="card opening"><p>${say("opening")}</p></div>`);

const reading = (state: State, actions: Actions): TemplateResult =>
  part(
    "shots",
    say("your-shots"),
    html`
      <div class="card" aria-busy="true">
        <p class="working">${say("reading", { names: state.given.map(({ source }) => source.name).join(", "), count: length(state) })}</p>
        <div class="buttons"><button type="button" @click=${actions.startAgain}>${say("stop")}</button></div>
      </div>`,
  );

const length = ({ given }: State): number => given.reduce((sum, { source }) => sum + source.text.length, 0);

/** Heard, not seen: what changed. */
const announcement = (state: State): TemplateResult =>
  html`<p class="visually-hidden" role="status">${said(state)}</p>`;

function said(state: State): string {
  if (state.wants === "read") return say("says-reading");
  if (state.wants === "check" || state.given.length === 0) return "";
  if (state.report) return say("says-answer", { headline: state.report.answer.words.headline });
  return state.trouble ? `${state.trouble.message} ${state.trouble.remedy}` : "";
}
