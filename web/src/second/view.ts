/** Before and after: where the change was, what it and the club did, each with its interval. */
import { html, nothing, type TemplateResult } from "lit";
import { drawParts } from "../chart/draw-parts.js";
import { type PartRow, partsGeometry } from "../chart/parts.js";
import { textSize } from "../chart/text-size.js";
import type { Effect, Second, SecondFactor } from "../core/flights.js";
import { gapOf, type MeasureView, plain, signed } from "../format/values.js";
import { choice, foreign } from "../pieces/pieces.js";
import { say } from "../text/say.js";

/** What tells the two sides apart. */
export interface Sides {
  /** The session's own column for it. */
  column: SecondFactor | null;
  /** By the first shot after the change instead. */
  isByShot: boolean;
  /** Which two values of the column. */
  values: readonly [number, number];
  /** The first shot after the change, from 1, and what the sides are called. */
  from: number;
  names: readonly [string, string];
  shots: number;
}

export interface SecondActions {
  move: (from: number) => void;
  name: (which: 0 | 1, name: string) => void;
  byShot: (isByShot: boolean) => void;
  take: (which: 0 | 1, value: number) => void;
}

export function secondView(second: Second, measure: MeasureView, sides: Sides, actions: SecondActions): TemplateResult {
  const { words } = second;
  return html`
    <p class="said">${words.headline}</p>
    ${picture(second, measure)}
    <ul class="effects">${[second.build, second.condition, second.interaction].map((effect) => html`<li>${effect.words}</li>`)}</ul>
    <p class="hint">${words.detail} ${words.note}</p>
    ${controls(sides, actions)}`;
}

/** What tells the sides apart and what they are called; shown as well when the core could not work with it. */
export const controls = (sides: Sides, actions: SecondActions): TemplateResult => html`
  ${sides.column ? kind(sides.column, sides.isByShot, actions) : nothing}
  ${sides.isByShot ? byShot(sides, actions) : sides.column && sides.column.values.length > 2 ? byValue(sides.column, sides.values, actions) : nothing}`;

const kind = ({ name }: SecondFactor, isByShot: boolean, actions: SecondActions): TemplateResult => html`
  <fieldset class="change-kind">
    <legend>${say("change-kind")}</legend>
    <div class="segments">
      ${[false, true].map(
        (value) => html`
          <label class="segment">
            <input type="radio" name="change-kind" .checked=${value === isByShot} @change=${() => actions.byShot(value)} />
            <span>${value ? say("change-by-shot") : foreign(name || say("change-as-in-file"))}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;

const byValue = (
  { values }: SecondFactor,
  chosen: readonly [number, number],
  actions: SecondActions,
): TemplateResult => html`
  <div class="change">
    ${([say("change-from"), say("change-to")] as const).map(
      (label, which) => html`
        <label class="change-name">
          <span>${label}</span>
          ${choice(
            label,
            values.map((value, at) => ({ value: String(at), label: value })),
            String(chosen[which as 0 | 1]),
            (value) => actions.take(which as 0 | 1, Number(value)),
          )}
        </label>`,
    )}
  </div>`;

const byShot = ({ from, names, shots }: Sides, actions: SecondActions): TemplateResult => html`
  <div class="change">
    <div class="change-at">
      <label for="change-at">${say("change-first")}</label>
      <output for="change-at">${plain(from)}</output>
      <input id="change-at" class="slider" type="range" min="2" max=${shots} step="1" .value=${String(from)}
        @input=${(event: Event) => actions.move((event.target as HTMLInputElement).valueAsNumber)} />
    </div>
    ${([say("change-called-before"), say("change-called-after")] as const).map(
      (label, which) => html`
        <label class="change-name">
          <span>${label}</span>
          <input maxlength="24" autocomplete="off" .value=${names[which as 0 | 1]}
            @change=${(event: Event) => actions.name(which as 0 | 1, (event.target as HTMLInputElement).value)} />
        </label>`,
    )}
  </div>`;

function picture(second: Second, measure: MeasureView): TemplateResult | typeof nothing {
  const all: [string, string, Effect][] = [
    ["build", say("change-club"), second.build],
    ["condition", say("change-condition", { before: second.names[0], after: second.names[1] }), second.condition],
    ["interaction", say("change-interaction"), second.interaction],
  ];
  // Ends that say next to nothing are not drawn as if they said something.
  const effects = all.filter(([, , effect]) => !effect.says_next_to_nothing);
  if (effects.length === 0) return nothing;
  const rows = effects.map(
    ([
      key,
      name,
      {
        value,
        range: { low, high },
      },
    ]): PartRow => ({
      ...{ key, name, value, low, high },
      belongs: "both",
      inner: false,
    }),
  );
  const value = (x: number) => gapOf(x, measure);
  const each = effects.map(([, name, { printed }]) => say("change-bar", { name, ...printed }));
  const alternative = say("change-bars", { measure: measure.name, each: each.join(" ") });
  return html`
    <figure class="picture">
      ${drawParts(partsGeometry(rows, measure.scale, textSize()), { alternative, value, tick: (x) => signed(x * measure.scale, measure.decimals) })}
      <figcaption>${say("change-caption")}</figcaption>
    </figure>`;
}
