/** What each look that a plan holds costs: how sure the answer must be there. */
import { html, type TemplateResult } from "lit";
import { number } from "../../format.js";
import type { Plan } from "../../planner.js";

/** A look as early as this can only be passed by a difference that nobody hits. */
const SUREST = 0.9999;

export const looksView = ({ looks }: Plan): TemplateResult => html`
  <details class="fair-looks">
    <summary>What each look costs</summary>
    <p class="hint">An early look must be surer than the last, so that all of them together are wrong no more often than a single one.</p>
    <table>
      <thead><tr><th scope="col">After round</th><th scope="col">How sure it must be</th></tr></thead>
      <tbody>
        ${looks.map(
          ({ after_round, level }) => html`
            <tr><th scope="row">${after_round}</th><td>${level > SUREST ? "more than 99.99 %" : `${number(level * 100, 2)} %`}</td></tr>`,
        )}
      </tbody>
    </table>
  </details>`;
