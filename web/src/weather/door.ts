/** The weather, closed: offered where the launch is there. */
import { html, nothing, type TemplateResult } from "lit";
import type { Question, Report, Session } from "../core/engine.js";
import { door, hasShotsWith, LAUNCH, waiting } from "../pieces/door.js";
import type { Actions } from "../state/actions.js";
import { withTexts } from "../text/spoken.js";

export const weatherDoor = (
  session: Session,
  { baseline, candidate }: Report["asked"],
  question: Question,
  actions: Pick<Actions, "check" | "weather">,
): TemplateResult | typeof nothing =>
  hasShotsWith(session, LAUNCH)
    ? door(
        "weather",
        "flight",
        () => withTexts(["flight"], () => import("./part.js")),
        html`
        <straight-answer-weather .session=${session} .baseline=${baseline} .candidate=${candidate} .question=${question}
          .check=${actions.check} .tell=${actions.weather}>${waiting()}</straight-answer-weather>`,
      )
    : nothing;
