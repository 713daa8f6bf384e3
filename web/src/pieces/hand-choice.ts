/** Which hand the golfer plays with: it names the side a ball curves to. */
import { html, type TemplateResult } from "lit";
import type { Hand } from "../core/flights.js";
import { say } from "../text/say.js";

const HANDS: readonly Hand[] = ["right", "left"];

export const handChoice = (part: string, hand: Hand | undefined, choose: (hand: Hand) => void): TemplateResult => html`
  <fieldset class="hand">
    <legend>${say("hand")}</legend>
    <div class="segments">
      ${HANDS.map(
        (value) => html`
          <label class="segment">
            <input type="radio" name="hand-${part}" value=${value} .checked=${value === hand} @change=${() => choose(value)} />
            <span>${say(`hand-${value}`)}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;
