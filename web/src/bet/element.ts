/** An element that shows the bet on what is asked; an outcome overtaken by a newer question is dropped. */
import type { PropertyValues } from "lit";
import type { Bet, Question, Refusal, Session } from "../core/engine.js";
import { asRefusal } from "../core/refusal.js";
import { BehindDoor } from "../pieces/behind-door.js";
import { betOn } from "./asked.js";

export abstract class BetElement extends BehindDoor {
  static override properties = { session: { attribute: false }, question: { attribute: false } };
  declare session: Session;
  declare question: Question;

  protected bet: Bet | null = null;
  protected trouble: Refusal | null = null;
  #asked: Question | null = null;
  #of: Session | null = null;

  /** Whether anybody can see it. */
  protected abstract get isSeen(): boolean;

  protected override willUpdate(_: PropertyValues): void {
    const isStale = this.#asked !== this.question || this.#of !== this.session;
    if (isStale && this.isSeen && this.session) void this.#refresh(this.session, this.question);
  }

  async #refresh(session: Session, question: Question): Promise<void> {
    this.#asked = question;
    this.#of = session;
    const outcome = await betOn(session, question).then(
      (bet) => ({ bet, trouble: null }),
      (thrown: unknown) => ({ bet: null, trouble: asRefusal(thrown) }),
    );
    if (this.#asked !== question || this.#of !== session) return;
    this.bet = outcome.bet;
    this.trouble = outcome.trouble;
    this.requestUpdate();
  }
}
