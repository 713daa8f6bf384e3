/**
 * Part 5, open: keeps how many shots are shown and how they were chosen, and asks the core after every move.
 *
 * Loaded when its door is opened (`views/luck-door.ts`); a closed door asks nothing.
 */
import "./luck.css";
import "../styles/slider.css";
import type { PropertyValues, TemplateResult } from "lit";
import type { Luck, LuckRequest, Measure, Question, Refusal, Session, Showing } from "../core/engine.js";
import { asRefusal } from "../core/refusal.js";
import { BehindDoor } from "../pieces/behind-door.js";
import english from "../text/en/luck.ftl?raw";
import { learn } from "../text/say.js";
import { luckView } from "./view.js";

learn(english);

export class StraightAnswerLuck extends BehindDoor {
  static override properties = {
    session: { attribute: false },
    question: { attribute: false },
    measures: { attribute: false },
    ask: { attribute: false },
  };
  declare session: Session;
  declare question: Question;
  declare measures: readonly Measure[];
  declare ask: (request: LuckRequest) => Promise<Luck>;

  /** Null leaves the number to the core. */
  #shown: number | null = null;
  #showing: Showing = "in_a_row";
  #dealt = 0;
  #luck: Luck | null = null;
  #trouble: Refusal | null = null;
  #turn = 0;
  /** Whether what is asked has changed since it was last asked. */
  #stale = true;

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("session") || changed.has("question")) this.#stale = true;
    if (this.#stale && this.isOpen) void this.#refresh();
  }

  override render(): TemplateResult {
    return luckView(
      {
        luck: this.#luck,
        trouble: this.#trouble,
        showing: this.#showing,
        dealt: this.#dealt,
        session: this.session,
        measures: this.measures,
      },
      {
        show: (shown) => this.#change(() => (this.#shown = shown)),
        choose: (showing) => this.#change(() => (this.#showing = showing)),
        deal: () => {
          this.#dealt += 1;
          this.requestUpdate();
        },
      },
    );
  }

  #change(apply: () => void): void {
    apply();
    this.#stale = true;
    this.requestUpdate();
  }

  /** Asks the core; an outcome overtaken by a newer wish is dropped. */
  async #refresh(): Promise<void> {
    this.#stale = false;
    const turn = ++this.#turn;
    const { session, question } = this;
    try {
      const shown = this.#shown === null ? {} : { shown: this.#shown };
      const luck = await this.ask({ session, question, showing: this.#showing, ...shown });
      if (turn === this.#turn) this.#settle(luck, null);
    } catch (thrown) {
      if (turn === this.#turn) this.#refused(asRefusal(thrown));
    }
  }

  #settle(luck: Luck | null, trouble: Refusal | null): void {
    // With other shots, or another number of them, nothing has been dealt yet.
    if (luck?.deals.join() !== this.#luck?.deals.join()) this.#dealt = 0;
    this.#luck = luck;
    this.#trouble = trouble;
    this.requestUpdate();
  }

  /** Another pair may have fewer shots than were shown of the last one: then the number is the core's again. */
  #refused(refusal: Refusal): void {
    if (refusal.place === "shown" && this.#shown !== null) this.#change(() => (this.#shown = null));
    else this.#settle(null, refusal);
  }
}

customElements.define("straight-answer-luck", StraightAnswerLuck);
