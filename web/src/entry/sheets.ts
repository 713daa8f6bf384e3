/** The sheets of a workbook by name: one or several hold the shots. */
import { html, type TemplateResult } from "lit";
import { foreign, part } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import type { Workbook } from "../state/texts.js";
import { say, sayAround } from "../text/say.js";

/** How much of a sheet is shown, for telling which one it is. */
const SHOWN = 60;

export const sheets = ({ name, sheets }: Workbook, actions: Actions): TemplateResult =>
  part(
    "shots",
    say("your-shots"),
    html`
      <form class="card sheets" @submit=${(event: Event) => submit(event, actions)}>
        <fieldset>
          <legend>${sayAround("sheets-which", { name: foreign(name) })}</legend>
          ${sheets.map(
            (sheet, at) => html`
              <label class="option">
                <input type="checkbox" name="sheet" value=${at} />
                <span class="sheet">
                  <span>${foreign(sheet.name)} <span class="count">${say("n-rows", { count: sheet.rows })}</span></span>
                  <span class="hint">${foreign(beginning(sheet.text))}</span>
                </span>
              </label>`,
          )}
        </fieldset>
        <p class="hint">${say("sheets-each")}</p>
        <p class="alert" role="alert" hidden>${say("sheets-none")}</p>
        <div class="buttons">
          <button type="submit" class="primary">${say("sheets-read")}</button>
          <button type="button" @click=${() => actions.enter(null)}>${say("cancel")}</button>
        </div>
      </form>`,
  );

const beginning = (text: string): string => text.trim().replace(/\s+/g, " ").slice(0, SHOWN);

function submit(event: Event, actions: Actions): void {
  event.preventDefault();
  const form = event.target as HTMLFormElement;
  const chosen = new FormData(form).getAll("sheet").map(Number);
  form.querySelector<HTMLElement>(".alert")!.hidden = chosen.length > 0;
  if (chosen.length > 0) actions.chooseSheets(chosen);
}
