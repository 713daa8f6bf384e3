/** The claim: what was said, on what it rested, and how the retest lies to it. */
import { html, nothing, type TemplateResult } from "lit";
import { measureView, plain, typedNumber, unitName } from "../format.js";
import { choice } from "../views/pieces.js";
import { trouble } from "../views/trouble.js";
import type { ClaimReport } from "../planner.js";
import type { ClaimActions, ClaimState } from "./part.js";
import { say } from "../text/say.js";

/** What is entered of a claim, by the names of the texts beside the fields. */
type Field = "gain" | "before" | "after" | "shots_after" | "tried" | "price" | "currency";

export function claimView(state: ClaimState, actions: ClaimActions): TemplateResult {
  const { current, measures, claimed, report, refusal } = state;
  const id = current?.question.measure ?? state.question.measure;
  const measure = measureView(id, measures, current?.session ?? { custom: [] } as never);
  const unit = unitName(measure.unit);
  const number = (key: Field, of = unit) => html`
    <label class="row"><span>${say(`claim-${key}`)}</span>
      <span class="amount"><input id="claim-${key}" inputmode="decimal" autocomplete="off" size="6"
        .value=${claimed[key] === undefined ? "" : typeof claimed[key] === "number" ? plain(claimed[key]) : claimed[key]}
        @change=${(event: Event) => actions.change({ [key]: taken(key, (event.target as HTMLInputElement).value) })} />
        ${of ? html`<span class="unit">${of}</span>` : nothing}</span></label>`;
  return html`
    <div class="card claim">
      <p class="hint">
        ${current ? say("claim-help") : say("claim-help-no-retest")}
      </p>
      <form class="claim-form" @submit=${(event: Event) => event.preventDefault()}>
        ${current ? html`<p><strong>${measure.name}</strong></p>` : html`
          <label class="row"><span>${say("claim-promised")}</span>
            ${choice(say("claim-promised"), measures.map(({ id: value, name }) => ({ value, label: name })), id, actions.ask)}</label>`}
        ${number("gain")}
        <details>
          <summary>${say("claim-averages")}</summary>
          ${number("before")} ${number("after")}
        </details>
        ${number("shots_after", "")} ${number("tried", "")}
        ${number("price", "")} ${number("currency", "")}
      </form>
      ${trouble(refusal)} ${report ? outcome(report) : nothing}
    </div>`;
}

const outcome = (report: ClaimReport): TemplateResult => html`
  <article class="claim-outcome ${report.kind}" aria-live="polite">
    <p class="claim-kind">${say(`claim-${report.kind}`)}</p>
    <p class="claim-headline">${report.words.headline}</p>
    ${[report.words.detail, report.words.luck, report.words.price, report.words.next].map((text) => (text ? html`<p>${text}</p>` : nothing))}
  </article>`;

/** Counts are whole and above zero, money and averages any number, the currency a word. */
function taken(key: string, text: string): number | string | undefined {
  if (key === "currency") return text.trim() === "" ? undefined : text.trim().slice(0, 12);
  const value = typedNumber(text);
  if (value === null) return undefined;
  return key === "shots_after" || key === "tried" ? Math.max(1, Math.round(value)) : value;
}
