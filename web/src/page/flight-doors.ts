/** Parts 6 to 8, closed: what stands on the page before somebody wants to know; each is loaded when it is opened. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../state/actions.js";
import type { Measure, Question, Report, Session } from "../core/engine.js";
import { measureView } from "../format/values.js";
import { foreign } from "../pieces/pieces.js";
import { door, opened, waiting } from "../pieces/door.js";
import { say, sayAround } from "../text/say.js";
import { withTexts } from "../text/spoken.js";

const LAUNCH = ["carry", "ball_speed", "launch_angle", "spin_rate"];

/** The doors that this session has something behind. */
export function flightDoors(session: Session, question: Question, report: Report, measures: readonly Measure[], actions: Actions): TemplateResult {
  const { baseline, candidate, measure } = report.asked;
  const has = (wanted: readonly string[]) => session.shots.length > 0 && wanted.every((id) => session.measures.includes(id));
  return html`
    ${has(["carry", "offline"])
      ? door("landing", "flight", () => withTexts(["flight"], () => import("../landing/part.js")), html`
          <straight-answer-landing .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting()}</straight-answer-landing>`)
      : nothing}
    ${has(LAUNCH) && candidate !== null
      ? door("cause", "flight", () => withTexts(["flight"], () => import("../cause/part.js")), html`
          <straight-answer-cause .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting()}</straight-answer-cause>`)
      : nothing}
    ${has(LAUNCH)
      ? door("potential", "flight", () => withTexts(["flight"], () => import("../potential/part.js")), html`
          <straight-answer-potential .session=${session} .baseline=${baseline} .candidate=${candidate}>${waiting()}</straight-answer-potential>`)
      : nothing}
    ${has([measure]) && candidate !== null
      ? door("change", "flight", () => withTexts(["flight"], () => import("../second/part.js")), html`
          <p class="hint">${session.second ? html`${sayAround("change-said", { name: foreign(session.second.name) })} ` : nothing}${say("change-asked")}</p>
          <straight-answer-second .session=${session} .baseline=${baseline} .candidate=${candidate} .question=${question}
            .measure=${measureView(measure, measures, session)}>${waiting()}</straight-answer-second>`)
      : nothing}
    ${has(LAUNCH)
      ? door("weather", "flight", () => withTexts(["flight"], () => import("../weather/part.js")), html`
          <straight-answer-weather .session=${session} .baseline=${baseline} .candidate=${candidate} .question=${question}
            .check=${actions.check} .tell=${actions.weather}>${waiting()}</straight-answer-weather>`)
      : nothing}`;
}

/** Under what can be trusted: whether the rows hold together. */
export const consistencyDoor = (session: Session): TemplateResult | typeof nothing =>
  session.shots.length > 0 && LAUNCH.every((id) => session.measures.includes(id))
    ? html`
        <details class="flight" id="consistency" @toggle=${(event: Event) => opened(event, () => withTexts(["flight"], () => import("../consistency/part.js")))}>
          <summary><h3>${say("consistency-title")}</h3></summary>
          <straight-answer-consistency .session=${session} .baseline=${0} .candidate=${null}>${waiting()}</straight-answer-consistency>
        </details>`
    : nothing;
