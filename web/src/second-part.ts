/** Before and after, open: keeps where the change was and what it is called. Loaded when its door is opened. */
import "./styles/flight.css";
import "./styles/cause.css";
import "./styles/change.css";
import "./styles/slider.css";
import { html, type TemplateResult } from "lit";
import type { Question } from "./engine.js";
import type { MeasureView } from "./format.js";
import type { Flights, Second } from "./flights.js";
import { OpenedPart } from "./opened-part.js";
import type { Refusal } from "../pkg/straight_answer.js";
import { controls, secondView, type SecondActions } from "./views/second.js";
import { trouble } from "./views/trouble.js";

export class StraightAnswerSecond extends OpenedPart<Second> {
  static override properties = { ...OpenedPart.properties, question: { attribute: false }, measure: { attribute: false } };
  declare question: Question;
  declare measure: MeasureView;

  /** Null puts the change in the middle. */
  #from: number | null = null;
  #names: [string, string] = ["before", "after"];
  readonly #actions: SecondActions = {
    move: (from) => this.change(() => (this.#from = from)),
    name: (which, name) => this.change(() => (this.#names[which] = name.trim() || (which ? "after" : "before"))),
  };

  get #at(): number {
    return this.#from ?? Math.floor(this.session.shots.length / 2) + 1;
  }

  protected override ask(from: Flights): Promise<Second> {
    const { session, question, baseline, candidate } = this;
    return from.second({
      session,
      question: { ...question, baseline, ...(candidate === null ? {} : { candidate }) },
      is_second: session.shots.map((_, index) => index + 1 >= this.#at),
      names: this.#names,
    });
  }

  protected override show(second: Second): TemplateResult {
    const { session, measure } = this;
    return html`<div class="card">${secondView({ second, session, measure, from: this.#at, names: this.#names }, this.#actions)}</div>`;
  }

  protected override showTrouble(refusal: Refusal): TemplateResult {
    return html`<div class="card">${trouble(refusal)} ${controls({ session: this.session, from: this.#at, names: this.#names }, this.#actions)}</div>`;
  }

  protected override forget(): void {
    this.#from = null;
  }
}

customElements.define("straight-answer-second", StraightAnswerSecond);
