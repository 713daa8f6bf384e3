/** Part 5, closed. */
import { html, type TemplateResult } from "lit";
import type { Measure, Question, Session } from "../core/engine.js";
import { door, waiting } from "../pieces/door.js";
import type { Actions } from "../state/actions.js";
import { withTexts } from "../text/spoken.js";

export const luckDoor = (
  session: Session,
  question: Question,
  measures: readonly Measure[],
  actions: Actions,
): TemplateResult =>
  door(
    "luck",
    "luck",
    () => withTexts(["luck"], () => import("./part.js")),
    html`
    <straight-answer-luck .session=${session} .question=${question} .measures=${measures} .ask=${actions.luck}>${waiting()}</straight-answer-luck>`,
  );
