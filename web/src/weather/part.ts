/** The weather that day, open: keeps what was entered, asks for standard air and for the answer there. */
import "../styles/flight.css";
import "../styles/change.css";
import { html, type TemplateResult } from "lit";
import type { Refusal } from "../../pkg/straight_answer.js";
import type { CheckRequest, Question, Report } from "../core/engine.js";
import type { Conditions, Flights, InStandardAir } from "../core/flights.js";
import { askedInStandardAir } from "../core/standard-air.js";
import { OpenedPart } from "../pieces/opened-part.js";
import { trouble } from "../pieces/trouble.js";
import english from "../text/en/flight.ftl?raw";
import { learn } from "../text/say.js";
import { type WeatherActions, weatherForm, weatherSaid } from "./view.js";

learn(english);

interface Answered {
  air: InStandardAir;
  report: Report | null;
}

export class StraightAnswerWeather extends OpenedPart<Answered> {
  static override properties = {
    ...OpenedPart.properties,
    question: { attribute: false },
    check: { attribute: false },
    tell: { attribute: false },
  };
  declare question: Question;
  declare check: (request: CheckRequest) => Promise<Report>;
  /** Makes the weather part of the session; carry in standard air is one of its measures from then on. */
  declare tell: (conditions: Conditions) => void;

  #conditions: Conditions = { temperature_unit: "celsius" };
  /** What was said last; a session with other weather was read anew, or a step was taken back. */
  #told: string | null = null;
  readonly #actions: WeatherActions = {
    set: (change) => this.change(() => (this.#conditions = { ...this.#conditions, ...change })),
  };

  protected override async ask(from: Flights): Promise<Answered> {
    const { session, baseline, candidate, question } = this;
    const conditions = this.#conditions;
    const air = await from.inStandardAir({ session, conditions });
    const said = figures(conditions);
    if (said !== figures(session.weather) && said !== this.#told) {
      this.#told = said;
      this.tell(complete(conditions));
    }
    if (candidate === null) return { air, report: null };
    const asked = askedInStandardAir({ ...question, baseline, candidate }, air);
    return { air, report: await this.check({ session: air.session, question: asked }) };
  }

  /** The session's weather goes before what stands in the fields, save what has just been said. */
  protected override forget(): void {
    const now = figures(this.session.weather);
    if (now === this.#told) this.#told = null;
    else if (this.#told === null && now !== figures(this.#conditions))
      this.#conditions = this.session.weather ?? { temperature_unit: this.#conditions.temperature_unit };
  }

  protected override show({ air, report }: Answered): TemplateResult {
    return html`<div class="card">${weatherForm(this.#conditions, this.#actions)} ${weatherSaid(air, report)}</div>`;
  }

  protected override showTrouble(refusal: Refusal): TemplateResult {
    return html`<div class="card">${weatherForm(this.#conditions, this.#actions)} ${trouble(refusal)}</div>`;
  }
}

/** Every figure named: one that is not said takes back what was said before. */
const complete = ({
  temperature_unit,
  temperature,
  altitude_ft,
  humidity_percent,
  wind_helping_mph,
  wind_to_right_mph,
}: Conditions): Conditions =>
  ({ temperature_unit, temperature, altitude_ft, humidity_percent, wind_helping_mph, wind_to_right_mph }) as Conditions;

/** What weather says, to be compared. */
const figures = (conditions: Conditions | undefined): string => {
  const { temperature_unit, ...all } = complete(conditions ?? { temperature_unit: "celsius" });
  return JSON.stringify([all.temperature === undefined ? null : temperature_unit, Object.values(all)]);
};

customElements.define("straight-answer-weather", StraightAnswerWeather);
