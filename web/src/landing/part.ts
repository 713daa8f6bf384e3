/** Part 6, open: keeps aim and width, and asks after every move. Loaded when its door is opened. */
import "../styles/flight.css";
import "./hundreds.css";
import "./landing.css";
import "../styles/slider.css";
import type { TemplateResult } from "lit";
import type { Question } from "../core/engine.js";
import type { Flights, Landing } from "../core/flights.js";
import { OpenedPart } from "../pieces/opened-part.js";
import english from "../text/en/flight.ftl?raw";
import { learn } from "../text/say.js";
import { landingView } from "./view.js";

learn(english);

export class StraightAnswerLanding extends OpenedPart<Landing> {
  static override properties = { ...OpenedPart.properties, question: { attribute: false } };
  declare question: Question;

  #aim = 0;
  /** Null leaves the width to the core. */
  #fairway: number | null = null;

  protected override ask(from: Flights): Promise<Landing> {
    return from.landing({
      session: this.session,
      baseline: this.baseline,
      aim: this.#aim,
      stopping: this.question.stopping,
      ...(this.candidate === null ? {} : { candidate: this.candidate }),
      ...(this.#fairway === null ? {} : { fairway: this.#fairway }),
      ...(this.hand ? { hand: this.hand } : {}),
    });
  }

  protected override show(landing: Landing): TemplateResult {
    const fairway = this.#fairway ?? landing.fairway;
    return landingView(
      { landing, session: this.session, aim: this.#aim, fairway, hand: this.hand },
      {
        aim: (yards) => this.change(() => (this.#aim = yards)),
        widen: (yards) => this.change(() => (this.#fairway = yards)),
        chooseHand: this.chooseHand,
      },
    );
  }

  protected override forget(): void {
    this.#aim = 0;
  }
}

customElements.define("straight-answer-landing", StraightAnswerLanding);
