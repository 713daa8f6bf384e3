/** What the ball speeds could carry, closed: offered where the launch is there. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report, Session } from "../core/engine.js";
import { door, hasShotsWith, LAUNCH, waiting } from "../pieces/door.js";
import { withTexts } from "../text/spoken.js";

export const potentialDoor = (
  session: Session,
  { baseline, candidate }: Report["asked"],
): TemplateResult | typeof nothing =>
  hasShotsWith(session, LAUNCH)
    ? door(
        "potential",
        "flight",
        () => withTexts(["flight"], () => import("./part.js")),
        html`
        <straight-answer-potential .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting()}</straight-answer-potential>`,
      )
    : nothing;
