/** What only the golfer knows, asked where it matters: one tap answers it. */
import { html, type TemplateResult } from "lit";
import type { Ask } from "../core/engine.js";
import type { Actions } from "../state/actions.js";
import { say } from "../text/say.js";

interface Tap {
  text: string;
  does: () => void;
}

/** `confirmed`: shots that were said to be right. */
export function asked(ask: Ask, confirmed: readonly number[], actions: Actions): TemplateResult {
  if (ask.about === "shot" && confirmed.includes(ask.shot))
    return html`<p class="hint">${say("asks-shot-confirmed")}</p>`;
  return html`
    <div class="asks buttons">
      ${taps(ask, actions).map(({ text, does }) => html`<button type="button" @click=${does}>${text}</button>`)}
    </div>`;
}

function taps(ask: Ask, actions: Actions): Tap[] {
  switch (ask.about) {
    case "number_of_shots":
      return [
        { text: say("asks-was-fixed"), does: () => actions.ask({ stopping: "fixed" }) },
        { text: say("asks-was-not-fixed"), does: () => actions.ask({ stopping: "not_fixed" }) },
      ];
    case "order":
      return [
        { text: say("asks-in-turn"), does: () => actions.hint({ order: "interleaved" }) },
        { text: say("asks-one-after-the-other"), does: () => actions.hint({ order: "blocked" }) },
      ];
    case "shot":
      return [
        { text: say("asks-shot-right"), does: () => actions.confirm(ask.shot) },
        { text: say("asks-shot-slip"), does: () => actions.leaveOut(ask.shot, say("reason-slip")) },
      ];
  }
}
