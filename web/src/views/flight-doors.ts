/** Parts 6 to 8, closed: what stands on the page before somebody wants to know; each is loaded when it is opened. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report, Session } from "../engine.js";

const LAUNCH = ["carry", "ball_speed", "launch_angle", "spin_rate"];

/** The doors that this session has something behind. */
export function flightDoors(session: Session, report: Report): TemplateResult {
  const { baseline, candidate } = report.asked;
  const has = (measures: readonly string[]) => session.shots.length > 0 && measures.every((id) => session.measures.includes(id));
  return html`
    ${has(["carry", "offline"])
      ? door("landing", "Where they land", () => import("../landing-part.js"), html`
          <straight-answer-landing .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting}</straight-answer-landing>`)
      : nothing}
    ${has(LAUNCH) && candidate !== null
      ? door("cause", "Club or swing?", () => import("../cause-part.js"), html`
          <straight-answer-cause .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting}</straight-answer-cause>`)
      : nothing}
    ${has(LAUNCH)
      ? door("potential", "What this ball speed could carry", () => import("../potential-part.js"), html`
          <straight-answer-potential .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting}</straight-answer-potential>`)
      : nothing}`;
}

const waiting = html`<p class="hint">Loading…</p>`;

const door = (id: string, title: string, load: () => Promise<unknown>, body: TemplateResult): TemplateResult => html`
  <section class="part" id=${id} aria-labelledby="${id}-title">
    <details class="flight" @toggle=${(event: Event) => opened(event, load)}>
      <summary><h2 id="${id}-title" tabindex="-1">${title}</h2></summary>
      ${body}
    </details>
  </section>`;

function opened({ currentTarget }: Event, load: () => Promise<unknown>): void {
  const details = currentTarget as HTMLDetailsElement;
  if (!details.open) return;
  load().catch(() => {
    const text = details.querySelector(":scope > * > p.hint");
    if (text) text.textContent = "This part could not be loaded. Check the connection, reload the page and open it again.";
  });
}
