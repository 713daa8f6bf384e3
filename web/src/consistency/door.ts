/** Under what can be trusted, closed: whether the rows hold together. */
import { html, nothing, type TemplateResult } from "lit";
import type { Session } from "../core/engine.js";
import { hasShotsWith, LAUNCH, opened, waiting } from "../pieces/door.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";

export const consistencyDoor = (session: Session): TemplateResult | typeof nothing =>
  hasShotsWith(session, LAUNCH)
    ? html`
        <details class="flight" id="consistency" @toggle=${(event: Event) => opened(event, () => withTexts(["flight"], () => import("./part.js")))}>
          <summary><h3>${say("consistency-title")}</h3></summary>
          <straight-answer-consistency .session=${session} .baseline=${0} .candidate=${null}>${waiting()}</straight-answer-consistency>
        </details>`
    : nothing;
