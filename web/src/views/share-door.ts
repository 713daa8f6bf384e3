/** Part 10, closed: what stands on the page before somebody wants to keep or share; the rest is loaded when it is opened. */
import { html, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { Measure, Question, Session } from "../engine.js";

export const shareDoor = (
  session: Session,
  question: Question,
  measures: readonly Measure[],
  actions: Actions,
): TemplateResult => html`
  <section class="part" id="share" aria-labelledby="share-title">
    <details class="share" @toggle=${load}>
      <summary><h2 id="share-title" tabindex="-1">Keep and share</h2></summary>
      <straight-answer-share .session=${session} .question=${question} .measures=${measures} .ask=${actions.share} .writeCsv=${actions.writeCsv}>
        <p class="hint">Loading…</p>
      </straight-answer-share>
    </details>
  </section>`;

function load({ currentTarget }: Event): void {
  const details = currentTarget as HTMLDetailsElement;
  if (!details.open) return;
  import("../share/share-part.js").catch(() => {
    const text = details.querySelector("straight-answer-share > p");
    if (text) text.textContent = "This part could not be loaded. Check the connection, reload the page and open it again.";
  });
}
