/** Whether carry and launch belong together, open. Loaded when its door is opened. */
import "../styles/flight.css";
import type { TemplateResult } from "lit";
import type { Consistency, Flights } from "../core/flights.js";
import { OpenedPart } from "../pieces/opened-part.js";
import english from "../text/en/flight.ftl?raw";
import { learn } from "../text/say.js";
import { consistencyView } from "./view.js";

learn(english);

export class StraightAnswerConsistency extends OpenedPart<Consistency> {
  protected override ask(from: Flights): Promise<Consistency> {
    return from.consistency({ session: this.session });
  }

  protected override show(consistency: Consistency): TemplateResult {
    return consistencyView(consistency);
  }
}

customElements.define("straight-answer-consistency", StraightAnswerConsistency);
