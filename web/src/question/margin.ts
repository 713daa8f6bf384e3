/** How much would matter: a number with two large buttons. */
import { html, nothing, type TemplateResult } from "lit";
import type { Question } from "../core/engine.js";
import { isSpread, type MarginScale, marginScale, stepMargin } from "../format/margin.js";
import { type MeasureView, plain, typedNumber } from "../format/values.js";
import type { Actions } from "../state/actions.js";
import { marginAsked } from "../state/question.js";
import type { State } from "../state/state.js";
import { say } from "../text/say.js";

export function margin(state: State, measure: MeasureView, question: Question, actions: Actions): TemplateResult {
  const scale = marginScale(question, measure);
  const now = question.margin ?? marginAsked(state.report, measure, question);
  const value = now === null ? null : scale.shown(now);
  const ask = (shown: number) => actions.ask({ margin: scale.taken(shown) });
  const move = (direction: 1 | -1) => ask(stepMargin(value ?? 0, scale.step, direction));
  const step = { step: plain(scale.step), unit: scale.unit };
  return html`
    <div class="margin" role="group" aria-labelledby="margin-label">
      <label id="margin-label" for="margin" class="legend">${say("margin-label")}</label>
      <div class="stepper">
        <button type="button" aria-label=${say("margin-less", step)} ?disabled=${value === null || value <= scale.step} @click=${() => move(-1)}>${"\u2212"}</button>
        <span class="amount">
          <input id="margin" inputmode="decimal" autocomplete="off" size="5" placeholder=${say("margin-none")}
            aria-describedby="margin-why" .value=${value === null ? "" : plain(value)}
            @change=${(event: Event) => typed(event.target as HTMLInputElement, value, ask, actions)} />
          ${scale.unit ? html`<span class="unit">${scale.unit}</span>` : nothing}
        </span>
        <button type="button" aria-label=${say("margin-more", step)} @click=${() => move(1)}>+</button>
      </div>
      <p id="margin-why" class="hint">${why(measure, question, scale)}</p>
    </div>`;
}

function why(measure: MeasureView, question: Question, scale: MarginScale): string {
  if (isSpread(question)) return say("margin-spread");
  if (measure.margin === null) return say("margin-own");
  const isUsual = question.margin === undefined || question.margin === measure.offeredMargin;
  return isUsual
    ? measure.marginWhy
    : say("margin-usual", { margin: plain(scale.shown(measure.offeredMargin ?? measure.margin)), unit: scale.unit });
}

/** A number is taken, an empty field goes back to what is usual, anything else is put back. */
function typed(input: HTMLInputElement, before: number | null, ask: (shown: number) => void, actions: Actions): void {
  const value = typedNumber(input.value);
  if (input.value.trim() === "") actions.ask({ margin: undefined });
  else if (value !== null && value > 0) ask(value);
  else input.value = before === null ? "" : plain(before);
}
