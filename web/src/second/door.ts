/** Before and after, and a second thing that changed, closed: offered of two clubs. */
import { html, nothing, type TemplateResult } from "lit";
import type { Measure, Question, Report, Session } from "../core/engine.js";
import { measureView } from "../format/values.js";
import { door, hasShotsWith, waiting } from "../pieces/door.js";
import { foreign } from "../pieces/pieces.js";
import { say, sayAround } from "../text/say.js";
import { withTexts } from "../text/spoken.js";

export const secondDoor = (
  session: Session,
  { baseline, candidate, measure }: Report["asked"],
  question: Question,
  measures: readonly Measure[],
): TemplateResult | typeof nothing =>
  hasShotsWith(session, [measure]) && candidate !== null
    ? door(
        "change",
        "flight",
        () => withTexts(["flight"], () => import("./part.js")),
        html`
        <p class="hint">${session.second ? html`${sayAround("change-said", { name: foreign(session.second.name) })} ` : nothing}${say("change-asked")}</p>
        <straight-answer-second .session=${session} .baseline=${baseline} .candidate=${candidate} .question=${question}
          .measure=${measureView(measure, measures, session)}>${waiting()}</straight-answer-second>`,
      )
    : nothing;
