/** What a link holds, and whose settings are on the screen: the first thing that somebody who opens one sees. */
import "../styles/sent.css";
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { Session } from "../engine.js";
import { counted } from "../format.js";
import { isChanged } from "../link.js";
import type { Sent, State } from "../state.js";

export function sent(state: State, sender: Sent, session: Session, actions: Actions): TemplateResult {
  const changed = isChanged(state);
  return html`
    <section class="card sent" id="sent" aria-labelledby="sent-title">
      <h2 id="sent-title" tabindex="-1">Somebody shared this session with you</h2>
      <p>${holds(session)}</p>
      ${state.report && !changed ? html`<p>With the sender’s settings it says: <strong>${state.report.answer.words.headline}</strong></p>` : nothing}
      ${sender.view.note ? html`<p>With it came: <bdi class="note">${sender.view.note}</bdi></p>` : nothing}
      ${sender.notices.map(({ message }) => html`<p class="hint">${message}</p>`)}
      <p class="whose" aria-live="polite">${
        changed
          ? "The settings are yours now, and so is the answer. The link stays as it was sent."
          : "Try your own club, margin or measure under “What counts”: the link stays as it was sent."
      }</p>
      ${changed ? html`<div class="buttons"><button type="button" @click=${actions.asSent}>Back to the sender’s settings</button></div>` : nothing}
    </section>`;
}

function holds({ builds, shots, summaries, measures }: Session): string {
  const out = shots.filter((shot) => shot.left_out !== null).length;
  const what = shots.length > 0 ? counted(shots.length, "shot") : counted(summaries.length, "average");
  const columns = measures.length === 1 ? "one measure" : counted(measures.length, "measure");
  const left = out === 0 ? "No shot was left out." : `${counted(out, "shot")} left out, and still shown: struck through under “Shots in order”.`;
  return `It holds ${what} with ${counted(builds.length, "club")} and ${columns}. ${shots.length > 0 ? left : ""}`.trim();
}
