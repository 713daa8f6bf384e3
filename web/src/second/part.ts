/** Before and after, open: keeps what tells the two sides apart and what they are called. Loaded when its door is opened. */
import "../styles/flight.css";
import "../styles/cause.css";
import "../styles/change.css";
import "../styles/slider.css";
import { html, type TemplateResult } from "lit";
import type { Refusal } from "../../pkg/straight_answer.js";
import type { Question } from "../core/engine.js";
import type { Flights, Second } from "../core/flights.js";
import type { MeasureView } from "../format/values.js";
import { OpenedPart } from "../pieces/opened-part.js";
import { trouble } from "../pieces/trouble.js";
import { secondOf, shotCount } from "../state/shots.js";
import english from "../text/en/flight.ftl?raw";
import { learn, say } from "../text/say.js";
import { controls, type SecondActions, type Sides, secondView } from "./view.js";

learn(english);

export class StraightAnswerSecond extends OpenedPart<Second> {
  static override properties = {
    ...OpenedPart.properties,
    question: { attribute: false },
    measure: { attribute: false },
  };
  declare question: Question;
  declare measure: MeasureView;

  /** Null puts the change in the middle. */
  #from: number | null = null;
  #names: [string, string] = [say("before"), say("after")];
  /** The golfer tells the sides by a shot although the session has a column for them. */
  #isByShot = false;
  /** Which two values of the session's own second factor are held against each other. */
  #values: [number, number] = [0, 1];
  readonly #actions: SecondActions = {
    move: (from) => this.change(() => (this.#from = from)),
    name: (which, name) =>
      this.change(() => (this.#names[which] = name.trim() || (which ? say("after") : say("before")))),
    byShot: (isByShot) => this.change(() => (this.#isByShot = isByShot)),
    take: (which, value) =>
      this.change(() => {
        const other = this.#values[1 - which];
        // The value of the other side changes places with this one.
        if (value === other) this.#values[1 - which] = this.#values[which]!;
        this.#values[which] = value;
      }),
  };

  /** What tells the sides apart: the session's own column where it has one with two values or more. */
  get #sides(): Sides {
    const { second } = this.session;
    const shots = shotCount(this.session);
    const column = second && second.values.length > 1 ? second : null;
    const from = this.#from ?? Math.floor(shots / 2) + 1;
    return {
      column,
      isByShot: column === null || this.#isByShot,
      values: this.#values,
      from,
      names: this.#names,
      shots,
    };
  }

  protected override ask(from: Flights): Promise<Second> {
    const { session, question, baseline, candidate } = this;
    const { column, isByShot, values, from: first, names } = this.#sides;
    const side = (value: number | undefined) => (value === values[1] ? true : value === values[0] ? false : null);
    return from.second({
      session,
      question: { ...question, baseline, ...(candidate === null ? {} : { candidate }) },
      is_second: Array.from({ length: shotCount(session) }, (_, at) =>
        isByShot ? at + 1 >= first : side(secondOf(session, at)),
      ),
      names: isByShot ? [...names] : [column!.values[values[0]]!, column!.values[values[1]]!],
    });
  }

  protected override show(second: Second): TemplateResult {
    return html`<div class="card">${secondView(second, this.measure, this.#sides, this.#actions)}</div>`;
  }

  protected override showTrouble(refusal: Refusal): TemplateResult {
    return html`<div class="card">${trouble(refusal)} ${controls(this.#sides, this.#actions)}</div>`;
  }

  protected override forget(): void {
    this.#from = null;
    const count = this.session.second?.values.length ?? 0;
    if (this.#values.some((value) => value >= count)) this.#values = [0, 1];
  }
}

customElements.define("straight-answer-second", StraightAnswerSecond);
