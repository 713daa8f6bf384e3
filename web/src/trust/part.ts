/** Part 4, loaded after the answer: whether the session can be trusted, and every shot in the order hit. */
import "./trust.css";
import { html, type TemplateResult } from "lit";
import { consistencyDoor } from "../consistency/door.js";
import type { Report, Session } from "../core/engine.js";
import { measureView } from "../format/values.js";
import type { Actions } from "../state/actions.js";
import type { State } from "../state/state.js";
import english from "../text/en/trust.ftl?raw";
import { learn } from "../text/say.js";
import { shots } from "./every-shot.js";
import { trust } from "./trust.js";

learn(english);

export const trustPart = (state: State, report: Report, session: Session, actions: Actions): TemplateResult =>
  html`${trust(report)} ${shots(session, report, measureView(report.asked.measure, state.measures, session), state.shotsShown, actions)} ${consistencyDoor(session)}`;
