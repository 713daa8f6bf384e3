/** The typical shot beside the average, asked of the core once it can be seen; an outcome overtaken by a newer question is dropped. */
import { html, nothing, type PropertyValues, type TemplateResult } from "lit";
import type { Question, Session, Typical } from "../core/engine.js";
import { engineOfPage } from "../core/remote.js";
import { LightElement } from "../pieces/light-element.js";
import { say } from "../text/say.js";

export class StraightAnswerTypical extends LightElement {
  static override properties = { session: { attribute: false }, question: { attribute: false } };
  declare session: Session;
  declare question: Question;

  #typical: Typical | null = null;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("session") || changed.has("question")) void this.#refresh(this.session, this.question);
  }

  override render(): TemplateResult | typeof nothing {
    if (!this.#typical) return nothing;
    const { headline, beside, mishits, note } = this.#typical.words;
    return html`
      <h5>${say("numbers-typical")}</h5>
      ${[headline, beside, mishits].map((text) => (text ? html`<p>${text}</p>` : nothing))}
      <p class="hint">${note}</p>`;
  }

  /** Without it the numbers stand as they are. */
  async #refresh(session: Session, question: Question): Promise<void> {
    const typical = await engineOfPage()
      .then((engine) => engine.typical({ session, question }))
      .catch(() => null);
    if (this.session !== session || this.question !== question) return;
    this.#typical = typical;
    this.requestUpdate();
  }
}

customElements.define("straight-answer-typical", StraightAnswerTypical);
