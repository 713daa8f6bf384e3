/** Part 5: the slider, the words as they come from the core, and the hill of what luck alone does. */
import { html, nothing, type TemplateResult } from "lit";
import { drawLuck } from "../chart/draw-luck.js";
import { luckGeometry } from "../chart/luck.js";
import type { Luck, Measure, Refusal, Session, Showing } from "../engine.js";
import { counted, measureView, plain, sides, signed, withUnit, type MeasureView } from "../format.js";
import { build, marker } from "./pieces.js";
import { trouble as refused } from "./trouble.js";

export interface LuckState {
  luck: Luck | null;
  trouble: Refusal | null;
  showing: Showing;
  session: Session;
  measures: readonly Measure[];
}

export interface LuckActions {
  show: (shown: number) => void;
  choose: (showing: Showing) => void;
}

const SHOWINGS: readonly { value: Showing; label: string }[] = [
  { value: "in_a_row", label: "In a row, as hit" },
  { value: "picked", label: "Any, picked" },
];

export function luckView({ luck, trouble, showing, session, measures }: LuckState, actions: LuckActions): TemplateResult {
  if (trouble) return html`<div class="card">${refused(trouble)}</div>`;
  if (!luck) return html`<p class="hint">Working it out…</p>`;
  const { words } = luck;
  return html`
    <div class="card">
      <p class="hint">With your very own shots: what a few of them, shown alone, would have said.</p>
      <form class="luck-controls" @submit=${(event: Event) => event.preventDefault()}>
        ${slider(luck, actions)} ${choices(showing, actions)}
      </form>
      <p class="luck-said" aria-live="polite">${words.headline}</p>
      ${picture(luck, session, measureView(luck.measure, measures, session))}
      <ul class="luck-best">
        <li>${words.for_candidate}</li>
        <li>${words.for_baseline}</li>
      </ul>
      <p class="detail">${words.chance}</p>
      <div class="luck-whole">
        <h3>With every shot</h3>
        <p>${words.whole} ${luck.answer.words.headline}</p>
      </div>
      <p class="hint">${words.note}</p>
    </div>`;
}

function slider({ shown, limits }: Luck, actions: LuckActions): TemplateResult {
  const moved = (event: Event) => actions.show((event.target as HTMLInputElement).valueAsNumber);
  return html`
    <div class="luck-slider">
      <label for="luck-shown">Shots shown with each club</label>
      <output for="luck-shown">${shown}</output>
      <input id="luck-shown" class="slider" type="range" min=${limits.fewest} max=${limits.most} step="1" .value=${String(shown)}
        aria-valuetext=${counted(shown, "shot")} ?disabled=${limits.fewest === limits.most} @input=${moved} />
      <span class="luck-ends" aria-hidden="true"><span>${limits.fewest}</span><span>${limits.most}</span></span>
    </div>`;
}

const choices = (showing: Showing, actions: LuckActions): TemplateResult => html`
  <fieldset>
    <legend>How they were chosen</legend>
    <div class="segments">
      ${SHOWINGS.map(
        ({ value, label }) => html`
          <label class="segment">
            <input type="radio" name="luck-showing" value=${value} .checked=${value === showing} @change=${() => actions.choose(value)} />
            <span>${label}</span>
          </label>`,
      )}
    </div>
  </fieldset>`;

function picture(luck: Luck, session: Session, measure: MeasureView): TemplateResult {
  const { shown, margin, compared, toward } = luck;
  const geometry = luckGeometry({
    bins: luck.chance.histogram.bins,
    margin,
    toward,
    gap: luck.gap,
    best: { candidate: luck.for_candidate.best, baseline: luck.for_baseline.best },
  });
  const name = (index: number) => session.builds[index]?.name ?? "";
  const { left, right } =
    compared === "distance_from_zero" ? { left: "nearer to zero", right: "farther from zero" } : sides(measure.id, false);
  const value = (x: number) => withUnit(signed(x, measure.decimals), measure.unit);
  const few = `${luck.goal === "different" ? "highest" : "best"} ${shown}`;
  const enough = margin ? ` Colored: ${withUnit(plain(margin), measure.unit)} or more, for the club of that color.` : nothing;
  return html`
    <figure class="picture">
      <div class="sides" aria-hidden="true">
        <span>← ${marker(luck.candidate)} ${left}</span>
        <span>${marker(luck.candidate)} ${right} →</span>
      </div>
      ${drawLuck(geometry, {
        alternative: luck.words.alternative,
        builds: { candidate: luck.candidate, baseline: luck.baseline },
        whole: `all shots ${value(luck.gap)}`,
        best: (x) => `${few}: ${value(x)}`,
        tick: (x) => signed(x, measure.decimals),
      })}
      <ul class="legend">
        ${[luck.candidate, luck.baseline].map((index) => html`<li>${build(index, name(index))}</li>`)}
      </ul>
      <figcaption>
        Hill: how often luck alone sets two equal clubs this far apart, ${counted(shown, "shot")} each.${enough} Lines: how far
        the ${few} of a club reach against the ${luck.goal === "different" ? "lowest" : "worst"} ${shown} of the other.
      </figcaption>
    </figure>`;
}
