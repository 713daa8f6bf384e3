/** Where a gap comes from, closed: offered of two clubs whose launch is there. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report, Session } from "../core/engine.js";
import { door, hasShotsWith, LAUNCH, waiting } from "../pieces/door.js";
import { withTexts } from "../text/spoken.js";

export const causeDoor = (
  session: Session,
  { baseline, candidate }: Report["asked"],
): TemplateResult | typeof nothing =>
  hasShotsWith(session, LAUNCH) && candidate !== null
    ? door(
        "cause",
        "flight",
        () => withTexts(["flight"], () => import("./part.js")),
        html`
        <straight-answer-cause .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting()}</straight-answer-cause>`,
      )
    : nothing;
