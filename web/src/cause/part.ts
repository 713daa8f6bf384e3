/** Part 7, open. Loaded when its door is opened. */
import "../styles/flight.css";
import "../styles/cause.css";
import type { TemplateResult } from "lit";
import type { Cause, Flights } from "../core/flights.js";
import { OpenedPart } from "../pieces/opened-part.js";
import english from "../text/en/flight.ftl?raw";
import { learn } from "../text/say.js";
import { causeView } from "./view.js";

learn(english);

export class StraightAnswerCause extends OpenedPart<Cause> {
  protected override ask(from: Flights): Promise<Cause> {
    const { session, baseline, candidate } = this;
    return from.cause({
      session,
      baseline,
      candidate: candidate ?? baseline,
      ...(this.hand ? { hand: this.hand } : {}),
    });
  }

  protected override show(cause: Cause): TemplateResult {
    return causeView(cause, this.session, this.hand, this.chooseHand);
  }
}

customElements.define("straight-answer-cause", StraightAnswerCause);
