/** In the place of the answer while a reading is in doubt: one question with a tap, and some shots of each club as they were read. */
import "./doubts.css";
import { html, nothing, type TemplateResult } from "lit";
import type { ReadingDoubt, Session } from "../core/engine.js";
import { build } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import type { Held } from "../state/doubts.js";
import english from "../text/en/doubts.ftl?raw";
import { learn, say } from "../text/say.js";

learn(english);

export const doubts = (held: readonly Held[], session: Session, actions: Actions): TemplateResult => {
  const { doubt, at } = held[0]!;
  return html`
    <article class="card answer doubt" aria-busy="false">
      <p class="asked">${say("doubt-first", { count: held.length })}</p>
      <p class="headline" id="answer-headline">${doubt.question}</p>
      ${doubt.lines.length > 0 ? html`<p class="hint">${say("doubt-lines", { count: doubt.lines.length, lines: doubt.lines.join(", ") })}</p>` : nothing}
      <div class="buttons">
        ${doubt.choices.map(
          ({ says, label }, index) =>
            html`<button type="button" class=${index === 0 ? "primary" : ""} @click=${() => actions.hint({ settled: { [doubt.key]: says } }, at)}>${label}</button>`,
        )}
      </div>
      ${doubt.samples.length > 0 ? samples(doubt, session) : nothing}
    </article>`;
};

const samples = ({ samples }: ReadingDoubt, session: Session): TemplateResult => html`
  <h3>${say("doubt-read-as")}</h3>
  <ul class="samples">
    ${samples.map(
      (sample) => html`
        <li>
          ${build(sample.build, session.builds[sample.build]?.name ?? "")}
          <ul>${sample.shots.map((shot) => html`<li>${shot}</li>`)}</ul>
        </li>`,
    )}
  </ul>`;
