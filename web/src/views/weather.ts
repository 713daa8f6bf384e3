/** The weather that day, and what the answer is in standard air: modeled, and labeled so. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report } from "../engine.js";
import type { Conditions, InStandardAir } from "../flights.js";
import { typedNumber } from "../format.js";

export interface WeatherActions {
  set: (change: Partial<Conditions>) => void;
}

const FIELDS: readonly { key: "temperature" | "altitude_ft" | "wind_helping_mph" | "wind_to_right_mph"; label: string; hint: string }[] = [
  { key: "temperature", label: "Temperature", hint: "15 °C when empty" },
  { key: "altitude_ft", label: "Feet above the sea", hint: "0 when empty" },
  { key: "wind_helping_mph", label: "Wind from behind, mph", hint: "minus for a wind in the face" },
  { key: "wind_to_right_mph", label: "Wind to the right, mph", hint: "minus for a wind to the left" },
];

const UNITS = [
  { value: "celsius", label: "°C" },
  { value: "fahrenheit", label: "°F" },
] as const;

/** The fields; an empty one is as in standard air. */
export const weatherForm = (conditions: Conditions, actions: WeatherActions): TemplateResult => html`
  <form class="weather" @submit=${(event: Event) => event.preventDefault()}>
    ${FIELDS.map(
      ({ key, label, hint }) => html`
        <label>
          <span>${label}</span>
          <input inputmode="text" autocomplete="off" size="6" placeholder=${hint} .value=${conditions[key] === undefined ? "" : String(conditions[key])}
            @change=${(event: Event) => actions.set({ [key]: typedNumber((event.target as HTMLInputElement).value) ?? undefined })} />
        </label>`,
    )}
    <fieldset>
      <legend>Temperature in</legend>
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
    ? html`<div class="told-modeled"><h3>The answer in standard air, modeled</h3><p>${report.answer.words.headline}</p><p class="quiet">${report.answer.words.detail}</p></div>`
    : nothing}`;
