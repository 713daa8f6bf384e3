/** What is in the row of what was read: clubs, columns and units as understood; every guess is a choice. Loaded when it is opened. */
import { html, nothing, type TemplateResult } from "lit";
import type { ColumnReading, Hints, ReadResult, Role, Session } from "../core/engine.js";
import { distinctColumns, measureView, roleKey, roleName, rolesFor, saysTheSame, unitName } from "../format/values.js";
import { choice, foreign } from "../pieces/pieces.js";
import { trouble } from "../pieces/trouble.js";
import { whenOpen } from "../pieces/when-open.js";
import { add } from "../start/add.js";
import type { Actions } from "../state/actions.js";
import { namesTooMany } from "../state/doubts.js";
import { shotCount } from "../state/shots.js";
import type { State } from "../state/state.js";
import type { Given } from "../state/texts.js";
import english from "../text/en/settings.ftl?raw";
import { learn, say } from "../text/say.js";
import { clubs, whose } from "./clubs.js";
import { notices, problems } from "./problems.js";
import { source } from "./source.js";
import { undo } from "./undo.js";

learn(english);

export const inside = (state: State, session: Session, actions: Actions): TemplateResult => {
  const several = state.given.length > 1;
  return html`
    <div class="card" aria-busy=${state.wants === "read" ? "true" : "false"}>
      ${state.report ? trouble(state.trouble) : nothing}
      ${namesTooMany(state.given) ? nothing : clubs(session, actions)}
      ${state.given.map((one) => whose(one, several, session, actions))}
      ${state.given.map((one, at) => (several ? oneOfSeveral(state, one, at, session, actions) : text(state, one, at, session, actions)))}
      ${add(state, session.builds.length, actions)}
      ${undo(state, actions)}
      <div class="buttons">
        ${state.given.map((one, at) => (several ? nothing : openAgain(one, at, actions)))}
        <button type="button" @click=${actions.startAgain}>${say("start-again")}</button>
      </div>
    </div>`;
};

/** What was typed goes back into the grid or the form it was typed into. */
const openAgain = ({ source: { kind } }: Given, at: number, actions: Actions): TemplateResult | typeof nothing =>
  kind === "typed" || kind === "averages"
    ? html`<button type="button" @click=${() => actions.enter({ kind: kind === "typed" ? "grid" : "averages", at })}>
        ${kind === "typed" ? say("back-to-typing") : say("change-averages")}
      </button>`
    : nothing;

/** Of several texts each opens by itself; one that needs a look stands open. */
function oneOfSeveral(state: State, one: Given, at: number, session: Session, actions: Actions): TemplateResult {
  const { source, shown: result } = one;
  const needsLook = result !== null && (result.problems.length > 0 || result.reading.columns.some(({ sure }) => !sure));
  return html`
    <details class="text" ?open=${needsLook}>
      <summary>${foreign(source.name)} <span class="count">${say("n-shots", { count: result ? shotCount(result.session) : 0 })}</span></summary>
      <div class="inside">
        ${text(state, one, at, session, actions)}
        <div class="buttons">
          ${openAgain(one, at, actions)}
          <button type="button" @click=${() => actions.removeText(at)}>${say("remove-shots")}</button>
        </div>
      </div>
    </details>`;
}

/** How one text was understood. */
function text(
  state: State,
  given: Given,
  at: number,
  session: Session,
  actions: Actions,
): TemplateResult | typeof nothing {
  const result = given.shown;
  if (!result) return nothing;
  const { reading } = result;
  // Where every column was chosen before it was typed there is nothing to correct.
  const isTyped = given.source.draft !== undefined;
  const own: Actions = {
    ...actions,
    hint: (hints) => actions.hint(hints, at),
    changeText: (_, changed) => actions.changeText(at, changed),
  };
  return html`
    ${problems(
      result.problems,
      reading.rows.problems,
      namesTooMany(state.given) ? [] : session.builds.map(({ name }) => name),
      own,
    )}
    ${reading.single_measure ? singleMeasure(state, reading.single_measure, own) : nothing}
    ${reading.columns.length > 0 && !(isTyped && reading.columns.every(({ sure }) => sure)) ? columns(state, given, result, session, own) : nothing}
    ${notices(result.notices.filter(({ kind }) => kind !== "build_assumed"))}
    ${source(given.source, result, own)}`;
}

/** In a table with one column for each club nothing but the golfer says what its numbers are. */
const singleMeasure = (state: State, now: string, actions: Actions): TemplateResult => html`
  <label class="row">
    <span>${say("numbers-are")}</span>
    ${choice(
      say("numbers-are-what"),
      state.measures.map(({ id, name }) => ({ value: id, label: name })),
      now,
      (single_measure) => actions.hint({ single_measure }),
    )}
  </label>`;

/** What the columns were taken for, in a line; open where one is in doubt, and once one was corrected. */
function columns(
  state: State,
  { hints }: Given,
  { reading }: ReadResult,
  session: Session,
  actions: Actions,
): TemplateResult {
  const all = distinctColumns(reading.columns);
  const isOpen = all.some(({ sure }) => !sure) || hints.columns !== undefined || hints.units !== undefined;
  return html`
    <details class="columns-read" ?open=${isOpen}>
      <summary>${say("columns", { read: columnsInWords(all, state, session) })}</summary>
      ${whenOpen(
        () => html`
        <div class="inside">
          <p class="hint">${say("columns-help")}</p>
          <ul class="columns">
            ${all.map((column) => columnChip(state, session, column, actions))}
          </ul>
        </div>`,
      )}
    </details>`;
}

function columnsInWords(all: readonly ColumnReading[], state: State, session: Session): string {
  const used = all.filter(({ role }) => role !== "ignored");
  const names = used.map(({ role, unit }) => {
    const name = roleName(role, (id) => measureView(id, state.measures, session).name);
    return unit ? say("column-with-unit", { name, unit: unitName(unit) }) : name;
  });
  const unused = all.length - used.length;
  return [...names, ...(unused > 0 ? [say("columns-unused", { count: unused })] : [])].join(", ");
}

function columnChip(state: State, session: Session, column: ColumnReading, actions: Actions): TemplateResult {
  const heading = column.heading || say("column-n", { number: column.index + 1 });
  const isPlain =
    column.sure &&
    saysTheSame(
      heading,
      roleName(column.role, (id) => measureView(id, state.measures, session).name),
    );
  const nameOf = (id: string) => measureView(id, state.measures, session).name;
  const roles = rolesFor(column, state.measures, session.measures).map((role) => ({
    value: roleKey(role),
    label: roleName(role, nameOf),
  }));
  const units = [...new Set([column.unit, ...column.units])];
  const hint = (hints: Hints) => actions.hint(hints);
  return html`
    <li class="column ${column.sure ? "" : "unsure"}">
      ${isPlain ? nothing : html`<span class="heading">${foreign(heading)} ${column.sure ? nothing : html`<em>${say("please-check")}</em>`}</span>`}
      <span class="chip">
        ${choice(say("column-holds", { heading }), roles, roleKey(column.role), (value) =>
          hint({ columns: { [column.index]: JSON.parse(value) as Role } }),
        )}
        ${
          units.length > 1
            ? choice(
                say("column-unit", { heading }),
                units.map((unit) => ({ value: unit, label: unit ? unitName(unit) : say("no-unit") })),
                column.unit,
                (value) => hint({ units: { [column.index]: value } }),
              )
            : column.unit
              ? html`<span class="unit">${unitName(column.unit)}</span>`
              : nothing
        }
      </span>
    </li>`;
}
