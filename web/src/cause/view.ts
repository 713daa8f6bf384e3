/** Part 7: the gap in carry part by part, whose doing each is, and what was not measured. */
import { html, nothing, type TemplateResult } from "lit";
import { drawParts } from "../chart/draw-parts.js";
import { type PartRow, partsGeometry } from "../chart/parts.js";
import { textSize } from "../chart/text-size.js";
import type { Session } from "../core/engine.js";
import type { Belongs, Cause, Hand, Part } from "../core/flights.js";
import { signed, withUnit } from "../format/values.js";
import { handChoice } from "../pieces/hand-choice.js";
import { build } from "../pieces/pieces.js";
import { say, sayAround } from "../text/say.js";
import { lengthUnit, shownIn } from "../text/units.js";

export function causeView(
  cause: Cause,
  session: Session,
  hand: Hand | undefined,
  chooseHand: (hand: Hand) => void,
): TemplateResult {
  const { words } = cause;
  const name = (index: number) => session.builds[index]?.name ?? "";
  const asksHand = cause.swing.some(({ measure }) => measure === "club_path");
  return html`
    <div class="card">
      <p class="said">${words.headline}</p>
      <p>${words.detail}</p>
      ${words.next ? html`<p class="next">${words.next}</p>` : nothing}
      ${picture(cause, name)}
      <div class="part-list">
        <h3>${say("cause-rests")}</h3>
        <dl>
          ${[...cause.parts, ...cause.ball_speed].map(
            (part) =>
              html`<div><dt>${part.name} ${part.belongs === "unexplained" ? nothing : html`<small>${say(`belongs-${part.belongs}`).toLowerCase()}</small>`}</dt><dd>${part.words}</dd></div>`,
          )}
        </dl>
      </div>
      ${
        cause.swing.length > 0
          ? html`
            <div class="part-list">
              <h3>${say("cause-swing")}</h3>
              <ul>${cause.swing.map(({ words: said }) => html`<li>${said}</li>`)}</ul>
            </div>`
          : nothing
      }
      ${
        cause.spin.length > 0
          ? html`
            <div class="part-list">
              <h3>${say("cause-spin")}</h3>
              <ul>${cause.spin.map(({ words: said }) => html`<li>${said}</li>`)}</ul>
              <p class="hint">${say("cause-spin-note")}</p>
            </div>`
          : nothing
      }
      ${
        words.unmeasured.length > 0
          ? html`
            <div class="part-list">
              <h3>${say("cause-unmeasured")}</h3>
              <ul>${words.unmeasured.map((said) => html`<li>${said}</li>`)}</ul>
            </div>`
          : nothing
      }
      ${asksHand ? handChoice("cause", hand, chooseHand) : nothing}
      <p class="hint">${words.note}</p>
    </div>`;
}

function picture(cause: Cause, name: (index: number) => string): TemplateResult {
  const { unit, scale } = shownIn("yd");
  const whole = (value: number) => signed(value * scale, 0);
  const geometry = partsGeometry(rows(cause), scale, textSize());
  const belongs = [...new Set(rows(cause).map((row) => row.belongs))].filter((one) => one !== "gap") as Belongs[];
  return html`
    <figure class="picture">
      <div class="sides" aria-hidden="true">
        <span>← ${sayAround("cause-shorter", { club: build(cause.candidate, name(cause.candidate)) })}</span>
        <span>${say("cause-longer")} →</span>
      </div>
      ${drawParts(geometry, { alternative: cause.words.alternative, value: (yards) => withUnit(whole(yards), unit), tick: whole })}
      <ul class="legend">
        ${belongs.map((one) => html`<li><span class="swatch ${one}" aria-hidden="true"></span>${say(`belongs-${one}`)}</li>`)}
      </ul>
      <figcaption>${say("cause-caption", { unit: lengthUnit() })}</figcaption>
    </figure>`;
}

function rows(cause: Cause): PartRow[] {
  const row = ({ factor, name, yards, belongs }: Part, inner: boolean): PartRow => ({
    key: factor,
    name: inner ? say("part-inner", { name }) : name,
    ...yards,
    belongs,
    inner,
  });
  return [
    ...cause.parts.flatMap((part) => [
      row(part, false),
      ...(part.factor === "ball_speed" ? cause.ball_speed.map((inner) => row(inner, true)) : []),
    ]),
    {
      key: "gap",
      name: say("cause-gap"),
      value: cause.gap,
      low: cause.gap,
      high: cause.gap,
      belongs: "gap",
      inner: false,
    },
  ];
}
