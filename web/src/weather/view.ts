/** The weather that day, and what the answer is in standard air: modeled, and labeled so. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report } from "../core/engine.js";
import type { Conditions, InStandardAir } from "../core/flights.js";
import { chosenOf, plain, typedNumber } from "../format/values.js";
import { say } from "../text/say.js";
import { shownIn } from "../text/units.js";

export interface WeatherActions {
  set: (change: Partial<Conditions>) => void;
}

/** Each with the unit it has inside; that of the temperature is chosen below. */
const FIELDS = [
  ["altitude_ft", "ft"],
  ["wind_helping_mph", "mph"],
  ["wind_to_right_mph", "mph"],
] as const;

const UNITS = [
  { value: "celsius", label: "°C" },
  { value: "fahrenheit", label: "°F" },
] as const;

type Figure = "temperature" | (typeof FIELDS)[number][0];

function field(
  key: Figure,
  label: string,
  scale: number,
  conditions: Conditions,
  actions: WeatherActions,
): TemplateResult {
  const value = conditions[key];
  const taken = (event: Event) => {
    const typed = typedNumber((event.target as HTMLInputElement).value);
    actions.set({ [key]: typed === null ? undefined : typed / scale });
  };
  return html`
    <label>
      <span>${label}</span>
      <input inputmode="text" autocomplete="off" size="6" placeholder=${say(`${key}-hint`)} .value=${value === undefined ? "" : plain(chosenOf(value, { scale, decimals: 0 }))}
        @change=${taken} />
    </label>`;
}

/** The fields; an empty one is as in standard air. */
export const weatherForm = (conditions: Conditions, actions: WeatherActions): TemplateResult => html`
  <form class="weather" @submit=${(event: Event) => event.preventDefault()}>
    ${field("temperature", say("temperature"), 1, conditions, actions)}
    ${FIELDS.map(([key, of]) => {
      const { unit, scale } = shownIn(of);
      return field(key, say(key, { unit }), scale, conditions, actions);
    })}
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
  ${
    report
      ? html`<div class="told-modeled"><h3>${say("weather-answer")}</h3><p>${report.answer.words.headline}</p><p class="quiet">${report.answer.words.detail}</p></div>`
      : nothing
  }`;
