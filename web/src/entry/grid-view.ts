/** The grid on the screen: tabs, cells with a number pad, mistakes under their row, and what a thumb needs below. */
import { html, nothing, type TemplateResult } from "lit";
import type { Measure } from "../core/engine.js";
import { build } from "../pieces/pieces.js";
import { say } from "../text/say.js";
import { columnsChosen } from "./columns-chosen.js";
import {
  type Cell,
  type Grid,
  headingOf,
  type Mistake,
  ROUND,
  shotsOf,
  withCell,
  withColumn,
  withName,
  withoutColumn,
} from "./grid.js";

export interface ShownGrid {
  grid: Grid;
  measures: readonly Measure[];
  club: number;
  /** The cell that is or was typed in last. */
  at: Cell;
  mistakes: readonly Mistake[];
  questions: ReadonlyMap<string, string>;
  units: ReadonlyMap<string, readonly string[]>;
  said: string;
  canUndo: boolean;
}

export interface GridActions {
  show: (club: number) => void;
  addClub: () => void;
  at: (cell: Cell) => void;
  typing: (grid: Grid) => void;
  typed: () => void;
  change: (grid: Grid) => void;
  next: (from: Cell) => void;
  paste: (at: Cell, event: ClipboardEvent) => void;
  undo: () => void;
  finish: () => void;
  cancel: () => void;
}

/** Rows that stand ready on an empty grid. */
const LEAST_ROWS = 3;

export function gridView(shown: ShownGrid, actions: GridActions): TemplateResult {
  const { grid, club } = shown;
  const { name } = grid.clubs[club]!;
  const shots = grid.clubs.reduce((sum, one) => sum + shotsOf(one), 0);
  return html`
    <form class="card entry" @mousedown=${keepFocus} @submit=${(event: Event) => finish(event, actions)}>
      ${tabs(shown, actions)}
      <label class="row name">
        <span>${say("grid-name")}</span>
        <input .value=${name} maxlength="80" autocomplete="off" enterkeyhint="done"
          @input=${(event: Event) => actions.typing(withName(grid, club, (event.target as HTMLInputElement).value))} @change=${actions.typed}
          @keydown=${(event: KeyboardEvent) => event.key === "Enter" && event.preventDefault()} />
      </label>
      ${[...shown.questions].map(([column, unit]) => question(shown, column, unit, actions))}
      ${table(shown, actions)}
      ${keys(shown, actions)}
      <details class="what-is-typed">
        <summary>${say("grid-typed", { columns: grid.columns.map((column) => headingOf(column, grid, shown.measures).name).join(", ") })}</summary>
        ${columnsChosen(
          {
            chosen: grid.columns,
            units: grid.units,
            measures: shown.measures,
            choices: shown.units,
            more: [{ value: ROUND, label: say("entry-round") }],
          },
          {
            add: (column) => actions.change(withColumn(grid, column)),
            remove: (column) => actions.change(withoutColumn(grid, column)),
            unit: (column, unit) => actions.change({ ...grid, units: { ...grid.units, [column]: unit } }),
          },
        )}
      </details>
      ${shown.said ? html`<p class="alert" role="status">${shown.said}</p>` : nothing}
      <div class="buttons">
        <button type="submit" class="primary">${say("grid-read", { count: shots })}</button>
        <button type="button" ?disabled=${!shown.canUndo} @click=${actions.undo}>${say("entry-undo")}</button>
        <button type="button" @click=${actions.cancel}>${say("back")}</button>
      </div>
    </form>`;
}

const tabs = ({ grid, club }: ShownGrid, actions: GridActions): TemplateResult => html`
  <fieldset class="tabs">
    <legend>${say("grid-whose")}</legend>
    <div class="segments">
      ${grid.clubs.map(
        (one, at) => html`
          <label class="segment">
            <input type="radio" name="club" .checked=${at === club} @change=${() => actions.show(at)} />
            <span>${build(at, one.name || say("entry-club", { number: at + 1 }))}<span class="count">${shotsOf(one)}</span></span>
          </label>`,
      )}
      <button type="button" aria-label=${say("entry-add-club")} @click=${actions.addClub}>+</button>
    </div>
  </fieldset>`;

const question = (
  { grid, measures }: ShownGrid,
  column: string,
  unit: string,
  actions: GridActions,
): TemplateResult => html`
  <p class="notice">
    ${say("grid-unit-question", { name: headingOf(column, grid, measures).name, unit })}
    <button type="button" @click=${() => actions.change({ ...grid, units: { ...grid.units, [column]: unit } })}>${say("grid-unit-take", { unit })}</button>
  </p>`;

function table(shown: ShownGrid, actions: GridActions): TemplateResult {
  const { grid, club, measures } = shown;
  const rows = Math.max(LEAST_ROWS, grid.clubs[club]!.rows.length + 1);
  return html`
    <div class="sideways">
      <table class="cells">
        <thead>
          <tr>
            <th scope="col"><span class="visually-hidden">${say("grid-shot")}</span></th>
            ${grid.columns.map((column) => {
              const { name, unit } = headingOf(column, grid, measures);
              return html`<th scope="col">${name} <small>${unit === "deg" ? "°" : unit}</small></th>`;
            })}
          </tr>
        </thead>
        <tbody>${Array.from({ length: rows }, (_, row) => [line(shown, row, actions), mistakesOf(shown, row, actions)])}</tbody>
      </table>
    </div>`;
}

const line = ({ grid, club, measures, mistakes }: ShownGrid, row: number, actions: GridActions): TemplateResult => html`
  <tr>
    <th scope="row">${row + 1}</th>
    ${grid.columns.map((column, at) => {
      const here = { club, row, column: at };
      const { name } = headingOf(column, grid, measures);
      const wrong = mistakes.some((one) => one.club === club && one.row === row && one.column === at);
      return html`
        <td>
          <input data-cell="${row}.${at}" aria-label=${say("grid-cell", { name, shot: String(row + 1) })} aria-invalid=${wrong ? "true" : "false"}
            aria-describedby=${wrong ? `wrong-${row}` : nothing}
            inputmode="decimal" enterkeyhint="next" autocomplete="off" autocapitalize="off" spellcheck="false"
            .value=${grid.clubs[club]!.rows[row]?.[at] ?? ""}
            @focus=${() => actions.at(here)}
            @input=${(event: Event) => actions.typing(withCell(grid, here, (event.target as HTMLInputElement).value))}
            @change=${actions.typed}
            @keydown=${(event: KeyboardEvent) => onward(event, () => actions.next(here))}
            @paste=${(event: ClipboardEvent) => actions.paste(here, event)} />
        </td>`;
    })}
  </tr>`;

/** Keys that a number pad lacks, for the cell that is being typed in. */
function keys({ grid, club, at, measures }: ShownGrid, actions: GridActions): TemplateResult {
  const side = sideKeys(grid.columns[at.column] ?? "", measures);
  const here = { ...at, club };
  return html`
    <div class="keys">
      ${SIDES.map(
        ({ key, name }) => html`
          <button type="button" aria-label=${say(name)} ?disabled=${!side.includes(key)} @click=${() => actions.change(withCell(grid, here, withSide(grid, here, key)))}>${key}</button>`,
      )}
      <button type="button" class="go-on" @click=${() => actions.next(here)}>${say("grid-next")}</button>
    </div>`;
}

const SIDES = [
  { key: "L", name: "grid-left" },
  { key: "R", name: "grid-right" },
  { key: "−", name: "grid-minus" },
] as const;

/** A number pad has no letters and often no minus: what they say is a key of its own. */
function sideKeys(column: string, measures: readonly Measure[]): string[] {
  const measure = measures.find(({ id }) => id === column);
  if (!measure || measure.plausible.low >= 0) return [];
  return column === "offline" ? ["L", "R"] : ["−"];
}

/** The cell's text with another side: pressed again, the side goes. */
function withSide(grid: Grid, { club, row, column }: Cell, key: string): string {
  const before = (grid.clubs[club]!.rows[row]?.[column] ?? "").trim();
  if (key === "−") return /^[-−]/.test(before) ? before.slice(1) : `−${before}`;
  const bare = before.replace(/\s*[LR]$/i, "");
  return before.toUpperCase().endsWith(key) ? bare : `${bare} ${key}`.trim();
}

/** A button must not take the focus from a cell: the number pad would close, and the page move under the thumb. */
function keepFocus(event: Event): void {
  if (event.target instanceof Element && event.target.closest("button")) event.preventDefault();
}

function mistakesOf(
  { grid, club, mistakes, measures }: ShownGrid,
  row: number,
  actions: GridActions,
): TemplateResult | typeof nothing {
  const here = mistakes.filter((one) => one.club === club && one.row === row);
  if (here.length === 0) return nothing;
  return html`
    <tr class="wrong">
      <td colspan=${grid.columns.length + 1} id="wrong-${row}">
        ${here.map(({ column, message, suggestion, ...at }) => {
          const name = column < 0 ? "" : headingOf(grid.columns[column]!, grid, measures).name;
          return html`<p>${name === "" || message.startsWith(name) ? message : say("grid-wrong", { name, message })}
            ${
              suggestion !== null && column >= 0
                ? html`<button type="button" @click=${() => actions.change(withCell(grid, { ...at, column }, suggestion))}>${say("grid-use", { suggestion })}</button>`
                : nothing
            }</p>`;
        })}
      </td>
    </tr>`;
}

function finish(event: Event, actions: GridActions): void {
  event.preventDefault();
  actions.finish();
}

function onward(event: KeyboardEvent, next: () => void): void {
  if (event.key !== "Enter") return;
  event.preventDefault();
  next();
}
