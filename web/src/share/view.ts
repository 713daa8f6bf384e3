/** Part 10: the link, the words to paste, the card, print and files. Views hand nothing over themselves. */
import { html, nothing, type TemplateResult } from "lit";
import type { Refusal, Shared } from "../core/engine.js";
import { trouble as refused } from "../pieces/trouble.js";
import { say, sayAround } from "../text/say.js";
import type { Code } from "./code.js";
import type { Scheme } from "./colors.js";
import { canShare } from "./device.js";
import { snippetOf } from "./snippet.js";

export type Style = "plain" | "markdown" | "brackets";

export interface ShareState {
  shared: Shared | null;
  trouble: Refusal | null;
  blank: boolean;
  note: string;
  style: Style;
  scheme: Scheme;
  picture: { address: string; file: File; code: Code | null } | null;
  /** What was just done, to be seen and heard. */
  done: string;
}

/** What is said once something was copied. */
export type Copied = "share-copied-link" | "share-copied-embed" | "share-copied-text" | "share-copied-alternative";

export interface ShareActions {
  blankNames: (blank: boolean) => void;
  addNote: (note: string) => void;
  choose: (style: Style) => void;
  show: (scheme: Scheme) => void;
  copy: (done: Copied, text: string) => void;
  share: (data: ShareData) => void;
  savePicture: () => void;
  saveCsv: () => void;
  saveReport: () => void;
  print: () => void;
}

/** Modules left light around a code, so that a phone finds it. */
const BORDER = 4;

/** Where forums and messengers begin to cut addresses off; the core says whether a link stays below. */
const FORUMS = 2_000;

export function shareView(state: ShareState, actions: ShareActions): TemplateResult {
  const { shared, trouble } = state;
  if (trouble) return html`<div class="card">${refused(trouble)}</div>`;
  if (!shared) return html`<p class="hint">${say("working")}</p>`;
  return html`
    <p class="hint">${say("share-help")}</p>
    <p class="share-done" role="status">${state.done}</p>
    ${link(state, shared, actions)} ${words(state, shared, actions)} ${picture(state, shared, actions)} ${files(actions)} ${embedded(shared, actions)} ${onPaper(state, shared)}`;
}

function link(state: ShareState, shared: Shared, actions: ShareActions): TemplateResult {
  return html`
    <section class="card" aria-labelledby="share-link">
      <h3 id="share-link">${say("share-link")}</h3>
      <p>${say("share-link-help")}</p>
      <label class="option">
        <input type="checkbox" .checked=${state.blank} @change=${(event: Event) => actions.blankNames((event.target as HTMLInputElement).checked)} />
        <span>${say("share-blank")}</span>
      </label>
      <label class="note-field">
        <span>${say("share-note")}</span>
        <input id="share-note" maxlength="280" autocomplete="off" .value=${state.note}
          @change=${(event: Event) => actions.addNote((event.target as HTMLInputElement).value)} />
      </label>
      ${shared.link === null ? tooLarge(actions) : shared.fits_forums ? short(shared, shared.link, actions) : long(shared.link, actions)}
    </section>`;
}

/** Where the device has a share sheet that takes it. */
const shareButton = (data: ShareData, actions: ShareActions) =>
  canShare(data)
    ? html`<button type="button" @click=${() => actions.share(data)}>${say("share-button")}</button>`
    : nothing;

const field = (address: string): TemplateResult => html`
  <input id="share-address" class="address" readonly aria-label=${say("share-the-link")} .value=${address}
    @focus=${(event: Event) => (event.target as HTMLInputElement).select()} />`;

function short({ words }: Shared, address: string, actions: ShareActions): TemplateResult {
  const data = { title: words.title, url: address };
  return html`
    ${field(address)}
    <p class="hint">${say("share-characters", { count: address.length })}</p>
    <div class="buttons">
      <button type="button" class="primary" @click=${() => actions.copy("share-copied-link", address)}>${say("share-copy-link")}</button>
      ${shareButton(data, actions)}
    </div>`;
}

const long = (address: string, actions: ShareActions): TemplateResult => html`
  <div class="notice">
    <p><strong>${say("share-long", { count: address.length })}</strong> ${say("share-long-help", { forums: FORUMS })}</p>
  </div>
  ${field(address)}
  <div class="buttons">
    <button type="button" class="primary" @click=${actions.saveCsv}>${say("share-save-file")}</button>
    <button type="button" @click=${() => actions.copy("share-copied-link", address)}>${say("share-copy-long")}</button>
  </div>`;

const tooLarge = (actions: ShareActions): TemplateResult => html`
  <div class="notice"><p><strong>${say("share-too-large")}</strong> ${say("share-too-large-help")}</p></div>
  <div class="buttons"><button type="button" class="primary" @click=${actions.saveCsv}>${say("share-save-file")}</button></div>`;

const STYLES: readonly Style[] = ["plain", "brackets", "markdown"];

function words({ style }: ShareState, { words }: Shared, actions: ShareActions): TemplateResult {
  const text = words[style];
  const data = { title: words.title, text };
  return html`
    <section class="card" aria-labelledby="share-words">
      <h3 id="share-words">${say("share-words")}</h3>
      ${segments("share-style", say("share-style"), STYLES, style, actions.choose)}
      <textarea id="share-text" rows="9" readonly aria-label=${say("share-text")} .value=${text}></textarea>
      <div class="buttons">
        <button type="button" @click=${() => actions.copy("share-copied-text", text)}>${say("share-copy-text")}</button>
        ${shareButton(data, actions)}
      </div>
    </section>`;
}

const SCHEMES: readonly Scheme[] = ["light", "dark"];

function picture({ picture, scheme }: ShareState, { card, link }: Shared, actions: ShareActions): TemplateResult {
  return html`
    <section class="card" aria-labelledby="share-picture">
      <h3 id="share-picture">${say("share-picture")}</h3>
      ${segments("share-scheme", say("share-colors"), SCHEMES, scheme, actions.show)}
      ${picture ? html`<img class="share-card" src=${picture.address} alt=${card.alternative} />` : html`<p class="hint">${say("share-drawing")}</p>`}
      ${
        picture && !picture.code
          ? html`<p class="hint">${link === null ? say("share-no-code-large") : say("share-no-code-long")}</p>`
          : nothing
      }
      <details>
        <summary>${say("share-alternative")}</summary>
        <p>${card.alternative}</p>
      </details>
      <div class="buttons">
        <button type="button" ?disabled=${!picture} @click=${actions.savePicture}>${say("share-save-picture")}</button>
        ${picture ? shareButton({ files: [picture.file] }, actions) : nothing}
        <button type="button" @click=${() => actions.copy("share-copied-alternative", card.alternative)}>${say("share-copy-alternative")}</button>
      </div>
    </section>`;
}

const files = (actions: ShareActions): TemplateResult => html`
  <section class="card" aria-labelledby="share-files">
    <h3 id="share-files">${say("share-files")}</h3>
    <p class="hint">
      ${sayAround("share-files-help", { schema: html`<a href="./report.schema.json" target="_blank" rel="noopener">${say("share-schema")}</a>` })}
    </p>
    <div class="buttons">
      <button type="button" @click=${actions.print}>${say("share-print")}</button>
      <button type="button" @click=${actions.saveCsv}>${say("share-save-csv")}</button>
      <button type="button" @click=${actions.saveReport}>${say("share-save-report")}</button>
    </div>
  </section>`;

/** For somebody's own page: the snippet, and what it sends. */
function embedded({ link }: Shared, actions: ShareActions): TemplateResult {
  const snippet = snippetOf(link);
  return html`
    <section class="card" aria-labelledby="share-embed">
      <h3 id="share-embed">${say("share-embed")}</h3>
      <details>
        <summary>${say("share-embed-line")}</summary>
        <textarea id="share-snippet" rows="5" readonly spellcheck="false" aria-label=${say("share-embed-snippet")} .value=${snippet}></textarea>
        <div class="buttons"><button type="button" @click=${() => actions.copy("share-copied-embed", snippet)}>${say("share-embed-copy")}</button></div>
        <ul class="share-sends">
          <li>${link === null ? say("share-embed-file") : say("share-embed-shots")}</li>
          <li>${say("share-embed-asks")}</li>
          <li>${say("share-embed-answer")}</li>
          <li>${say("share-embed-not")}</li>
        </ul>
      </details>
    </section>`;
}

/** On a sheet alone: the link as a code, and the note that was given to it. */
const onPaper = ({ picture, note }: ShareState, { link }: Shared): TemplateResult => html`
  <div class="on-paper sheet-code">
    ${picture?.code ? drawn(picture.code) : nothing}
    <p>${note === "" ? nothing : html`<strong>${note}</strong><br />`}${picture?.code ? say("share-sheet-code") : link === null ? say("share-no-code-large") : say("share-sheet-long")}</p>
  </div>`;

/** A dark module is a square of one by one; the light border belongs to the code. */
function drawn(code: Code): TemplateResult {
  const across = code.length + 2 * BORDER;
  const path = code
    .flatMap((row, y) => row.map((dark, x) => (dark ? `M${x + BORDER} ${y + BORDER}h1v1h-1z` : "")))
    .join("");
  return html`<svg viewBox="0 0 ${across} ${across}" aria-hidden="true" shape-rendering="crispEdges"><path d=${path} /></svg>`;
}

const segments = <T extends Style | Scheme>(
  name: string,
  title: string,
  options: readonly T[],
  now: T,
  choose: (value: T) => void,
): TemplateResult => html`
  <fieldset>
    <legend class="visually-hidden">${title}</legend>
    <div class="segments">
      ${options.map(
        (value) => html`
          <label class="segment">
            <input type="radio" name=${name} value=${value} .checked=${value === now} @change=${() => choose(value)} />
            <span>${say(`share-${value as Style | Scheme}`)}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;
