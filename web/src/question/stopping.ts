/** Whether the number of shots was fixed before: it decides how convincing the shots must be. */
import { html, nothing, type TemplateResult } from "lit";
import type { Stopping, StoppingWord } from "../core/engine.js";
import type { Actions } from "../state/actions.js";
import { say } from "../text/say.js";

type Kind = StoppingWord | "planned";

const KINDS: readonly Kind[] = ["fixed", "not_fixed", "unknown", "planned"];

/** A plan to begin with: five rounds is the short test the answers speak of. */
const PLAN: Stopping = { planned_rounds: 5, looked_after: 5 };
const MOST_ROUNDS = 20;

export const stopping = (now: Stopping, actions: Actions): TemplateResult => html`
  <fieldset>
    <legend>${say("stopping")}</legend>
    ${KINDS.map(
      (kind) => html`
        <label class="option">
          <input type="radio" name="stopping" value=${kind} .checked=${kind === kindOf(now)}
            @change=${() => actions.ask({ stopping: kind === "planned" ? PLAN : kind })} />
          <span>${say(`stopping-${kind}`)}</span>
        </label>`,
    )}
    ${typeof now === "object" ? plan(now, actions) : nothing}
  </fieldset>`;

const kindOf = (stopping: Stopping): Kind => (typeof stopping === "object" ? "planned" : stopping);

function plan(now: Exclude<Stopping, string>, actions: Actions): TemplateResult {
  const looked = typeof now.looked_after === "number" ? now.looked_after : Math.max(0, ...now.looked_after);
  return html`
    <div class="plan">
      ${rounds(say("rounds-planned"), "planned-rounds", now.planned_rounds, (value) =>
        actions.ask({ stopping: { planned_rounds: value, looked_after: Math.min(looked, value) } }),
      )}
      ${rounds(say("looked-after"), "looked-after", looked, (value) =>
        actions.ask({ stopping: { ...now, looked_after: Math.min(value, now.planned_rounds) } }),
      )}
    </div>`;
}

const rounds = (label: string, id: string, value: number, onChange: (value: number) => void): TemplateResult => html`
  <label class="row" for=${id}>
    <span>${label}</span>
    <select id=${id} @change=${(event: Event) => onChange(Number((event.target as HTMLSelectElement).value))}>
      ${Array.from({ length: MOST_ROUNDS - 1 }, (_, index) => index + 2).map(
        (n) => html`<option value=${n} ?selected=${n === value} .selected=${n === value}>${n}</option>`,
      )}
    </select>
  </label>`;
