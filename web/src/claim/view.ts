/** The claim: what was said, on what it rested, and how the retest lies to it. */
import { html, nothing, type TemplateResult } from "lit";
import type { ClaimReport } from "../core/planner.js";
import { chosenOf, type MeasureView, measureView, plain, typedNumber, unitName } from "../format/values.js";
import { choice } from "../pieces/pieces.js";
import { trouble } from "../pieces/trouble.js";
import { say } from "../text/say.js";
import { claimPicture } from "./picture.js";
import type { ClaimActions, ClaimState } from "./state.js";

/** What is entered of a claim, by the names of the texts beside the fields. */
type Field = "gain" | "before" | "after" | "shots_after" | "tried" | "price" | "currency";

export function claimView(state: ClaimState, actions: ClaimActions): TemplateResult {
  const { current, measures, claimed, report, refusal } = state;
  const id = current?.question.measure ?? state.question.measure;
  const measure = measureView(id, measures, current?.session ?? { custom: [] });
  const unit = unitName(measure.unit);
  /** Answered while it is typed; what is no number yet waits until it is one. */
  const typed = (key: Field, text: string, as: Pick<MeasureView, "scale">) => {
    const value = taken(key, text, as);
    if (value !== undefined || text.trim() === "") actions.change({ [key]: value });
  };
  const number = (key: Field, of = unit, as: Pick<MeasureView, "scale" | "decimals"> = measure) => html`
    <label class="row"><span>${say(`claim-${key}`)}</span>
      <span class="amount"><input id="claim-${key}" inputmode="decimal" autocomplete="off" size="6"
        .value=${written(claimed[key], as)}
        @input=${(event: Event) => typed(key, (event.target as HTMLInputElement).value, as)}
        @change=${(event: Event) => actions.change({ [key]: taken(key, (event.target as HTMLInputElement).value, as) })} />
        ${of ? html`<span class="unit">${of}</span>` : nothing}</span></label>`;
  return html`
    <div class="card claim">
      <p class="hint">
        ${current ? say("claim-help") : say("claim-help-no-retest")}
      </p>
      <form class="claim-form" @submit=${(event: Event) => event.preventDefault()}>
        ${
          current
            ? html`<p><strong>${measure.name}</strong></p>`
            : html`
          <label class="row"><span>${say("claim-promised")}</span>
            ${choice(
              say("claim-promised"),
              measures.map(({ id: value, name }) => ({ value, label: name })),
              id,
              actions.ask,
            )}</label>`
        }
        ${number("gain")}
        <details>
          <summary>${say("claim-averages")}</summary>
          ${number("before")} ${number("after")}
        </details>
        ${(["shots_after", "tried", "price", "currency"] as const).map((key) => number(key, "", BARE))}
      </form>
      ${trouble(refusal)} ${report ? html`${outcome(report, measure)} ${keeping(state.kept, actions)}` : nothing}
    </div>`;
}

const outcome = (report: ClaimReport, measure: MeasureView): TemplateResult => html`
  <article class="claim-outcome ${report.kind}" aria-live="polite">
    <p class="claim-kind">${say(`claim-${report.kind}`)}</p>
    <p class="claim-headline">${report.words.headline}</p>
    ${claimPicture(report, measure)}
    ${[report.words.detail, report.words.luck, report.words.price, report.words.next].map((text) => (text ? html`<p>${text}</p>` : nothing))}
  </article>`;

/** For the day of the retest: it lies beside that, in the book of this device. */
function keeping(kept: string, actions: ClaimActions): TemplateResult {
  const submitted = (event: Event) => {
    event.preventDefault();
    actions.keep((event.currentTarget as HTMLFormElement).querySelector("input")!.value);
  };
  return html`
    <details>
      <summary>${say("claim-keep-title")}</summary>
      <form class="claim-form" @submit=${submitted}>
        <label class="row"><span>${say("claim-keep-who")}</span><input id="claim-who" maxlength="80" autocomplete="off" /></label>
        <div class="buttons"><button type="submit">${say("claim-keep")}</button></div>
      </form>
      <p role="status">${kept}</p>
    </details>`;
}

/** What has no unit of its own. */
const BARE = { scale: 1, decimals: 0 };

function written(value: number | string | undefined, as: Pick<MeasureView, "scale" | "decimals">): string {
  return typeof value === "number" ? plain(chosenOf(value, as)) : (value ?? "");
}

/** Counts are whole and above zero, money and averages any number, the currency a word. */
function taken(key: string, text: string, { scale }: Pick<MeasureView, "scale">): number | string | undefined {
  if (key === "currency") return text.trim() === "" ? undefined : text.trim().slice(0, 12);
  const value = typedNumber(text);
  if (value === null) return undefined;
  return key === "shots_after" || key === "tried" ? Math.max(1, Math.round(value)) : value / scale;
}
