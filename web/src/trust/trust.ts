/** Part 4: whether this session can be trusted, finding by finding, in the words and the order of the report. */
import { html, nothing, type TemplateResult } from "lit";
import type { Report, TrustFinding } from "../core/engine.js";
import { whenOpen } from "../pieces/when-open.js";
import { say } from "../text/say.js";

type Weight = TrustFinding["weight"];

/** Each weight by a sign and a word, so that no color is needed to tell them apart. */
const SIGNS: Record<Weight, string> = { serious: "!", note: "i", good: "✓" };

export const trust = ({ trust: findings }: Report): TemplateResult => html`
  <details class="card trust" ?open=${count(findings, "serious") > 0}>
    <summary><span class=${count(findings, "serious") > 0 ? "alert" : ""}>${inShort(findings)}</span></summary>
    ${whenOpen(
      () => html`<ul class="findings">${findings.map(finding)}</ul>
      <p class="hint">${say("trust-setup")}</p>`,
    )}
  </details>`;

const finding = ({ weight, what, why, next }: TrustFinding): TemplateResult => html`
  <li class="finding ${weight}">
    <p class="weight"><span class="sign" aria-hidden="true">${SIGNS[weight]}</span>${say(`weight-${weight}`)}</p>
    <h3>${what}</h3>
    ${why ? html`<p>${why}</p>` : nothing}
    ${next ? html`<p class="do">${next}</p>` : nothing}
  </li>`;

const count = (findings: readonly TrustFinding[], weight: Weight): number =>
  findings.filter((one) => one.weight === weight).length;

/** What the closed panel says: how many findings can turn the answer around, and how many others there are. */
function inShort(findings: readonly TrustFinding[]): string {
  const [serious, notes, good] = (["serious", "note", "good"] as const).map((weight) => count(findings, weight));
  const parts = [
    serious ? say("n-serious", { count: serious }) : say("no-serious"),
    notes ? say("n-notes", { count: notes }) : "",
    good ? say("n-good", { count: good }) : "",
  ];
  return parts.filter(Boolean).join(", ");
}
