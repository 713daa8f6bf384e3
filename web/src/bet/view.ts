/** What would you bet: chances as ten dots each, what stands behind them, and what differs between the clubs. */
import { html, nothing, type TemplateResult } from "lit";
import type { Bet, Differs, Refusal } from "../core/engine.js";
import { trouble as refused } from "../pieces/trouble.js";
import { say } from "../text/say.js";
import { drawDots } from "./draw.js";
import { dots } from "./geometry.js";

const KINDS: readonly (Differs | null)[] = ["shaft", "head", "old_club", null];

export function betView(
  bet: Bet | null,
  trouble: Refusal | null,
  differs: Differs | null,
  choose: (differs: Differs | undefined) => void,
): TemplateResult {
  if (trouble) return html`<div class="card">${refused(trouble)}</div>`;
  if (!bet) return html`<p class="hint">${say("working")}</p>`;
  const { facts, words } = bet;
  if (!facts) return html`<div class="card"><p>${words.note}</p></div>`;
  const row = (text: string, range: { low: number; high: number }) => html`
    <li>${drawDots(dots(range), facts.candidate)}<span>${text}</span></li>`;
  return html`
    <div class="card">
      ${kinds(differs, choose)}
      <ul class="bet-rows" aria-live="polite">
        ${row(words.at_all, facts.at_all.of_ten)}
        ${facts.by_margin ? row(words.by_margin, facts.by_margin.of_ten) : nothing}
        ${row(words.pairs, facts.pairs.range_of_ten)}
      </ul>
      <p class="hint">${say("bet-dots")}</p>
      <p>${words.gap}</p>
      <p class="hint">${words.usual} ${words.note}</p>
    </div>`;
}

const kinds = (now: Differs | null, choose: (differs: Differs | undefined) => void): TemplateResult => html`
  <form class="bet-kinds" @submit=${(event: Event) => event.preventDefault()}>
    <fieldset>
      <legend>${say("bet-differs")}</legend>
      ${KINDS.map(
        (kind) => html`
          <label class="option">
            <input type="radio" name="bet-differs" value=${kind ?? "unknown"} .checked=${kind === now}
              @change=${() => choose(kind ?? undefined)} />
            <span>${say(`bet-differs-${kind ?? "unknown"}`)}</span>
          </label>`,
      )}
    </fieldset>
  </form>`;
