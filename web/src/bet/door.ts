/** What would you bet, closed. */
import { html, type TemplateResult } from "lit";
import type { Question, Session } from "../core/engine.js";
import { door, waiting } from "../pieces/door.js";
import type { Actions } from "../state/actions.js";
import { withTexts } from "../text/spoken.js";

export const betDoor = (session: Session, question: Question, actions: Actions): TemplateResult =>
  door(
    "bet",
    "bet",
    () => withTexts(["bet"], () => import("./part.js")),
    html`
    <straight-answer-bet .session=${session} .question=${question} .choose=${actions.ask}>${waiting()}</straight-answer-bet>`,
  );
