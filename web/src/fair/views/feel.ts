/** What the golfer felt, asked once before any number is shown. */
import { html, type TemplateResult } from "lit";
import type { OwnSay, Progress } from "../../planner.js";
import { build } from "../../views/pieces.js";
import type { FairActions } from "../state.js";

const QUESTIONS: readonly { key: keyof OwnSay; label: string }[] = [
  { key: "straighter", label: "Which felt straighter?" },
  { key: "longer", label: "Which felt longer?" },
  { key: "easier", label: "Which felt easier to hit?" },
  { key: "look", label: "Whose look do you like best?" },
  { key: "sound", label: "Whose sound do you like best?" },
];

export function feelView({ session }: Progress, actions: FairActions): TemplateResult {
  const said = (event: Event) => {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    const of = (key: keyof OwnSay) => {
      const value = form.get(key);
      return typeof value === "string" && value !== "" ? Number(value) : null;
    };
    actions.say({ straighter: of("straighter"), longer: of("longer"), easier: of("easier"), look: of("look"), sound: of("sound") });
  };
  return html`
    <form class="card fair-feel" @submit=${said}>
      <h3>First, what did you feel?</h3>
      <p class="hint">Asked once, before any number is shown. Leave open what you cannot say.</p>
      ${QUESTIONS.map(
        ({ key, label }) => html`
          <fieldset>
            <legend>${label}</legend>
            <div class="segments">
              ${session.builds.map(
                ({ name }, at) => html`<label class="segment"><input type="radio" name=${key} value=${at} /><span>${build(at, name)}</span></label>`,
              )}
              <label class="segment"><input type="radio" name=${key} value="" checked /><span>Cannot say</span></label>
            </div>
          </fieldset>`,
      )}
      <div class="buttons">
        <button type="submit" class="primary">Now show the answer</button>
        <button type="button" @click=${actions.goOn}>Back to the test</button>
      </div>
    </form>`;
}
