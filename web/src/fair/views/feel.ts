/** What the golfer felt, asked once before any number is shown. */
import { html, type TemplateResult } from "lit";
import type { OwnSay, Progress } from "../../core/planner.js";
import { build } from "../../pieces/pieces.js";
import { say } from "../../text/say.js";
import type { FairActions } from "../state.js";

const QUESTIONS: readonly (keyof OwnSay)[] = ["straighter", "longer", "easier", "look", "sound"];

export function feelView({ session }: Progress, actions: FairActions): TemplateResult {
  const said = (event: Event) => {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    const of = (key: keyof OwnSay) => {
      const value = form.get(key);
      return typeof value === "string" && value !== "" ? Number(value) : null;
    };
    actions.say({
      straighter: of("straighter"),
      longer: of("longer"),
      easier: of("easier"),
      look: of("look"),
      sound: of("sound"),
    });
  };
  return html`
    <form class="card fair-feel" @submit=${said}>
      <h3>${say("feel-title")}</h3>
      <p class="hint">${say("feel-help")}</p>
      ${QUESTIONS.map(
        (key) => html`
          <fieldset>
            <legend>${say(`feel-${key}`)}</legend>
            <div class="segments">
              ${session.builds.map(
                ({ name }, at) =>
                  html`<label class="segment"><input type="radio" name=${key} value=${at} /><span>${build(at, name)}</span></label>`,
              )}
              <label class="segment"><input type="radio" name=${key} value="" checked /><span>${say("feel-cannot-say")}</span></label>
            </div>
          </fieldset>`,
      )}
      <div class="buttons">
        <button type="submit" class="primary">${say("feel-show")}</button>
        <button type="button" @click=${actions.goOn}>${say("feel-back")}</button>
      </div>
    </form>`;
}
