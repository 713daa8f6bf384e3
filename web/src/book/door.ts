/** Keeping what stands on the page, closed. */
import { html, nothing, type TemplateResult } from "lit";
import type { Question, Report, Session } from "../core/engine.js";
import { door, waiting } from "../pieces/door.js";
import type { Actions } from "../state/actions.js";
import type { State } from "../state/state.js";
import { withTexts } from "../text/spoken.js";

/** `kept`: told of whom the shots are. On somebody else's page nothing is kept; the shots of a test, and what was opened from the book, lie there already. */
export const keepDoor = (
  { given }: State,
  report: Report,
  session: Session,
  question: Question,
  actions: Actions,
  kept: (session: Session, name: string) => void,
): TemplateResult | typeof nothing =>
  window.self !== window.top || given.some(({ source }) => source.kind === "logged")
    ? nothing
    : door(
        "keep",
        "keep",
        () => withTexts(["book", "kept"], () => import("./keep-part.js")),
        html`
    <straight-answer-keep .session=${session} .question=${question} .line=${report.answer.words.headline}
      .writeCsv=${actions.writeCsv} .kept=${kept}>${waiting()}</straight-answer-keep>`,
      );
