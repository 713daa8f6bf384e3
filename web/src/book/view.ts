/** The book: what lies here, what goes on, everything by name and date, and what can be done with all of it. */
import { html, nothing, type TemplateResult } from "lit";
import { foreign } from "../pieces/pieces.js";
import { say } from "../text/say.js";
import { copiesView } from "./copies-view.js";
import { listOf } from "./list.js";
import { personView } from "./person-view.js";
import { rowView } from "./row-view.js";
import type { BookActions, BookState } from "./state.js";
import { sizeOf } from "./words.js";

export function bookView(state: BookState, actions: BookActions): TemplateResult {
  if (state.trouble === "newer") return html`<p class="notice trouble" role="alert">${say("book-newer")}</p>`;
  if (!state.counts) return html`<p class="hint">${say("opening")}</p>`;
  return html`
    <div class="book">
      ${state.where === "memory" ? html`<p class="notice trouble" role="alert">${say("book-memory")}</p>` : nothing}
      <p class="hint book-lies">${lies(state)}</p>
      ${done(state, actions)}
      ${state.isCopyOld ? html`<p class="hint book-remind">${say("copy-remind")}</p>` : nothing}
      ${state.person ? personView(state, state.person, actions) : html`${goingOn(state, actions)} ${list(state, actions)}`}
      ${copiesView(state, actions)} ${deleted(state, actions)} ${forget(state, actions)}
      <p class="hint">${say("book-nowhere")}</p>
    </div>`;
}

/** What lies here, and how much, in one line. */
function lies({ counts, bytes, meta, where }: BookState): string {
  const all = listOf(counts!);
  if (all === "") return say("book-empty");
  const much = say("book-lies", { all });
  const size = bytes === null ? "" : say("book-size", { size: sizeOf(bytes) });
  const promise =
    meta?.isPersistent === undefined || where === "memory"
      ? ""
      : say(meta.isPersistent ? "kept-persistent" : "kept-not-persistent");
  return [much, size, promise].filter(Boolean).join(" ");
}

const done = ({ done: said, undo }: BookState, actions: BookActions): TemplateResult => html`
  <div class="book-done" role="status">
    ${said === "" ? nothing : html`<p class="book-ok">${said} ${undo === null ? nothing : html`<button type="button" @click=${() => actions.takeBack(undo)}>${say("book-take-back")}</button>`}</p>`}
  </div>`;

const goingOn = ({ underWay }: BookState, actions: BookActions): TemplateResult | typeof nothing =>
  underWay.length === 0
    ? nothing
    : html`
      <div class="card">
        <h3>${say("book-under-way")}</h3>
        <ul class="book-rows">${underWay.map(
          ({ test, name }) => html`
            <li class="book-going">
              <span><strong>${foreign(name || say("book-nobody"))}</strong> ${foreign(test.data.plan.builds.join(", "))}</span>
              <button type="button" @click=${() => actions.goOn(test.id)}>${say("book-go-on")}</button>
            </li>`,
        )}</ul>
      </div>`;

function list(state: BookState, actions: BookActions): TemplateResult {
  const { rows, text, most } = state;
  return html`
    <div class="card">
      <label class="book-search"><span>${say("book-search")}</span>
        <input id="book-search" type="search" autocomplete="off" maxlength="80" .value=${text}
          @input=${(event: Event) => actions.search((event.target as HTMLInputElement).value)} /></label>
      ${rows.length === 0 && text !== "" ? html`<p class="hint" role="status">${say("book-nothing-found")}</p>` : nothing}
      <ul class="book-rows" id="book-rows">${rows.map((row) => rowView(row, state, actions))}</ul>
      ${rows.length >= most ? html`<div class="buttons"><button type="button" @click=${actions.showMore}>${say("book-more")}</button></div>` : nothing}
    </div>`;
}

function deleted({ deleted: groups }: BookState, actions: BookActions): TemplateResult | typeof nothing {
  if (groups.length === 0) return nothing;
  return html`
    <details class="card">
      <summary>${say("book-deleted")}</summary>
      <p class="hint">${say("book-deleted-help")}</p>
      <ul class="book-rows">${groups.map(({ gone, kept }) => {
        const named = kept.find(({ kind }) => kind === "person") ?? kept[0]!;
        const name = "name" in named.data ? named.data.name : "line" in named.data ? named.data.line : "";
        return html`
          <li class="book-going">
            <span>${foreign(name || say("book-without-answer"))}${kept.length > 1 ? ` (${say("book-records", { count: kept.length })})` : nothing}</span>
            <button type="button" @click=${() => actions.takeBack(gone)}>${say("book-take-back")}</button>
          </li>`;
      })}</ul>
    </details>`;
}

const forget = (
  { forgetting, counts, deleted: groups }: BookState,
  actions: BookActions,
): TemplateResult | typeof nothing =>
  listOf(counts!) === "" && groups.length === 0
    ? nothing
    : html`
  <details class="card book-forget" .open=${forgetting} @toggle=${(event: Event) => actions.askToForget((event.target as HTMLDetailsElement).open)}>
    <summary>${say("forget-everything")}</summary>
    <p><strong>${say("forget-all", { all: listOf(counts!) })}</strong></p>
    <p>${say("forget-help")}</p>
    <div class="buttons"><button type="button" class="danger" @click=${actions.forget}>${say("forget-yes")}</button></div>
  </details>`;
