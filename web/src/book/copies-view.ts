/** The book as one file: saved, and one opened again, with what it would change before it does. */
import { html, nothing, type TemplateResult } from "lit";
import { foreign } from "../pieces/pieces.js";
import { say, sayAround } from "../text/say.js";
import { listOf } from "./list.js";
import { type Change, isNothingNew, type Preview } from "./merge.js";
import type { BookActions, BookState } from "./state.js";

export function copiesView({ copy }: BookState, actions: BookActions): TemplateResult {
  const saved = (event: Event) => {
    event.preventDefault();
    const field = (event.currentTarget as HTMLFormElement).querySelector("input")!;
    actions.saveCopy(field.value);
    field.value = "";
  };
  const chosen = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) actions.openCopy(file);
    input.value = "";
  };
  return html`
    <details class="card book-copies" .open=${copy !== null}>
      <summary>${say("copy-title")}</summary>
      <p class="hint">${sayAround("copy-help", { schema: html`<a href="./book.schema.json" target="_blank" rel="noopener">${say("copy-schema")}</a>` })}</p>
      <form class="book-form" @submit=${saved}>
        <label class="row"><span>${say("copy-passphrase")}</span><input id="copy-passphrase" type="password" autocomplete="new-password" /></label>
        <p class="hint">${say("copy-passphrase-help")}</p>
        <div class="buttons">
          <button type="submit" class="primary">${say("copy-save")}</button>
          <label class="button"><input id="copy-file" type="file" class="visually-hidden" accept=".json,application/json" @change=${chosen} />${say("copy-open")}</label>
        </div>
      </form>
      ${copy === null ? nothing : "preview" in copy ? preview(copy.preview, actions) : passphrase(copy.isWrong, actions)}
    </details>`;
}

function passphrase(isWrong: boolean, actions: BookActions): TemplateResult {
  const given = (event: Event) => {
    event.preventDefault();
    actions.unlock((event.currentTarget as HTMLFormElement).querySelector("input")!.value);
  };
  return html`
    <form class="book-form notice" @submit=${given}>
      <label class="row"><span>${say("copy-locked")}</span><input id="copy-unlock" type="password" autocomplete="off" /></label>
      ${isWrong ? html`<p class="trouble" role="alert">${say("copy-wrong")}</p>` : nothing}
      <div class="buttons"><button type="submit" class="primary">${say("copy-unlock")}</button><button type="button" @click=${actions.leaveCopy}>${say("copy-leave")}</button></div>
    </form>`;
}

function preview(found: Preview, actions: BookActions): TemplateResult {
  const unreadable =
    found.unreadable > 0 ? html`<p>${say("copy-unreadable", { count: found.unreadable })}</p>` : nothing;
  if (isNothingNew(found))
    return html`
      <div class="notice" role="status">
        <p><strong>${say("copy-nothing-new")}</strong></p>${unreadable} ${changes(found.changes)}
        <div class="buttons"><button type="button" @click=${actions.leaveCopy}>${say("copy-leave")}</button></div>
      </div>`;
  const { person: people, visit: visits, session: sessions, test: tests, claim: claims } = found.news;
  const all = listOf({ people, visits, sessions, tests, claims, shots: found.shots });
  return html`
    <div class="notice" role="status">
      <p><strong>${all === "" ? say("copy-only-changes") : say("copy-brings", { all })}</strong></p>
      ${found.branches > 0 ? html`<p>${say("copy-branches", { count: found.branches })}</p>` : nothing}
      ${unreadable} ${changes(found.changes)}
      <div class="buttons">
        <button type="button" class="primary" @click=${actions.takeOver}>${say("copy-take-over")}</button>
        <button type="button" @click=${actions.leaveCopy}>${say("copy-leave")}</button>
      </div>
    </div>`;
}

/** The first of them: whoever has hundreds reads none. */
const SHOWN = 12;

const changes = (all: readonly Change[]): TemplateResult | typeof nothing =>
  all.length === 0
    ? nothing
    : html`
      <p>${say("copy-changes", { count: all.length })}</p>
      <ul class="book-changes">${all.slice(0, SHOWN).map(
        ({ here, there, taken }) => html`
          <li>${sayAround(taken === "there" ? "copy-change-there" : "copy-change-here", { here: foreign(shown(here)), there: foreign(shown(there)) })}</li>`,
      )}</ul>`;

const shown = (value: unknown): string => {
  const text = typeof value === "string" ? value : (JSON.stringify(value) ?? "");
  return text === "" ? "–" : text.slice(0, 60);
};
