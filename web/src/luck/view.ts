/** Part 5: the slider, the words as they come from the core, and the hill of what luck alone does. */
import { html, nothing, type TemplateResult } from "lit";
import { textSize } from "../chart/text-size.js";
import type { Luck, Measure, Refusal, Session, Showing } from "../core/engine.js";
import { chosenOf, gapOf, type MeasureView, measureView, plain, sides, signed, withUnit } from "../format/values.js";
import { build, marker } from "../pieces/pieces.js";
import { trouble as refused } from "../pieces/trouble.js";
import { say } from "../text/say.js";
import { drawLuck } from "./draw.js";
import { luckGeometry } from "./geometry.js";

export interface LuckState {
  luck: Luck | null;
  trouble: Refusal | null;
  showing: Showing;
  /** How many deals were watched. */
  dealt: number;
  session: Session;
  measures: readonly Measure[];
}

export interface LuckActions {
  show: (shown: number) => void;
  choose: (showing: Showing) => void;
  deal: () => void;
}

const SHOWINGS: readonly Showing[] = ["in_a_row", "picked"];

export function luckView(
  { luck, trouble, showing, dealt, session, measures }: LuckState,
  actions: LuckActions,
): TemplateResult {
  if (trouble) return html`<div class="card">${refused(trouble)}</div>`;
  if (!luck) return html`<p class="hint">${say("working")}</p>`;
  const { words } = luck;
  return html`
    <div class="card">
      <p class="hint">${say("luck-help")}</p>
      ${dealing(luck, dealt, actions)}
      ${picture(luck, dealt, session, measureView(luck.measure, measures, session))}
      <form class="luck-controls" @submit=${(event: Event) => event.preventDefault()}>
        ${slider(luck, actions)} ${choices(showing, actions)}
      </form>
      <p class="luck-said" aria-live="polite">${words.headline}</p>
      <ul class="luck-best">
        <li>${words.for_candidate}</li>
        <li>${words.for_baseline}</li>
      </ul>
      <p class="detail">${words.chance}</p>
      <div class="luck-whole">
        <h3>${say("luck-every")}</h3>
        <p>${words.whole} ${luck.answer.words.headline}</p>
      </div>
      <p class="hint">${words.note}</p>
    </div>`;
}

/** A tap deals, and each deal shows another gap; with more shots the gaps lie closer together. */
function dealing({ shown, limits, deals, words }: Luck, dealt: number, actions: LuckActions): TemplateResult {
  const more = Math.min(2 * shown, limits.most);
  return html`
    <div class="luck-deal">
      <div class="buttons">
        <button type="button" class="primary" id="luck-deal" ?disabled=${dealt >= deals.length} @click=${actions.deal}>
          ${dealt === 0 ? say("luck-deal", { count: shown }) : say("luck-deal-again")}</button>
        ${more > shown ? html`<button type="button" id="luck-more" @click=${() => actions.show(more)}>${say("luck-more", { count: more })}</button>` : nothing}
      </div>
      <p class="luck-dealt" aria-live="polite">${dealt === 0 ? nothing : words.deals[dealt - 1]}</p>
    </div>`;
}

function slider({ shown, limits }: Luck, actions: LuckActions): TemplateResult {
  const moved = (event: Event) => actions.show((event.target as HTMLInputElement).valueAsNumber);
  return html`
    <div class="luck-slider">
      <label for="luck-shown">${say("luck-shown")}</label>
      <output for="luck-shown">${shown}</output>
      <input id="luck-shown" class="slider" type="range" min=${limits.fewest} max=${limits.most} step="1" .value=${String(shown)}
        aria-valuetext=${say("n-shots", { count: shown })} ?disabled=${limits.fewest === limits.most} @input=${moved} />
      <span class="luck-ends" aria-hidden="true"><span>${limits.fewest}</span><span>${limits.most}</span></span>
    </div>`;
}

const choices = (showing: Showing, actions: LuckActions): TemplateResult => html`
  <fieldset>
    <legend>${say("luck-chosen")}</legend>
    <div class="segments">
      ${SHOWINGS.map(
        (value) => html`
          <label class="segment">
            <input type="radio" name="luck-showing" value=${value} .checked=${value === showing} @change=${() => actions.choose(value)} />
            <span>${say(`luck-${value}`)}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;

function picture(luck: Luck, dealt: number, session: Session, measure: MeasureView): TemplateResult {
  const { shown, margin, compared, toward } = luck;
  const geometry = luckGeometry({
    bins: luck.chance.histogram.bins,
    margin,
    toward,
    gap: luck.gap,
    best: { candidate: luck.for_candidate.best, baseline: luck.for_baseline.best },
    deals: luck.deals,
    dealt,
    scale: measure.scale,
    text: textSize(),
  });
  const name = (index: number) => session.builds[index]?.name ?? "";
  const { left, right } =
    compared === "distance_from_zero"
      ? { left: say("luck-nearer"), right: say("luck-farther") }
      : sides(measure.id, false);
  const value = (x: number) => gapOf(x, measure);
  const different = luck.goal === "different";
  const caption = margin
    ? say("luck-hill-colored", { count: shown, margin: withUnit(plain(chosenOf(margin, measure)), measure.unit) })
    : say("luck-hill", { count: shown });
  return html`
    <figure class="picture">
      <div class="sides" aria-hidden="true">
        <span>← ${marker(luck.candidate)} ${left}</span>
        <span>${marker(luck.candidate)} ${right} →</span>
      </div>
      ${drawLuck(geometry, {
        alternative: luck.words.alternative,
        builds: { candidate: luck.candidate, baseline: luck.baseline },
        whole: say("luck-all", { gap: value(luck.gap) }),
        best: (x) => say(different ? "luck-reach-highest" : "luck-reach-best", { count: shown, gap: value(x) }),
        dealt: value,
        tick: (x) => signed(x * measure.scale, measure.decimals),
      })}
      <ul class="legend">
        ${[luck.candidate, luck.baseline].map((index) => html`<li>${build(index, name(index))}</li>`)}
      </ul>
      <figcaption>${caption}</figcaption>
    </figure>`;
}
