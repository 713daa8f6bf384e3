/** The form of averages on the screen: a block for each club, a line for each measure. */
import { html, nothing, type TemplateResult } from "lit";
import type { Measure } from "../core/engine.js";
import { build, choice } from "../pieces/pieces.js";
import { say } from "../text/say.js";
import {
  type Averages,
  type Entered,
  type Fault,
  type Meant,
  withClubChanged,
  withMoreClubs,
  withValue,
} from "./averages.js";
import { columnsChosen } from "./columns-chosen.js";

export interface ShownAverages {
  form: Averages;
  measures: readonly Measure[];
  faults: readonly Fault[];
  notices: readonly string[];
  units: ReadonlyMap<string, readonly string[]>;
  said: string;
  canUndo: boolean;
}

export interface AveragesActions {
  typing: (form: Averages) => void;
  typed: () => void;
  change: (form: Averages) => void;
  undo: () => void;
  finish: () => void;
  cancel: () => void;
}

const MEANT: readonly Meant[] = ["all", "best", "good"];

export const averagesView = (shown: ShownAverages, actions: AveragesActions): TemplateResult => html`
  <form class="card entry" @submit=${(event: Event) => finish(event, actions)}>
    <p class="hint">${say("averages-help")}</p>
    ${columnsChosen(
      { chosen: shown.form.columns, units: shown.form.units, measures: shown.measures, choices: shown.units, more: [] },
      {
        add: (column) => actions.change({ ...shown.form, columns: [...shown.form.columns, column] }),
        remove: (column) =>
          actions.change({ ...shown.form, columns: shown.form.columns.filter((one) => one !== column) }),
        unit: (column, unit) => actions.change({ ...shown.form, units: { ...shown.form.units, [column]: unit } }),
      },
    )}
    ${shown.form.clubs.map((_, club) => one(shown, club, actions))}
    <div class="buttons"><button type="button" @click=${() => actions.change(withMoreClubs(shown.form))}>${say("entry-add-club")}</button></div>
    <ul class="notices">${shown.notices.map((text) => html`<li>${text}</li>`)}</ul>
    ${shown.said ? html`<p class="alert" role="status">${shown.said}</p>` : nothing}
    <div class="buttons">
      <button type="submit" class="primary">${say("averages-read")}</button>
      <button type="button" ?disabled=${!shown.canUndo} @click=${actions.undo}>${say("entry-undo")}</button>
      <button type="button" @click=${actions.cancel}>${say("back")}</button>
    </div>
  </form>`;

function one({ form, measures, faults }: ShownAverages, club: number, actions: AveragesActions): TemplateResult {
  const { name, shots, of, values } = form.clubs[club]!;
  const faultAt = (column: string | null, part: keyof Entered = "average") =>
    faults.find((fault) => fault.club === club && fault.column === column && fault.part === part)?.message;
  const whose = name || say("entry-club", { number: club + 1 });
  return html`
    <fieldset class="club">
      <legend>${build(club, whose)}</legend>
      <label class="row"><span>${say("averages-name")}</span>
        <input .value=${name} maxlength="80" autocomplete="off" enterkeyhint="next"
          @input=${(event: Event) => actions.typing(withClubChanged(form, club, { name: text(event) }))} @change=${actions.typed} @keydown=${onward} />
      </label>
      ${field(say("averages-shots"), say("averages-shots-of", { name: whose }), shots, "numeric", faultAt(null), (value) => withClubChanged(form, club, { shots: value }), actions)}
      <label class="row"><span>${say("averages-meant")}</span>
        ${choice(
          say("averages-meant-of", { name: whose }),
          MEANT.map((one) => ({ value: one, label: say(`averages-${one}`) })),
          of,
          (value) => actions.change(withClubChanged(form, club, { of: value as Meant })),
        )}
      </label>
      ${form.columns.map((column) => {
        const measure = measures.find(({ id }) => id === column);
        const title = measure?.name ?? column;
        const { average = "", deviation = "" } = values[column] ?? {};
        const [wrong, wrongScatter] = [faultAt(column), faultAt(column, "deviation")];
        return html`
          <div class="of-measure" role="group" aria-label=${say("averages-measure-of", { measure: title, name: whose })}>
            <span class="what">${title}</span>
            <label><span>${say("averages-average")}</span>${input(say("averages-average-of", { measure: title, name: whose }), average, "decimal", wrong, (value) => withValue(form, club, column, { average: value }), actions)}</label>
            <label><span>${say("averages-scatter")}</span>${input(say("averages-scatter-of", { measure: title, name: whose }), deviation, "decimal", wrongScatter, (value) => withValue(form, club, column, { deviation: value }), actions)}</label>
            ${[wrong, wrongScatter].map((message) => (message ? html`<p class="alert">${message}</p>` : nothing))}
          </div>`;
      })}
    </fieldset>`;
}

type Change = (value: string) => Averages;

const field = (
  title: string,
  label: string,
  value: string,
  mode: string,
  wrong: string | undefined,
  change: Change,
  actions: AveragesActions,
): TemplateResult => html`
  <label class="row"><span>${title}</span>${input(label, value, mode, wrong, change, actions)}</label>
  ${wrong ? html`<p class="alert">${wrong}</p>` : nothing}`;

const input = (
  label: string,
  value: string,
  mode: string,
  wrong: string | undefined,
  change: Change,
  actions: AveragesActions,
): TemplateResult => html`
  <input class="number" aria-label=${label} aria-invalid=${wrong ? "true" : "false"} inputmode=${mode} enterkeyhint="next" autocomplete="off" spellcheck="false"
    .value=${value} @input=${(event: Event) => actions.typing(change(text(event)))} @change=${actions.typed} @keydown=${onward} />`;

const text = (event: Event): string => (event.target as HTMLInputElement).value;

/** Enter goes to the next field instead of ending the form. */
function onward(event: KeyboardEvent): void {
  if (event.key !== "Enter") return;
  event.preventDefault();
  const field = event.target as HTMLInputElement;
  const fields = [...(field.form?.querySelectorAll("input") ?? [])];
  fields[fields.indexOf(field) + 1]?.focus();
}

function finish(event: Event, actions: AveragesActions): void {
  event.preventDefault();
  actions.finish();
}
