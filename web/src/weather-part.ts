/** The weather that day, open: keeps what was entered, asks for standard air and for the answer there. */
import "./styles/flight.css";
import "./styles/change.css";
import { html, type TemplateResult } from "lit";
import type { CheckRequest, Question, Report } from "./engine.js";
import type { Conditions, Flights, InStandardAir } from "./flights.js";
import { OpenedPart } from "./opened-part.js";
import type { Refusal } from "../pkg/straight_answer.js";
import { trouble } from "./views/trouble.js";
import { weatherForm, weatherSaid, type WeatherActions } from "./views/weather.js";

interface Answered {
  air: InStandardAir;
  report: Report | null;
}

export class StraightAnswerWeather extends OpenedPart<Answered> {
  static override properties = { ...OpenedPart.properties, question: { attribute: false }, check: { attribute: false } };
  declare question: Question;
  declare check: (request: CheckRequest) => Promise<Report>;

  #conditions: Conditions = { temperature_unit: "celsius" };
  readonly #actions: WeatherActions = {
    set: (change) =>
      this.change(() => {
        const all = Object.entries({ ...this.#conditions, ...change }).filter(([, value]) => value !== undefined);
        this.#conditions = Object.fromEntries(all) as unknown as Conditions;
      }),
  };

  protected override async ask(from: Flights): Promise<Answered> {
    const { session, baseline, candidate, question } = this;
    const air = await from.inStandardAir({ session, conditions: this.#conditions });
    if (candidate === null) return { air, report: null };
    // What matters of carry matters of carry in standard air; the goal goes with it.
    const margin = question.measure === "carry" && question.margin !== undefined ? question.margin : air.margin;
    const { stopping } = question;
    return { air, report: await this.check({ session: air.session, question: { baseline, candidate, measure: air.measure, margin, goal: "higher", stopping } }) };
  }

  protected override show({ air, report }: Answered): TemplateResult {
    return html`<div class="card">${weatherForm(this.#conditions, this.#actions)} ${weatherSaid(air, report)}</div>`;
  }

  protected override showTrouble(refusal: Refusal): TemplateResult {
    return html`<div class="card">${weatherForm(this.#conditions, this.#actions)} ${trouble(refusal)}</div>`;
  }
}

customElements.define("straight-answer-weather", StraightAnswerWeather);
