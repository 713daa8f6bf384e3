/** Which measures are entered, each with its unit; chips to take one out, a choice to add one. */
import { html, nothing, type TemplateResult } from "lit";
import type { Measure } from "../core/engine.js";
import { unitName } from "../format/values.js";
import { choice, type Option } from "../pieces/pieces.js";
import { say } from "../text/say.js";
import { shownIn } from "../text/units.js";

interface Shown {
  chosen: readonly string[];
  units: Readonly<Record<string, string>>;
  measures: readonly Measure[];
  /** Units in which a column can be read, where they are known. */
  choices: ReadonlyMap<string, readonly string[]>;
  /** Columns that are no measures. */
  more: readonly Option[];
}

interface ColumnActions {
  add: (column: string) => void;
  remove: (column: string) => void;
  unit: (column: string, unit: string) => void;
}

export function columnsChosen(
  { chosen, units, measures, choices, more }: Shown,
  actions: ColumnActions,
): TemplateResult {
  const all: Option[] = [...measures.map(({ id, name }) => ({ value: id, label: name })), ...more];
  const rest = all.filter(({ value }) => !chosen.includes(value));
  return html`
    <ul class="columns" aria-label=${say("columns-entered")}>
      ${chosen.map((column) => {
        const name = all.find(({ value }) => value === column)?.label ?? column;
        const usual = shownIn(measures.find(({ id }) => id === column)?.unit ?? "").unit;
        const unit = units[column] ?? usual;
        const offered = choices.get(column) ?? [];
        return html`
          <li class="chip">
            <span class="what">${name}</span>
            ${
              offered.length > 1
                ? choice(
                    say("columns-unit", { name }),
                    offered.map((value) => ({ value, label: value })),
                    unit,
                    (value) => actions.unit(column, value),
                  )
                : unit
                  ? html`<span class="unit">${unitName(unit)}</span>`
                  : nothing
            }
            ${chosen.length > 1 ? html`<button type="button" aria-label=${say("columns-leave", { name })} @click=${() => actions.remove(column)}>×</button>` : nothing}
          </li>`;
      })}
      <li>
        <select aria-label=${say("columns-add")} @change=${(event: Event) => actions.add(taken(event))}>
          <option value="">${say("columns-add-short")}</option>
          ${rest.map(({ value, label }) => html`<option value=${value}>${label}</option>`)}
        </select>
      </li>
    </ul>`;
}

/** What was chosen; the choice is ready for the next one. */
function taken(event: Event): string {
  const field = event.target as HTMLSelectElement;
  const { value } = field;
  field.value = "";
  return value;
}
