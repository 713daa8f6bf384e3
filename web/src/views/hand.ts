/** Which hand the golfer plays with: it names the side a ball curves to. */
import { html, type TemplateResult } from "lit";
import type { Hand } from "../flights.js";

const HANDS: readonly { value: Hand; label: string }[] = [
  { value: "right", label: "Right-handed" },
  { value: "left", label: "Left-handed" },
];

export const handChoice = (part: string, hand: Hand | undefined, choose: (hand: Hand) => void): TemplateResult => html`
  <fieldset class="hand">
    <legend>You play</legend>
    <div class="segments">
      ${HANDS.map(
        ({ value, label }) => html`
          <label class="segment">
            <input type="radio" name="hand-${part}" value=${value} .checked=${value === hand} @change=${() => choose(value)} />
            <span>${label}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;
