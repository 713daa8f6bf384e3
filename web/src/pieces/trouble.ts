/** What went wrong, where, and what to do about it. */
import { html, nothing, type TemplateResult } from "lit";
import type { Refusal } from "../core/engine.js";
import { foreign } from "./pieces.js";

export const trouble = (refusal: Refusal | null): TemplateResult | typeof nothing =>
  refusal
    ? html`
        <div class="notice trouble" role="alert">
          <p><strong>${refusal.message}</strong> ${refusal.place ? html`<span class="place">${foreign(refusal.place)}</span>` : nothing}</p>
          <p>${refusal.remedy}</p>
        </div>`
    : nothing;
