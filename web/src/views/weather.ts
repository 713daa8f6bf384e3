/** The weather that day, and what the answer is in standard air: modeled, and labeled so. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report } from "../engine.js";
import type { Conditions, InStandardAir } from "../flights.js";
import { plain, typedNumber } from "../format.js";
import { say } from "../text/say.js";

export interface WeatherActions {
  set: (change: Partial<Conditions>) => void;
}

const FIELDS = ["temperature", "altitude_ft", "wind_helping_mph", "wind_to_right_mph"] as const;

const UNITS = [
  { value: "celsius", label: "°C" },
  { value: "fahrenheit", label: "°F" },
] as const;

/** The fields; an empty one is as in standard air. */
export const weatherForm = (conditions: Conditions, actions: WeatherActions): TemplateResult => html`
  <form class="weather" @submit=${(event: Event) => event.preventDefault()}>
    ${FIELDS.map(
      (key) => html`
        <label>
          <span>${say(key)}</span>
          <input inputmode="text" autocomplete="off" size="6" placeholder=${say(`${key}-hint`)} .value=${conditions[key] === undefined ? "" : plain(conditions[key])}
            @change=${(event: Event) => actions.set({ [key]: typedNumber((event.target as HTMLInputElement).value) ?? undefined })} />
        </label>`,
    )}
    <fieldset>
      <legend>${say("temperature-in")}</legend>
      <div class="segments">
        ${UNITS.map(
          ({ value, label }) => html`
            <label class="segment">
              <input type="radio" name="temperature-unit" value=${value} .checked=${conditions.temperature_unit === value}
                @change=${() => actions.set({ temperature_unit: value })} />
              <span>${label}</span>
            </label>`,
        )}
      </div>
    </fieldset>
  </form>`;

export const weatherSaid = (air: InStandardAir, report: Report | null): TemplateResult => html`
  <p class="said">${air.words}</p>
  <p class="hint">${air.note}</p>
  ${report
    ? html`<div class="told-modeled"><h3>${say("weather-answer")}</h3><p>${report.answer.words.headline}</p><p class="quiet">${report.answer.words.detail}</p></div>`
    : nothing}`;
