/** A part that is closed: what stands on the page before somebody wants to know; what is behind it is loaded when it is opened. */
import { html, type TemplateResult } from "lit";
import type { Session } from "../core/engine.js";
import { shotCount } from "../state/shots.js";
import { say } from "../text/say.js";

/** Stands inside the part's element until that is there. */
export const waiting = (): TemplateResult => html`<p class="hint">${say("loading")}</p>`;

/** The parts behind doors; each has a title and a line that says what is there. */
type DoorId = "bet" | "luck" | "landing" | "cause" | "potential" | "change" | "weather" | "keep" | "share";

/** A whole part behind a door; `look` is the class of its `details`. */
export const door = (
  id: DoorId,
  look: string,
  load: () => Promise<unknown>,
  body: TemplateResult,
): TemplateResult => html`
  <section class="part" id=${id} aria-labelledby="${id}-title">
    <details class=${look} @toggle=${(event: Event) => opened(event, load)}>
      <summary><hgroup><h2 id="${id}-title" tabindex="-1">${say(`door-${id}`)}</h2><p>${say(`door-${id}-line`)}</p></hgroup></summary>
      ${body}
    </details>
  </section>`;

/** Loads what is behind a door that was opened; a failure is said where the part would stand. */
export function opened({ currentTarget }: Event, load: () => Promise<unknown>): void {
  const details = currentTarget as HTMLDetailsElement;
  if (!details.open) return;
  load().catch(() => {
    const text = details.querySelector(":scope > :not(p, summary) > p.hint");
    if (text) text.textContent = say("not-loaded-door");
  });
}

/** Whether shots of a session have all of these. */
export const hasShotsWith = (session: Session, wanted: readonly string[]): boolean =>
  shotCount(session) > 0 && wanted.every((id) => session.measures.includes(id));

/** What a shot's flight can be worked out from. */
export const LAUNCH = ["carry", "ball_speed", "launch_angle", "spin_rate"];
