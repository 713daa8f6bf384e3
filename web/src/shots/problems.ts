/** Rows that were not understood, each with its place, the reason and the remedy; and what was guessed. */
import { html, nothing, type TemplateResult } from "lit";
import type { Notice, Problem } from "../core/engine.js";
import { choice, foreign } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import { say, sayAround } from "../text/say.js";

/** How many are open to view at once; the rest opens with a tap. */
const SHOWN = 3;

/** `clubs` are those that rows without a name can be given to. */
export function problems(
  list: readonly Problem[],
  rows: number,
  clubs: readonly string[],
  actions: Actions,
): TemplateResult | typeof nothing {
  if (list.length === 0) return nothing;
  const title = rows > 0 ? say("not-understood", { count: rows }) : say("look-at-this");
  return html`
    <div class="notice problem">
      <h3>${title}</h3>
      <ul>${list.slice(0, SHOWN).map(problem)}</ul>
      ${rest(list.slice(SHOWN), problem)}
      ${
        list.some(({ kind }) => kind === "letter_for_digit")
          ? html`<button type="button" @click=${() => actions.hint({ letters_as_digits: true })}>${say("letters-as-digits")}</button>`
          : nothing
      }
      ${
        list.some(({ kind }) => kind === "no_build") && clubs.length > 0
          ? html`
            <label class="row">
              <span>${say("without-club")}</span>
              ${choice(
                say("without-club-label"),
                [{ value: "", label: say("not-known") }, ...clubs.map((name) => ({ value: name, label: name }))],
                "",
                (build) => build && actions.hint({ build }),
              )}
            </label>`
          : nothing
      }
    </div>`;
}

export function notices(list: readonly Notice[]): TemplateResult | typeof nothing {
  if (list.length === 0) return nothing;
  return html`
    <ul class="notices">${list.slice(0, SHOWN).map(notice)}</ul>
    ${rest(list.slice(SHOWN), notice)}`;
}

const problem = ({ place, found, message, remedy, suggestion }: Problem): TemplateResult => html`
  <li>
    <p>${where(place)}${found ? html`<code>${foreign(found)}</code> ` : nothing}${message}
      ${suggestion ? sayAround("probably", { suggestion: foreign(suggestion) }) : nothing}</p>
    ${remedy ? html`<p class="remedy">${remedy}</p>` : nothing}
  </li>`;

const notice = ({ place, message }: Notice): TemplateResult => html`<li>${where(place)}${message}</li>`;

function where({ line, column }: Problem["place"]): TemplateResult | typeof nothing {
  if (line === 0 && !column) return nothing;
  return html`<span class="place">${line > 0 ? say("line-n", { line: String(line) }) : nothing}${line > 0 && column ? ", " : nothing}${column ? foreign(column) : nothing}</span> `;
}

function rest<T>(list: readonly T[], item: (one: T) => TemplateResult): TemplateResult | typeof nothing {
  if (list.length === 0) return nothing;
  return html`
    <details>
      <summary>${say("n-more", { count: list.length })}</summary>
      <ul>${list.slice(0, 200).map(item)}</ul>
    </details>`;
}
