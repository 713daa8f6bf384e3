/**
 * A part of the page that asks the core once it is open, and again after every change.
 *
 * Lives inside a `details`: closed it asks nothing. One question is on its way at a time; what was asked meanwhile is
 * asked once, as it then stands, so that dragging never queues up.
 */
import { html, type PropertyValues, type TemplateResult } from "lit";
import type { Refusal } from "../../pkg/straight_answer.js";
import type { Session } from "../core/engine.js";
import { type Flights, flights, type Hand } from "../core/flights.js";
import { asRefusal } from "../core/refusal.js";
import { hand, onHand, setHand } from "../state/handedness.js";
import { say } from "../text/say.js";
import { BehindDoor } from "./behind-door.js";
import { trouble } from "./trouble.js";

export abstract class OpenedPart<Answer> extends BehindDoor {
  static override properties = {
    session: { attribute: false },
    baseline: { attribute: false },
    candidate: { attribute: false },
  };
  declare session: Session;
  declare baseline: number;
  declare candidate: number | null;

  protected answer: Answer | null = null;
  #trouble: Refusal | null = null;
  #isStale = true;
  #isAsking = false;
  #forgetHand: (() => void) | null = null;

  /** Asks what this part shows. */
  protected abstract ask(from: Flights): Promise<Answer>;
  /** Shows it. */
  protected abstract show(answer: Answer): TemplateResult;
  /** Says why it cannot; a part with choices of its own keeps them in reach. */
  protected showTrouble(refusal: Refusal): TemplateResult {
    return html`<div class="card">${trouble(refusal)}</div>`;
  }

  /** Another session or another pair: what was chosen for the last one may not fit. */
  protected forget(): void {}

  protected get hand(): Hand | undefined {
    return hand() ?? undefined;
  }

  protected readonly chooseHand = (chosen: Hand): void => setHand(chosen);

  override connectedCallback(): void {
    super.connectedCallback();
    this.#forgetHand = onHand(() => this.change());
  }

  override disconnectedCallback(): void {
    this.#forgetHand?.();
    super.disconnectedCallback();
  }

  /** Something that is asked has changed. */
  protected change(apply: () => void = () => {}): void {
    apply();
    this.#isStale = true;
    this.requestUpdate();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("question")) this.#isStale = true;
    if (changed.has("session") || changed.has("baseline") || changed.has("candidate")) {
      this.#isStale = true;
      this.forget();
    }
    if (this.#isStale && !this.#isAsking && this.isOpen) void this.#refresh();
  }

  override render(): TemplateResult {
    if (this.#trouble) return this.showTrouble(this.#trouble);
    return this.answer ? this.show(this.answer) : html`<p class="hint">${say("working")}</p>`;
  }

  async #refresh(): Promise<void> {
    this.#isStale = false;
    this.#isAsking = true;
    try {
      this.answer = await this.ask(await flights());
      this.#trouble = null;
    } catch (thrown) {
      this.#trouble = { ...asRefusal(thrown), place: "" };
    }
    this.#isAsking = false;
    this.requestUpdate();
  }
}
