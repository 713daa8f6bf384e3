/** Where they land, in the answer: the dots of the two clubs and one sentence, loaded after the answer with what stands below it. */
import "./hundreds.css";
import "./line.css";
import { html, nothing, type PropertyValues, type TemplateResult } from "lit";
import type { Question, Session } from "../core/engine.js";
import { flights, type Landing } from "../core/flights.js";
import { LightElement } from "../pieces/light-element.js";
import { openRoom } from "../pieces/open-room.js";
import { say } from "../text/say.js";
import { hundreds } from "./hundreds.js";

export class StraightAnswerLandingLine extends LightElement {
  static override properties = {
    session: { attribute: false },
    baseline: { attribute: false },
    candidate: { attribute: false },
    question: { attribute: false },
  };
  declare session: Session;
  declare baseline: number;
  declare candidate: number;
  declare question: Question;

  #landing: Landing | null = null;
  /** Only the last call may show what it found. */
  #calls = 0;

  protected override willUpdate(changed: PropertyValues): void {
    if (["session", "baseline", "candidate", "question"].some((one) => changed.has(one))) void this.#refresh();
  }

  override render(): TemplateResult | typeof nothing {
    const landing = this.#landing;
    if (!landing) return nothing;
    const two = landing.builds
      .filter(({ build }) => build === this.baseline || build === this.candidate)
      // As the sentence names them.
      .sort((one, other) => Number(other.build === this.candidate) - Number(one.build === this.candidate));
    return html`
      <button type="button" class="quiet-link" @click=${() => openRoom("landing")}>${say("door-landing")}</button>
      ${hundreds(two, (index) => this.session.builds[index]?.name ?? "")}
      <p class="landing-line">${landing.words.line}</p>`;
  }

  async #refresh(): Promise<void> {
    const call = ++this.#calls;
    const { session, baseline, candidate, question } = this;
    // Where nothing can be said, the answer stands without it: the room says why.
    const landing = await flights()
      .then((from) => from.landing({ session, baseline, candidate, stopping: question.stopping }))
      .catch(() => null);
    if (call !== this.#calls) return;
    this.#landing = landing;
    this.requestUpdate();
  }
}

customElements.define("straight-answer-landing-line", StraightAnswerLandingLine);
