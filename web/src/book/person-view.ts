/** The page of one person: the season, every visit, what was claimed beside what was hit again. */
import { html, nothing, type TemplateResult } from "lit";
import { say } from "../text/say.js";
import { rowView } from "./row-view.js";
import { seasonView } from "./season-view.js";
import type { BookActions, BookState, Opened } from "./state.js";
import { dayOf } from "./words.js";

export function personView(
  state: BookState,
  { person, rows, season, claims }: Opened,
  actions: BookActions,
): TemplateResult {
  const name = person?.data.name ?? say("book-nobody");
  return html`
    <div class="card book-person">
      <p class="back"><button type="button" @click=${() => actions.showPerson(null)}>${say("book-everybody")}</button></p>
      ${
        person
          ? html`<label class="row"><span>${say("book-who")}</span>
            <input id="book-name" maxlength="80" autocomplete="off" .value=${person.data.name}
              @change=${(event: Event) => actions.rename(person.id, (event.target as HTMLInputElement).value)} /></label>`
          : nothing
      }
      ${season ? seasonView(season, state.measures) : nothing}
      ${
        claims.length > 0
          ? html`<h3>${say("book-claim-beside")}</h3>
            ${claims.map(({ visit, said }) => html`<p>${visit ? say("book-claim-of", { date: dayOf(visit.data.date), said }) : said}</p>`)}`
          : nothing
      }
      <ul class="book-rows">${rows.map((row) => rowView(row, state, actions))}</ul>
      ${person ? html`<div class="buttons"><button type="button" @click=${() => actions.remove(person.id, name)}>${say("book-delete-person", { name })}</button></div>` : nothing}
    </div>`;
}
