/** Sessions of the same clubs from other days, put together with the one on the page. */
import { html, nothing, type TemplateResult } from "lit";
import type { TogetherPair } from "../core/planner.js";
import { percent } from "../format/values.js";
import { build } from "../pieces/pieces.js";
import { trouble } from "../pieces/trouble.js";
import { shotCount } from "../state/shots.js";
import { say } from "../text/say.js";
import { weatherForm } from "../weather/view.js";
import { canBeBrought } from "./air.js";
import { type ClaimActions, type ClaimState, type Day, weatherOf } from "./state.js";

export function togetherView(state: ClaimState, actions: ClaimActions): TemplateResult | typeof nothing {
  const { current, days, pairs, daysRefusal } = state;
  if (!current) return nothing;
  const pasted = (event: Event) => {
    event.preventDefault();
    const field = (event.currentTarget as HTMLFormElement).querySelector("textarea")!;
    void actions.addText(field.value).then((added) => {
      if (added) field.value = "";
    });
  };
  const chosen = (event: Event) => {
    const input = event.target as HTMLInputElement;
    actions.addFiles([...(input.files ?? [])]);
    input.value = "";
  };
  return html`
    <div class="card together">
      <h3>${say("together-title")}</h3>
      <p class="hint">${say("together-help")}</p>
      <form @submit=${pasted}>
        <textarea rows="3" aria-label=${say("together-text")} spellcheck="false" autocomplete="off"></textarea>
        <div class="buttons">
          <button type="submit">${say("together-add")}</button>
          <label class="button"><input type="file" class="visually-hidden" multiple accept=".csv,.tsv,.txt,.xlsx,.ods,text/*" @change=${chosen} />${say("together-files")}</label>
        </div>
      </form>
      ${
        days.length > 0
          ? html`<ul class="together-days">
              <li><span>${say("together-today", { count: shotCount(current.session) })}</span></li>
              ${days.map((day, at) => oneDay(day, at, actions))}
            </ul>
            ${canBeBrought(current.question.measure) ? air(state, actions) : nothing}`
          : nothing
      }
      ${trouble(daysRefusal)} ${pairs.map(outcome)}
    </div>`;
}

const oneDay = ({ session, problems }: Day, at: number, actions: ClaimActions): TemplateResult => html`
  <li>
    <span>${say("together-day", { day: at + 2, count: shotCount(session) })}${
      problems.length > 0
        ? html`. <span class="hint">${say("together-not-understood", { count: problems.length, first: `${problems[0]!.message} ${problems[0]!.remedy}` })}</span>`
        : nothing
    }</span>
    <button type="button" aria-label=${say("together-out", { day: at + 2 })} @click=${() => actions.dropDay(at)}>✕</button>
  </li>`;

/** Offered, never done unasked: the change is modeled. */
function air(state: ClaimState, actions: ClaimActions): TemplateResult {
  const { days, inAir, air: told } = state;
  return html`
    <div class="together-air">
      <label class="option">
        <input type="checkbox" .checked=${inAir} @change=${(event: Event) => actions.bringToAir((event.target as HTMLInputElement).checked)} />
        <span>${say("together-air")}</span>
      </label>
      ${
        inAir
          ? Array.from(
              { length: days.length + 1 },
              (_, day) => html`
            <details>
              <summary>${say("together-weather", { day: day + 1 })}</summary>
              ${weatherForm(weatherOf(state, day), { set: (change) => actions.tellWeather(day, { ...weatherOf(state, day), ...change }) })}
            </details>
            ${told[day] ? html`<p class="hint">${say("together-day-said", { day: day + 1, said: told[day].words })}</p>` : nothing}`,
            )
          : nothing
      }
      ${inAir && told[0] ? html`<p class="hint">${told[0].note}</p>` : nothing}
    </div>`;
}

const outcome = (pair: TogetherPair): TemplateResult => html`
  <article class="together-pair" aria-live="polite">
    <p>${build(pair.candidate, pair.name)}</p>
    <p class="claim-headline">${pair.headline}</p>
    <p>${pair.detail}</p>
    <ol>
      ${pair.days.map(oneAnswer)}
    </ol>
  </article>`;

function oneAnswer({ answer, through, weight }: TogetherPair["days"][number]): TemplateResult {
  const said = answer ? answer.words.headline : through ? say("together-through", { control: through }) : undefined;
  if (said === undefined) return html`<li>${say("together-not-both")}</li>`;
  return html`<li>${said} <small>${say("together-weight", { weight: percent(weight) })}</small></li>`;
}
