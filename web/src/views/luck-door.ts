/** Part 5, closed: what stands on the page before somebody wants to know; the rest is loaded when it is opened. */
import { html, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { Measure, Question, Session } from "../engine.js";

export const luckDoor = (
  session: Session,
  question: Question,
  measures: readonly Measure[],
  actions: Actions,
): TemplateResult => html`
  <section class="part" id="luck" aria-labelledby="luck-title">
    <details class="luck" @toggle=${load}>
      <summary><h2 id="luck-title" tabindex="-1">How far luck reaches</h2></summary>
      <straight-answer-luck .session=${session} .question=${question} .measures=${measures} .ask=${actions.luck}>
        <p class="hint">Loading…</p>
      </straight-answer-luck>
    </details>
  </section>`;

function load({ currentTarget }: Event): void {
  const details = currentTarget as HTMLDetailsElement;
  if (!details.open) return;
  import("../luck-part.js").catch(() => {
    const text = details.querySelector("straight-answer-luck > p");
    if (text) text.textContent = "This part could not be loaded. Check the connection, reload the page and open it again.";
  });
}
