/** What stands below the answer: loaded once the answer can be seen. */
import { html, nothing, type TemplateResult } from "lit";
import { betDoor } from "../bet/door.js";
import "../bet/line.js";
import { keepDoor } from "../book/door.js";
import { causeDoor } from "../cause/door.js";
import type { Question, Report, Session } from "../core/engine.js";
import { landingDoor } from "../landing/door.js";
import { luckDoor } from "../luck/door.js";
import { part } from "../pieces/pieces.js";
import { potentialDoor } from "../potential/door.js";
import { secondDoor } from "../second/door.js";
import { shareDoor } from "../share/door.js";
import type { Actions } from "../state/actions.js";
import type { State } from "../state/state.js";
import { type PlainId, say } from "../text/say.js";
import { keptAs, sheetHead } from "../trust/on-paper.js";
import { trustPart } from "../trust/part.js";
import { weatherDoor } from "../weather/door.js";

export const below = (
  state: State,
  report: Report,
  question: Question,
  session: Session,
  actions: Actions,
): TemplateResult => html`
  ${sheetHead(state.given, session)}
  ${report.trust.length > 0 ? html`<div class="trusted">${part("trust", say("trust-title"), trustPart(state, report, session, actions))}</div>` : nothing}
  <div class="rooms">
    ${group("group-how-sure", [
      session.builds.length > 1 ? betDoor(session, question, actions) : nothing,
      session.builds.length > 1 ? luckDoor(session, question, state.measures, actions) : nothing,
      landingDoor(session, report.asked, question),
    ])}
    ${group("group-why", [causeDoor(session, report.asked), secondDoor(session, report.asked, question, state.measures)])}
    ${group("group-what-if", [potentialDoor(session, report.asked), weatherDoor(session, report.asked, question, actions)])}
    <div class="group">${keepDoor(state, report, session, question, actions, (of, name) => named(of, name, actions))}${shareDoor(session, question, state.measures, actions)}</div>
  </div>`;

type Room = TemplateResult | typeof nothing;

/** Rooms that answer one question of the golfer's, under that question. */
const group = (title: PlainId, rooms: readonly Room[]): Room =>
  rooms.every((room) => room === nothing)
    ? nothing
    : html`<div class="group"><p class="quiet">${say(title)}</p>${rooms}</div>`;

/** The sheet carries the name that shots were kept with. */
function named(session: Session, name: string, actions: Actions): void {
  keptAs(session, name);
  actions.drawAgain();
}
