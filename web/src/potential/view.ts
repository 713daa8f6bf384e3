/** Part 8: what each club's ball speed carries now and could carry, and the map of carry over launch and spin. */
import { html, nothing, type TemplateResult } from "lit";
import { textSize } from "../chart/text-size.js";
import type { Session } from "../core/engine.js";
import type { Potential, SpeedGroup } from "../core/flights.js";
import { number, withUnit } from "../format/values.js";
import { build } from "../pieces/pieces.js";
import { whenOpen } from "../pieces/when-open.js";
import { say } from "../text/say.js";
import { shownIn } from "../text/units.js";
import { mapGeometry } from "./carry-map.js";
import { drawCarryMap } from "./draw-carry-map.js";
import { drawGain, drawGainScale } from "./draw-gains.js";
import { gainsGeometry } from "./gains.js";

/** How far below the best its band reaches, yd: as the core makes it. */
const FLAT = 2;

export function potentialView(
  potential: Potential,
  session: Session,
  chosen: number,
  choose: (group: number) => void,
): TemplateResult {
  const { words, groups } = potential;
  const name = (index: number) => session.builds[index]?.name ?? "";
  const title = (group: SpeedGroup) =>
    group.build === null ? group.words.name : build(group.build, name(group.build));
  return html`
    <div class="card">
      <p class="said">${words.headline}</p>
      ${words.detail ? html`<p>${words.detail}</p>` : nothing}
      ${gains(groups, name)}
      <ul class="speed-groups">
        ${groups.map(
          (group) => html`
            <li>
              <h3>${title(group)}</h3>
              <p>${group.words.now}</p>
              <ul>
                <li>${group.words.launch}</li>
                <li>${group.words.spin}</li>
                <li>${group.words.best}</li>
              </ul>
            </li>`,
        )}
      </ul>
      <details class="map-row">
        <summary>${say("potential-map")}</summary>
        ${whenOpen(
          () => html`
            <fieldset>
              <legend>${say("map-for")}</legend>
              <div class="segments">
                ${groups.map(
                  (group, index) => html`
                    <label class="segment">
                      <input type="radio" name="map-for" value=${index} .checked=${index === chosen} @change=${() => choose(index)} />
                      <span>${title(group)}</span>
                    </label>`,
                )}
              </div>
            </fieldset>
            ${picture(potential, groups[chosen], session)}`,
        )}
      </details>
      <div class="part-list">
        <h3>${say("potential-before")}</h3>
        <ul>${words.cautions.map((said) => html`<li>${said}</li>`)}</ul>
      </div>
    </div>`;
}

/** Each club's gain first: a bar and its words; the golfer's best third stands below, in words. */
function gains(groups: readonly SpeedGroup[], name: (build: number) => string): TemplateResult {
  const yard = shownIn("yd");
  const clubs = groups.flatMap(({ build: of, gain, words }) => (of === null ? [] : [{ of, gain, words }]));
  const geometry = gainsGeometry(
    clubs.map(({ gain }) => gain),
    yard.scale,
  );
  return html`
    <figure class="picture gains">
      <ul>
        ${clubs.map(
          ({ of, words }, at) => html`
            <li><p>${build(of, name(of))} <span>${words.gain}</span></p>${drawGain(geometry.bars[at]!, geometry, of)}</li>`,
        )}
      </ul>
      ${
        geometry.ticks.length > 0
          ? html`
          ${drawGainScale(geometry, (value) => number(value * yard.scale, 0), textSize())}
          <figcaption>${say("gains-caption", { unit: yard.unit })}</figcaption>`
          : nothing
      }
    </figure>`;
}

function picture(
  { map, words }: Potential,
  group: SpeedGroup | undefined,
  session: Session,
): TemplateResult | typeof nothing {
  if (!group) return nothing;
  const [yard, mph] = [shownIn("yd"), shownIn("mph")];
  const geometry = mapGeometry({
    ...map,
    own: { build: group.build, launch: group.launch.launch_angle, spin: group.launch.spin_rate },
    band: {
      launchLow: group.best.launch_low,
      launchHigh: group.best.launch_high,
      spinLow: group.best.spin_low,
      spinHigh: group.best.spin_high,
    },
    text: textSize(),
  });
  const builds = [...new Set(map.shots.map((shot) => shot.build))].sort((a, b) => a - b);
  return html`
    <figure class="picture">
      ${drawCarryMap(geometry, {
        alternative: words.alternative,
        launch: (value) => `${number(value, 0)}°`,
        spin: (value) => number(value, 0),
        carry: (value) => number(value * yard.scale, 0),
      })}
      <ul class="legend">
        ${builds.map((index) => html`<li>${build(index, session.builds[index]?.name ?? "")}</li>`)}
        <li><span class="swatch best" aria-hidden="true"></span>${say("potential-best", { size: withUnit(number(FLAT * yard.scale, 0), yard.unit) })}</li>
      </ul>
      <figcaption>${say("potential-caption", { unit: yard.unit, speed: withUnit(number(map.ball_speed * mph.scale, 0), mph.unit) })}</figcaption>
    </figure>`;
}
