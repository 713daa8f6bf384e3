/** What would you bet, open: asks the core once it can be seen. Loaded when its door is opened. */
import "./bet.css";
import type { TemplateResult } from "lit";
import type { Differs } from "../core/engine.js";
import english from "../text/en/bet.ftl?raw";
import { learn } from "../text/say.js";
import { BetElement } from "./element.js";
import { betView } from "./view.js";

learn(english);

export class StraightAnswerBet extends BetElement {
  static override properties = { ...BetElement.properties, choose: { attribute: false } };
  /** Takes what differs into the question: it is asked again, and its link knows it. */
  declare choose: (patch: { differs: Differs | undefined }) => void;

  protected override get isSeen(): boolean {
    return this.isOpen;
  }

  override render(): TemplateResult {
    return betView(this.bet, this.trouble, this.question?.differs ?? null, (differs) => this.choose({ differs }));
  }
}

customElements.define("straight-answer-bet", StraightAnswerBet);
