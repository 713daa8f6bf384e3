/** What a link holds, and whose settings are on the screen: the first thing that somebody who opens one sees. */
import { leftOutCount, shotCount } from "../state/shots.js";
import "./sent.css";
import { html, nothing, type TemplateResult } from "lit";
import type { Session } from "../core/engine.js";
import type { Actions } from "../state/actions.js";
import { isChanged } from "../state/link.js";
import type { Sent, State } from "../state/state.js";
import english from "../text/en/sent.ftl?raw";
import { learn, say, sayAround } from "../text/say.js";

learn(english);

export function sent(state: State, sender: Sent, session: Session, actions: Actions): TemplateResult {
  const changed = isChanged(state);
  return html`
    <section class="card sent" id="sent" aria-labelledby="sent-title">
      <h2 id="sent-title" tabindex="-1">${say("sent-title")}</h2>
      <p>${holds(session)} ${missing(state)}</p>
      ${sender.view.note ? html`<p>${sayAround("sent-note", { note: html`<bdi class="note">${sender.view.note}</bdi>` })}</p>` : nothing}
      ${sender.notices.map(({ message }) => html`<p class="hint">${message}</p>`)}
      <p class="whose" aria-live="polite">${changed ? say("sent-yours") : say("sent-try")}</p>
      ${changed ? html`<div class="buttons"><button type="button" @click=${actions.asSent}>${say("sent-back")}</button></div>` : nothing}
    </section>`;
}

/** Shots that the numbering misses: none of them is marked, and so none is left out. */
const missing = ({ report }: State): string =>
  report?.trust.find(({ seen }) => seen.kind === "numbers_missing")?.what ?? "";

function holds(session: Session): string {
  const { builds, summaries, measures } = session;
  const [shots, out] = [shotCount(session), leftOutCount(session)];
  const what = shots > 0 ? say("n-shots", { count: shots }) : say("n-averages", { count: summaries.length });
  const held = say("sent-holds", {
    what,
    clubs: say("n-clubs", { count: builds.length }),
    columns: say("n-measures", { count: measures.length }),
  });
  const left = out === 0 ? say("sent-none-out") : say("sent-out", { count: out });
  return shots > 0 ? `${held} ${left}` : held;
}
