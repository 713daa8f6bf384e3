/** Sessions of the same clubs from other days, put together with the one on the page. */
import { html, nothing, type TemplateResult } from "lit";
import { counted, percent } from "../format.js";
import { build } from "../views/pieces.js";
import { trouble } from "../views/trouble.js";
import type { TogetherPair } from "../planner.js";
import type { ClaimActions, ClaimState } from "./part.js";

export function togetherView({ current, days, pairs, daysRefusal }: ClaimState, actions: ClaimActions): TemplateResult | typeof nothing {
  if (!current) return nothing;
  const pasted = (event: Event) => {
    event.preventDefault();
    const field = (event.currentTarget as HTMLFormElement).querySelector("textarea")!;
    actions.addDay(field.value);
    field.value = "";
  };
  const chosen = async (event: Event) => {
    const input = event.target as HTMLInputElement;
    for (const file of input.files ?? []) actions.addDay(await file.text());
    input.value = "";
  };
  return html`
    <div class="card together">
      <h3>The same clubs on another day</h3>
      <p class="hint">Paste a session of another day, with the same names for the clubs. Days differ; together they say more than one long one.</p>
      <form @submit=${pasted}>
        <textarea rows="3" aria-label="A session of another day" spellcheck="false" autocomplete="off"></textarea>
        <div class="buttons">
          <button type="submit">Add this day</button>
          <label class="button"><input type="file" class="visually-hidden" multiple accept=".csv,.tsv,.txt,text/*" @change=${chosen} />Choose files</label>
        </div>
      </form>
      ${days.length > 0
        ? html`<ul class="together-days">
            ${days.map((day, at) => html`<li>Day ${at + 2}: ${counted(day.shots.length, "shot")}
              <button type="button" aria-label="Take out day ${at + 2}" @click=${() => actions.dropDay(at)}>✕</button></li>`)}
          </ul>`
        : nothing}
      ${trouble(daysRefusal)} ${pairs.map((pair) => outcome(pair, current.session.builds[pair.candidate]?.name ?? ""))}
    </div>`;
}

const outcome = (pair: TogetherPair, name: string): TemplateResult => html`
  <article class="together-pair" aria-live="polite">
    <p>${build(pair.candidate, name)}</p>
    <p class="claim-headline">${pair.headline}</p>
    <p>${pair.detail}</p>
    <ol>
      ${pair.days.map(({ answer, weight }) => html`<li>${answer ? html`${answer.words.headline} <small>Counts ${percent(weight)}.</small>` : "Does not hold both clubs."}</li>`)}
    </ol>
  </article>`;
