/** Where the shots land, closed: offered where carry and offline are there. */
import { html, nothing, type TemplateResult } from "lit";
import type { Question, Report, Session } from "../core/engine.js";
import { door, hasShotsWith, waiting } from "../pieces/door.js";
import { withTexts } from "../text/spoken.js";
import "./line.js";

export const landingDoor = (
  session: Session,
  { baseline, candidate }: Report["asked"],
  question: Question,
): TemplateResult | typeof nothing =>
  hasShotsWith(session, ["carry", "offline"])
    ? door(
        "landing",
        "flight",
        () => withTexts(["flight"], () => import("./part.js")),
        html`
        <straight-answer-landing .session=${session} .baseline=${baseline} .candidate=${candidate} .question=${question}>${waiting()}</straight-answer-landing>`,
      )
    : nothing;
