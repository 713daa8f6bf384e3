/** A row of the list: who, when, the answer's one line; and what can be done with it, once it is open. */
import { html, nothing, type TemplateResult } from "lit";
import { foreign } from "../pieces/pieces.js";
import { say } from "../text/say.js";
import type { Kept, TestData, VisitData } from "./records.js";
import type { Row } from "./shelf.js";
import type { BookActions, BookState } from "./state.js";
import { dayOf } from "./words.js";

export function rowView(row: Row, state: BookState, actions: BookActions): TemplateResult {
  if ("damaged" in row)
    return html`
      <li class="book-row">
        <p class="notice trouble">${say("book-damaged")}</p>
        <div class="buttons"><button type="button" @click=${() => actions.saveRaw(row.damaged)}>${say("book-save-raw")}</button></div>
      </li>`;
  const { kept, person, visit } = row;
  const isOpen = state.open === kept.id;
  const day = visit
    ? html`${dayOf(visit.data.date)}${visit.data.place ? html`, ${foreign(visit.data.place)}` : nothing}`
    : nothing;
  return html`
    <li class="book-row">
      <button type="button" class="book-open-row" aria-expanded=${isOpen} @click=${() => actions.toggle(kept.id)}>
        <span class="book-who">${state.person ? html`<strong>${day}</strong>` : html`<strong>${foreign(person?.data.name ?? say("book-nobody"))}</strong> <span class="hint">${day}</span>`}</span>
        <span>${lineOf(kept)}</span>
      </button>
      ${isOpen ? opened(row, actions, state.person === null) : nothing}
    </li>`;
}

/** The answer's one line, or what stands for it. */
export function lineOf(kept: Kept): TemplateResult | string {
  if ("line" in kept.data && kept.data.line !== "")
    return kept.kind === "claim" ? say("book-claim", { said: kept.data.line }) : kept.data.line;
  if (kept.kind !== "test") return say("book-without-answer");
  const { plan, isOver } = kept.data as TestData;
  return html`${say(isOver ? "book-test-over" : "book-test-waits")} ${foreign(plan.builds.join(", "))}`;
}

function opened(row: Exclude<Row, { damaged: unknown }>, actions: BookActions, withPerson: boolean): TemplateResult {
  const { kept, person, visit } = row;
  const what = [person?.data.name ?? "", visit ? dayOf(visit.data.date) : ""].filter(Boolean).join(", ");
  const waits = kept.kind === "test" && !(kept.data as TestData).isOver;
  return html`
    <div class="book-opened">
      <div class="buttons">
        ${waits ? html`<button type="button" class="primary" @click=${() => actions.goOn(kept.id)}>${say("book-go-on")}</button>` : nothing}
        ${kept.kind === "claim" ? nothing : html`<button type="button" class=${waits ? "" : "primary"} @click=${() => actions.openAnswer(row)}>${say("book-open-answer")}</button>`}
        ${kept.kind === "claim" ? nothing : html`<button type="button" @click=${() => actions.nextVisit(row)}>${say("book-next-visit")}</button>`}
        ${withPerson && person ? html`<button type="button" @click=${() => actions.showPerson(person.id)}>${say("book-all-of", { name: person.data.name })}</button>` : nothing}
        <button type="button" @click=${() => actions.remove(kept.id, what)}>${say("book-delete")}</button>
      </div>
      ${visit ? visitForm(visit, actions) : nothing}
    </div>`;
}

const MARKS: readonly VisitData["mark"][] = ["", "lesson", "ball"];

/** What the coach says of the day. */
function visitForm(visit: Kept<"visit">, actions: BookActions): TemplateResult {
  const tell = (field: "date" | "place" | "note") => (event: Event) =>
    actions.tellVisit(visit.id, { [field]: (event.target as HTMLInputElement).value });
  return html`
    <details>
      <summary>${say("book-visit")}</summary>
      <div class="book-form">
        <label class="row"><span>${say("book-date")}</span><input type="date" .value=${visit.data.date} @change=${tell("date")} /></label>
        <label class="row"><span>${say("book-place")}</span><input maxlength="80" autocomplete="off" .value=${visit.data.place} @change=${tell("place")} /></label>
        <label class="row"><span>${say("book-mark")}</span>
          <select @change=${(event: Event) => actions.tellVisit(visit.id, { mark: (event.target as HTMLSelectElement).value as VisitData["mark"] })}>
            ${MARKS.map((mark) => html`<option value=${mark} ?selected=${mark === visit.data.mark}>${mark === "" ? say("visit-nothing-new") : say(`visit-${mark}`)}</option>`)}
          </select></label>
        <div class="buttons"><button type="button" @click=${() => actions.saveVisit(visit.id)}>${say("copy-visit")}</button></div>
        <label class="book-note"><span>${say("book-note")}</span><textarea rows="3" maxlength="1000" .value=${visit.data.note} @change=${tell("note")}></textarea></label>
      </div>
    </details>`;
}
