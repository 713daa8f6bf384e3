/** Part 10, closed. */
import { html, type TemplateResult } from "lit";
import type { Measure, Question, Session } from "../core/engine.js";
import { door, waiting } from "../pieces/door.js";
import type { Actions } from "../state/actions.js";
import { withTexts } from "../text/spoken.js";

export const shareDoor = (
  session: Session,
  question: Question,
  measures: readonly Measure[],
  actions: Actions,
): TemplateResult =>
  door(
    "share",
    "share",
    () => withTexts(["share"], () => import("./part.js")),
    html`
    <straight-answer-share .session=${session} .question=${question} .measures=${measures} .ask=${actions.share}
      .writeCsv=${actions.writeCsv}>${waiting()}</straight-answer-share>`,
  );
