/** Before and after: where the change was, what it and the club did, each with its interval. */
import { html, type TemplateResult } from "lit";
import { drawParts } from "../chart/draw-parts.js";
import { partsGeometry, type PartRow } from "../chart/parts.js";
import type { Session } from "../engine.js";
import type { Effect, Second } from "../flights.js";
import { plain, signed, withUnit, type MeasureView } from "../format.js";

export interface SecondState {
  second: Second;
  session: Session;
  measure: MeasureView;
  /** The first shot after the change, from 1. */
  from: number;
  names: readonly [string, string];
}

export interface SecondActions {
  move: (from: number) => void;
  name: (which: 0 | 1, name: string) => void;
}

export function secondView({ second, measure, ...asked }: SecondState, actions: SecondActions): TemplateResult {
  const { words } = second;
  return html`
    <p class="said">${words.headline}</p>
    ${picture(second, measure)}
    <ul class="effects">${[second.build, second.condition, second.interaction].map((effect) => html`<li>${effect.words}</li>`)}</ul>
    <p class="hint">${words.detail} ${words.note}</p>
    ${controls(asked, actions)}`;
}

/** Where the change was and what it is called; shown as well when the core could not work with it. */
export const controls = ({ session, from, names }: Omit<SecondState, "second" | "measure">, actions: SecondActions): TemplateResult => html`
  <div class="change">
    <div class="change-at">
      <label for="change-at">First shot after the change</label>
      <output for="change-at">${plain(from)}</output>
      <input id="change-at" class="slider" type="range" min="2" max=${session.shots.length} step="1" .value=${String(from)}
        @input=${(event: Event) => actions.move((event.target as HTMLInputElement).valueAsNumber)} />
    </div>
    ${(["Called before it", "Called after it"] as const).map(
      (label, which) => html`
        <label class="change-name">
          <span>${label}</span>
          <input maxlength="24" autocomplete="off" .value=${names[which as 0 | 1]}
            @change=${(event: Event) => actions.name(which as 0 | 1, (event.target as HTMLInputElement).value)} />
        </label>`,
    )}
  </div>`;

function picture(second: Second, measure: MeasureView): TemplateResult {
  const row = (key: string, name: string, { value, range }: Effect): PartRow => ({ key, name, value, low: range.low, high: range.high, belongs: "both", inner: false });
  const rows = [
    row("build", "The club", second.build),
    row("condition", `${second.names[0]} to ${second.names[1]}`, second.condition),
    row("interaction", "The club, after against before", second.interaction),
  ];
  const value = (x: number) => withUnit(signed(x, measure.decimals), measure.unit);
  const alternative = `Bars for ${measure.name}. ${rows.map(({ name, value: x, low, high }) => `${name}: ${value(x)}, from ${value(low)} to ${value(high)}.`).join(" ")}`;
  return html`
    <figure class="picture">
      ${drawParts(partsGeometry(rows), { alternative, value, tick: (x) => signed(x, measure.decimals) })}
      <figcaption>The bar is what these shots show, the thin line where the truth may lie.</figcaption>
    </figure>`;
}
