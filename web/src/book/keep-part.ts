/** Keep, open: of whom and when, and nothing is on the device before it is pressed. */
import "./book.css";
import { html, nothing, type PropertyValues, type TemplateResult } from "lit";
import type { Question, Session } from "../core/engine.js";
import { BehindDoor } from "../pieces/behind-door.js";
import english from "../text/en/book.ftl?raw";
import englishKept from "../text/en/kept.ftl?raw";
import { learn, say } from "../text/say.js";
import { openBook, openIfKept } from "./book.js";
import { NewerVersion } from "./device.js";
import { askToPersist, keepSession, people, today, type Whose } from "./shelf.js";
import { dayOf } from "./words.js";

declare const APP_VERSION: string;

learn(english);
learn(englishKept);

/** What became of the wish to keep it. */
type Done = { whose: Whose; where: "device" | "memory"; isPersistent: boolean | null } | "full" | "newer";

export class StraightAnswerKeep extends BehindDoor {
  static override properties = {
    session: { attribute: false },
    question: { attribute: false },
    line: { attribute: false },
    writeCsv: { attribute: false },
    kept: { attribute: false },
  };
  declare session: Session;
  declare question: Question;
  declare line: string;
  declare writeCsv: (session: Session) => Promise<string>;
  /** Told of whom the shots are. */
  declare kept: (session: Session, name: string) => void;

  #whose: Whose = { name: "", date: today(), place: "", note: "" };
  #names: readonly string[] = [];
  #done: Done | null = null;
  #isKeeping = false;
  /** The record of these shots: said anew of whom they are, they are kept there. */
  #record: string | undefined;
  #isAsked = false;

  protected override willUpdate(changed: PropertyValues): void {
    // Other shots, or another answer to them: it is not kept yet.
    if (changed.has("session") || changed.has("line")) this.#done = null;
    if (changed.has("session")) this.#record = undefined;
    if (!this.isOpen || this.#isAsked) return;
    this.#isAsked = true;
    void openIfKept()
      .then(async (book) => book && people(book))
      .then((known) => {
        this.#names = (known ?? []).map(({ data }) => data.name);
        this.requestUpdate();
      })
      .catch(() => undefined);
  }

  override render(): TemplateResult {
    const done = this.#done;
    return html`
      <div class="card book-keep">
        <form class="book-form" @submit=${this.#keep}>
          ${this.#field("name", say("book-who"))}
          ${this.#field("date", say("book-date"), "date")}
          ${this.#field("place", say("book-place"))}
          ${this.#field("note", say("book-note"))}
          <datalist id="keep-names">${this.#names.map((name) => html`<option value=${name}></option>`)}</datalist>
          <div class="buttons"><button type="submit" class="primary" ?disabled=${this.#isKeeping || (done !== null && typeof done === "object")}>${say("keep-button")}</button></div>
        </form>
        <div role="status">${done === null ? html`<p class="hint">${say("keep-help")}</p>` : this.#said(done)}</div>
      </div>`;
  }

  #said(done: Done): TemplateResult {
    if (done === "full") return html`<p class="notice trouble">${say("keep-full")}</p>`;
    if (done === "newer") return html`<p class="notice trouble">${say("book-newer")}</p>`;
    const { name, date } = done.whose;
    const who = name.trim() === "" ? say("book-nobody") : name.trim();
    return html`
      <p class=${done.where === "device" ? "book-ok" : "notice"}>${done.where === "device" ? say("keep-done", { who, date: dayOf(date) }) : say("book-memory")}
        ${done.isPersistent === null ? nothing : say(done.isPersistent ? "kept-persistent" : "kept-not-persistent")}
        <a href="#book">${say("keep-open-book")}</a></p>`;
  }

  #field(of: keyof Whose, name: string, type = "text"): TemplateResult {
    return html`
      <label class="row"><span>${name}</span>
        <input id="keep-${of}" type=${type} autocomplete="off" maxlength=${of === "note" ? 1000 : 80} .value=${this.#whose[of]}
          list=${of === "name" ? "keep-names" : nothing}
          @input=${(event: Event) => this.#say({ [of]: (event.target as HTMLInputElement).value })} /></label>`;
  }

  /** Said anew, it can be kept anew. */
  #say(patch: Partial<Whose>): void {
    this.#whose = { ...this.#whose, ...patch };
    if (this.#done) {
      this.#done = null;
      this.requestUpdate();
    }
  }

  readonly #keep = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (this.#isKeeping) return;
    this.#isKeeping = true;
    const whose = { ...this.#whose, date: this.#whose.date || today() };
    const { session, question, line } = this;
    try {
      const csv = await this.writeCsv(session);
      const book = await openBook();
      const shown = { session, csv, question, line, version: APP_VERSION };
      this.#record = (await keepSession(book, whose, shown, this.#record)).id;
      this.kept(session, whose.name);
      document.dispatchEvent(new Event("straight-answer-kept"));
      this.#done = { whose, where: book.store.where, isPersistent: await askToPersist(book) };
    } catch (thrown) {
      this.#done = thrown instanceof NewerVersion ? "newer" : "full";
    }
    this.#isKeeping = false;
    this.requestUpdate();
  };
}

customElements.define("straight-answer-keep", StraightAnswerKeep);
