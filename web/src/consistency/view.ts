/** Whether carry and launch belong together: what does not fit, with the unit mistakes that would explain it. */
import { html, nothing, type TemplateResult } from "lit";
import type { Consistency } from "../core/flights.js";
import { say } from "../text/say.js";

export function consistencyView({ words, doubts }: Consistency): TemplateResult {
  return html`
    <div class="card">
      <p class="said">${words.headline}</p>
      ${words.session ? html`<p>${words.session}</p>` : nothing}
      ${words.computed ? html`<p>${words.computed}</p>` : nothing}
      ${doubts.length > 0 ? html`<div class="part-list"><ul>${doubts.map(({ words: said }) => html`<li>${said}</li>`)}</ul></div>` : nothing}
      ${words.next ? html`<p>${words.next}</p>` : nothing}
      <p class="hint">${say("consistency-note")}</p>
    </div>`;
}
