/** Part 10: the link, the words to paste, the card, print and files. Views hand nothing over themselves. */
import { html, nothing, type TemplateResult } from "lit";
import type { Refusal, Shared } from "../engine.js";
import { counted } from "../format.js";
import { trouble as refused } from "../views/trouble.js";
import type { Scheme } from "./colors.js";
import { canShare } from "./hand-over.js";

export type Style = "plain" | "markdown" | "brackets";

export interface ShareState {
  shared: Shared | null;
  trouble: Refusal | null;
  blank: boolean;
  note: string;
  style: Style;
  scheme: Scheme;
  picture: { address: string; file: File; coded: boolean } | null;
  /** What was just done, to be seen and heard. */
  done: string;
}

export interface ShareActions {
  blankNames: (blank: boolean) => void;
  addNote: (note: string) => void;
  choose: (style: Style) => void;
  show: (scheme: Scheme) => void;
  copy: (what: string, text: string) => void;
  share: (data: ShareData) => void;
  savePicture: () => void;
  saveCsv: () => void;
  saveReport: () => void;
  print: () => void;
}

/** Where forums and messengers begin to cut addresses off; the core says whether a link stays below. */
const FORUMS = "2,000";

export function shareView(state: ShareState, actions: ShareActions): TemplateResult {
  const { shared, trouble } = state;
  if (trouble) return html`<div class="card">${refused(trouble)}</div>`;
  if (!shared) return html`<p class="hint">Working it out…</p>`;
  return html`
    <p class="hint">Nothing is uploaded. What you share is what you hand over yourself.</p>
    <p class="share-done" role="status">${state.done}</p>
    ${link(state, shared, actions)} ${words(state, shared, actions)} ${picture(state, shared, actions)} ${files(actions)}`;
}

function link(state: ShareState, shared: Shared, actions: ShareActions): TemplateResult {
  return html`
    <section class="card" aria-labelledby="share-link">
      <h3 id="share-link">A link that holds the shots</h3>
      <p>Whoever opens it sees every shot, also those left out, reads this answer, and can try another margin.</p>
      <label class="option">
        <input type="checkbox" .checked=${state.blank} @change=${(event: Event) => actions.blankNames((event.target as HTMLInputElement).checked)} />
        <span>Leave out the clubs’ names: Club A, Club B</span>
      </label>
      <label class="note-field">
        <span>A line to go with it, if you like</span>
        <input id="share-note" maxlength="280" autocomplete="off" .value=${state.note}
          @change=${(event: Event) => actions.addNote((event.target as HTMLInputElement).value)} />
      </label>
      ${shared.link === null ? tooLarge(actions) : shared.fits_forums ? short(shared, shared.link, actions) : long(shared.link, actions)}
    </section>`;
}

/** Where the device has a share sheet that takes it. */
const shareButton = (data: ShareData, actions: ShareActions) =>
  canShare(data) ? html`<button type="button" @click=${() => actions.share(data)}>Share…</button>` : nothing;

const field = (address: string): TemplateResult => html`
  <input id="share-address" class="address" readonly aria-label="The link" .value=${address}
    @focus=${(event: Event) => (event.target as HTMLInputElement).select()} />`;

function short({ words }: Shared, address: string, actions: ShareActions): TemplateResult {
  const data = { title: words.title, url: address };
  return html`
    ${field(address)}
    <p class="hint">${counted(address.length, "character")}.</p>
    <div class="buttons">
      <button type="button" class="primary" @click=${() => actions.copy("Link", address)}>Copy the link</button>
      ${shareButton(data, actions)}
    </div>`;
}

const long = (address: string, actions: ShareActions): TemplateResult => html`
  <div class="notice">
    <p><strong>This link is long: ${counted(address.length, "character")}.</strong> Many forums and messengers cut off what is longer than ${FORUMS}. Send the file instead: whoever opens it on this page sees the same.</p>
  </div>
  ${field(address)}
  <div class="buttons">
    <button type="button" class="primary" @click=${actions.saveCsv}>Save the file</button>
    <button type="button" @click=${() => actions.copy("Link", address)}>Copy the long link</button>
  </div>`;

const tooLarge = (actions: ShareActions): TemplateResult => html`
  <div class="notice"><p><strong>This session is too large for a link.</strong> Send the file instead: whoever opens it on this page sees the same.</p></div>
  <div class="buttons"><button type="button" class="primary" @click=${actions.saveCsv}>Save the file</button></div>`;

const STYLES: readonly { value: Style; label: string }[] = [
  { value: "plain", label: "Plain" },
  { value: "brackets", label: "Forum [b]" },
  { value: "markdown", label: "Markdown" },
];

function words({ style }: ShareState, { words }: Shared, actions: ShareActions): TemplateResult {
  const text = words[style];
  const data = { title: words.title, text };
  return html`
    <section class="card" aria-labelledby="share-words">
      <h3 id="share-words">Words to paste</h3>
      ${segments("share-style", "How the words are marked", STYLES, style, actions.choose)}
      <textarea id="share-text" rows="9" readonly aria-label="The answer as text" .value=${text}></textarea>
      <div class="buttons">
        <button type="button" @click=${() => actions.copy("Text", text)}>Copy the text</button>
        ${shareButton(data, actions)}
      </div>
    </section>`;
}

const SCHEMES: readonly { value: Scheme; label: string }[] = [
  { value: "light", label: "Light" },
  { value: "dark", label: "Dark" },
];

function picture({ picture, scheme }: ShareState, { card, link }: Shared, actions: ShareActions): TemplateResult {
  return html`
    <section class="card" aria-labelledby="share-picture">
      <h3 id="share-picture">A picture of the answer</h3>
      ${segments("share-scheme", "Colors", SCHEMES, scheme, actions.show)}
      ${picture ? html`<img class="share-card" src=${picture.address} alt=${card.alternative} />` : html`<p class="hint">Drawing…</p>`}
      ${picture && !picture.coded
        ? html`<p class="hint">There is no code to scan on it: ${link === null ? "the session is too large for a link" : "the link is too long for one that a phone can read"}.</p>`
        : nothing}
      <details>
        <summary>Text for those who cannot see it</summary>
        <p>${card.alternative}</p>
      </details>
      <div class="buttons">
        <button type="button" ?disabled=${!picture} @click=${actions.savePicture}>Save the picture</button>
        ${picture ? shareButton({ files: [picture.file] }, actions) : nothing}
        <button type="button" @click=${() => actions.copy("Text for the picture", card.alternative)}>Copy its text</button>
      </div>
    </section>`;
}

const files = (actions: ShareActions): TemplateResult => html`
  <section class="card" aria-labelledby="share-files">
    <h3 id="share-files">Print and keep</h3>
    <p class="hint">
      The CSV file opens in any spreadsheet and reads back here as it was. The JSON file is the whole report, for programs:
      <a href="./report.schema.json" target="_blank" rel="noopener">its schema (opens beside this page)</a>.
    </p>
    <div class="buttons">
      <button type="button" @click=${actions.print}>Print</button>
      <button type="button" @click=${actions.saveCsv}>Save the shots (CSV)</button>
      <button type="button" @click=${actions.saveReport}>Save the report (JSON)</button>
    </div>
  </section>`;

const segments = <T extends string>(
  name: string,
  title: string,
  options: readonly { value: T; label: string }[],
  now: T,
  choose: (value: T) => void,
): TemplateResult => html`
  <fieldset>
    <legend class="visually-hidden">${title}</legend>
    <div class="segments">
      ${options.map(
        ({ value, label }) => html`
          <label class="segment">
            <input type="radio" name=${name} value=${value} .checked=${value === now} @change=${() => choose(value)} />
            <span>${label}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;
