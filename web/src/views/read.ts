/** Part 1 once something is read: clubs, counts, columns and units as understood; every guess is a choice. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import type { ColumnReading, Hints, Order, ReadResult, Role, Session } from "../engine.js";
import { buildCounts, counted, distinctColumns, measureView, orderName, roleKey, roleName, rolesFor, saysTheSame } from "../format.js";
import type { State } from "../state.js";
import { build, choice, foreign, part } from "./pieces.js";
import { problems, notices } from "./problems.js";
import { source } from "./source.js";
import { trouble } from "./trouble.js";

const ORDERS: readonly Order[] = ["interleaved", "blocked", "unknown"];

export const read = (state: State, result: ReadResult, actions: Actions): TemplateResult =>
  part(
    "shots",
    "Your shots",
    html`
      <div class="card" aria-busy=${state.wants === "read" ? "true" : "false"}>
        ${state.report ? trouble(state.trouble) : nothing}
        ${builds(result.session)}
        ${problems(result.problems, result.reading.rows.problems, actions)}
        ${result.session.builds.length > 1 && result.session.shots.length > 0 ? order(result.session, actions) : nothing}
        ${result.reading.single_measure ? singleMeasure(state, result.reading.single_measure, actions) : nothing}
        ${result.reading.columns.length > 0 ? columns(state, result, actions) : nothing}
        ${notices(result.notices)}
        ${source(state, result, actions)}
        <div class="buttons">
          <button type="button" @click=${actions.startAgain}>Start again</button>
        </div>
      </div>
    `,
  );

function builds(session: Session): TemplateResult {
  const counts = buildCounts(session);
  if (session.builds.length === 0) return html`<p class="question">No shots were found.</p>`;
  return html`
    <h3 class="question" id="read-title" tabindex="-1">What was read</h3>
    <ul class="builds">
      ${session.builds.map(({ name }, index) => {
        const count = counts[index];
        return html`<li>${build(index, name)} <span class="count">${count ? countText(count) : nothing}</span></li>`;
      })}
    </ul>`;
}

function countText({ shots, averagesOf, averagesOnly }: ReturnType<typeof buildCounts>[number]): string {
  if (!averagesOnly) return counted(shots, "shot");
  return averagesOf === null ? "averages only" : `averages of ${counted(averagesOf, "shot")}`;
}

const order = (session: Session, actions: Actions): TemplateResult => html`
  <label class="row">
    <span>Clubs were hit</span>
    ${choice(
      "How the clubs were hit",
      ORDERS.map((value) => ({ value, label: orderName(value) })),
      session.order,
      (value) => actions.hint({ order: value as Order }),
    )}
  </label>`;

/** In a table with one column for each club nothing but the golfer says what its numbers are. */
const singleMeasure = (state: State, now: string, actions: Actions): TemplateResult => html`
  <label class="row">
    <span>The numbers are</span>
    ${choice(
      "What the numbers are",
      state.measures.map(({ id, name }) => ({ value: id, label: name })),
      now,
      (single_measure) => actions.hint({ single_measure }),
    )}
  </label>`;

const columns = (state: State, result: ReadResult, actions: Actions): TemplateResult => html`
  <h3 class="quiet">Columns. Tap one to correct it</h3>
  <ul class="columns">
    ${distinctColumns(result.reading.columns).map((column) => columnChip(state, result, column, actions))}
  </ul>`;

function columnChip(state: State, result: ReadResult, column: ColumnReading, actions: Actions): TemplateResult {
  const heading = column.heading || `column ${column.index + 1}`;
  const isPlain = column.sure && saysTheSame(heading, roleName(column.role, (id) => measureView(id, state.measures, result.session).name));
  const nameOf = (id: string) => measureView(id, state.measures, result.session).name;
  const roles = rolesFor(column, state.measures, result.session.measures).map((role) => ({ value: roleKey(role), label: roleName(role, nameOf) }));
  const units = [...new Set([column.unit, ...column.units])];
  const hint = (hints: Hints) => actions.hint(hints);
  return html`
    <li class="column ${column.sure ? "" : "unsure"}">
      ${isPlain ? nothing : html`<span class="heading">${foreign(heading)} ${column.sure ? nothing : html`<em>please check</em>`}</span>`}
      <span class="chip">
        ${choice(`What “${heading}” holds`, roles, roleKey(column.role), (value) =>
          hint({ columns: { [column.index]: JSON.parse(value) as Role } }),
        )}
        ${units.length > 1
          ? choice(`Unit of “${heading}”`, units.map((unit) => ({ value: unit, label: unit || "no unit" })), column.unit,
              (value) => hint({ units: { [column.index]: value } }))
          : column.unit
            ? html`<span class="unit">${column.unit}</span>`
            : nothing}
      </span>
    </li>`;
}
