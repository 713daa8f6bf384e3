/** The one line of a bet below the answer. Loaded after the answer, with what stands below it; what cannot be bet on has none. */
import "./line.css";
import { html, nothing, type TemplateResult } from "lit";
import { BetElement } from "./element.js";

export class StraightAnswerBetLine extends BetElement {
  protected override get isSeen(): boolean {
    return true;
  }

  override render(): TemplateResult | typeof nothing {
    const line = this.bet?.words.line;
    return line ? html`<p class="bet-line">${line}</p>` : nothing;
  }
}

customElements.define("straight-answer-bet-line", StraightAnswerBetLine);
