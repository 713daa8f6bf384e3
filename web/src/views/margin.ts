/** How much would matter: a number with two large buttons. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { Question } from "../engine.js";
import { marginStep, plain, stepMargin, typedNumber, unitName, type MeasureView } from "../format.js";
import type { State } from "../state.js";

export function margin(state: State, measure: MeasureView, question: Question, actions: Actions): TemplateResult | typeof nothing {
  if (question.goal === "tighter") return nothing;
  const value = question.margin ?? measure.margin;
  const step = marginStep(measure);
  const unit = unitName(measure.unit);
  const move = (direction: 1 | -1) => actions.ask({ margin: stepMargin(value ?? 0, step, direction) });
  return html`
    <div class="margin" role="group" aria-labelledby="margin-label">
      <label id="margin-label" for="margin" class="legend">Smallest difference that would matter to you</label>
      <div class="stepper">
        <button type="button" aria-label="${plain(step)} ${unit} less" ?disabled=${value === null || value <= step} @click=${() => move(-1)}>${"\u2212"}</button>
        <span class="amount">
          <input id="margin" inputmode="decimal" autocomplete="off" size="5" placeholder="none"
            aria-describedby="margin-why" .value=${value === null ? "" : plain(value)}
            @change=${(event: Event) => typed(event.target as HTMLInputElement, value, actions)} />
          ${unit ? html`<span class="unit">${unit}</span>` : nothing}
        </span>
        <button type="button" aria-label="${plain(step)} ${unit} more" @click=${() => move(1)}>+</button>
      </div>
      <p id="margin-why" class="hint">${why(state, measure, question)}</p>
    </div>`;
}

function why(state: State, measure: MeasureView, question: Question): string {
  if (question.margin === undefined && measure.margin !== null) return measure.marginWhy;
  if (measure.margin === null) return "Nothing is usual for this column. Leave it empty, or say what would matter.";
  return state.measures.length > 0 ? `Usual is ${plain(measure.margin)} ${unitName(measure.unit)}. Yours counts.` : "";
}

/** A number is taken, an empty field goes back to what is usual, anything else is put back. */
function typed(input: HTMLInputElement, before: number | null, actions: Actions): void {
  const value = typedNumber(input.value);
  if (input.value.trim() === "") actions.ask({ margin: undefined });
  else if (value !== null && value > 0) actions.ask({ margin: value });
  else input.value = before === null ? "" : plain(before);
}
