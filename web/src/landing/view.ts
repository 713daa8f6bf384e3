/** Part 6: the ground from above, the aim line, and how often each club would hit the fairway. */
import { html, nothing, type TemplateResult } from "lit";
import { textSize } from "../chart/text-size.js";
import type { Session } from "../core/engine.js";
import type { BuildLanding, Hand, Landing } from "../core/flights.js";
import { number, plain, spelledOut, withUnit } from "../format/values.js";
import { handChoice } from "../pieces/hand-choice.js";
import { build } from "../pieces/pieces.js";
import { say, sayAround } from "../text/say.js";
import { lengthUnit, shownIn } from "../text/units.js";
import { drawLanding } from "./draw.js";
import { aimAt, type LandingGeometry, landingGeometry, wholeAim } from "./geometry.js";
import { hundreds } from "./hundreds.js";

export interface LandingState {
  landing: Landing;
  session: Session;
  /** As it stands under the finger; the numbers follow. */
  aim: number;
  fairway: number;
  hand: Hand | undefined;
}

export interface LandingActions {
  aim: (yards: number) => void;
  widen: (yards: number) => void;
  chooseHand: (hand: Hand) => void;
}

export function landingView(state: LandingState, actions: LandingActions): TemplateResult {
  const { landing, session, aim } = state;
  const { words } = landing;
  const { scale } = shownIn("yd");
  const name = (index: number) => session.builds[index]?.name ?? "";
  return html`
    <div class="card">
      <p class="said">${words.headline}</p>
      ${words.detail ? html`<p>${words.detail}</p>` : nothing}
      ${hundreds(landing.builds, name)}
      ${picture(state, actions)}
      <div class="aims">
        <p class="aim-now" aria-live="polite"><strong>${aimName(aim)}</strong></p>
        <div class="buttons">
          <button type="button" ?disabled=${aim === 0} @click=${() => actions.aim(0)}>${say("aim-as-on-the-day")}</button>
          ${landing.builds.map(({ build: index, best }) =>
            best === null
              ? nothing
              : html`<button type="button" class="best-aim" @click=${() => actions.aim(wholeAim(best.aim, landing.limits.farthest_aim, scale))}>${sayAround("aim-best", { club: build(index, name(index)) })}</button>`,
          )}
        </div>
      </div>
      <ul class="on-fairway">${landing.builds.map((one) => ofBuild(one, name(one.build)))}</ul>
      ${words.centers ? html`<p class="detail">${words.centers}</p>` : nothing}
      <div class="landing-controls">${width(state, actions)} ${handChoice("landing", state.hand, actions.chooseHand)}</div>
      <p class="hint">${words.note}</p>
    </div>`;
}

const ofBuild = ({ build: index, words }: BuildLanding, name: string): TemplateResult => html`
  <li>
    <p class="who">${build(index, name)}</p>
    <p>${words.chance}</p>
    <p class="quiet">${words.miss} ${words.best}</p>
  </li>`;

/** A length that is whole in the unit shown: `12 yd`. */
function size(yards: number): string {
  const { unit, scale } = shownIn("yd");
  return withUnit(number(yards * scale, 0), unit);
}

function aimName(aim: number): string {
  if (aim === 0) return say("aim-day");
  return say(aim < 0 ? "aim-left" : "aim-right", { size: size(Math.abs(aim)) });
}

function picture({ landing, aim, fairway, session }: LandingState, actions: LandingActions): TemplateResult {
  const farthestAim = landing.limits.farthest_aim;
  const { scale } = shownIn("yd");
  const whole = (yards: number) => number(Math.abs(yards) * scale, 0);
  const geometry = landingGeometry({
    shots: landing.shots.map(({ shot, build: of, place, left_out }) => ({
      shot,
      build: of,
      ...place,
      leftOut: left_out,
    })),
    builds: landing.builds.map(({ build: of, center, ovals }) => ({ build: of, center, ovals })),
    fairway,
    aim,
    farthestAim,
    scale,
    text: textSize(),
  });
  return html`
    <figure class="picture">
      <div class="from-above">
        ${drawLanding(geometry, {
          alternative: landing.words.alternative,
          distance: whole,
          side: (value) => (value === 0 ? "0" : say(value < 0 ? "short-left" : "short-right", { size: whole(value) })),
        })}
        ${aimLine(geometry, aim, farthestAim, actions)}
      </div>
      <ul class="legend">
        ${landing.builds.map(({ build: of }) => html`<li>${build(of, session.builds[of]?.name ?? "")}</li>`)}
      </ul>
      <figcaption>${landing.words.ovals} ${say("landing-caption", { unit: lengthUnit() })}</figcaption>
    </figure>`;
}

/**
 * The line lies over the picture as a slider, so that finger, mouse and keyboard find it alike. Its place is set as a
 * property: the page's policy forbids style in markup.
 */
function aimLine(geometry: LandingGeometry, aim: number, farthestAim: number, actions: LandingActions): TemplateResult {
  const { scale } = shownIn("yd");
  const inUnit = (yards: number) => Math.round(yards * scale);
  const drag = (event: PointerEvent) => {
    const line = event.currentTarget as HTMLElement;
    if (event.type === "pointerdown") {
      line.setPointerCapture(event.pointerId);
      line.focus({ preventScroll: true });
    }
    if (!line.hasPointerCapture(event.pointerId)) return;
    const ground = line.parentElement!.getBoundingClientRect();
    const next = aimAt(geometry, (event.clientX - ground.left) / ground.width, farthestAim, scale);
    if (next !== aim) actions.aim(next);
  };
  const step = (event: KeyboardEvent) => {
    const by = STEPS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const next = by === "first" ? -farthestAim : by === "last" ? farthestAim : aim + by / scale;
    actions.aim(wholeAim(next, farthestAim, scale));
  };
  return html`
    <div class="aim" role="slider" tabindex="0" aria-label=${say("aim")} aria-orientation="horizontal"
      aria-valuemin=${inUnit(-farthestAim)} aria-valuemax=${inUnit(farthestAim)} aria-valuenow=${inUnit(aim)} aria-valuetext=${aimName(aim)}
      .style=${`left:${(geometry.aim.share * 100).toFixed(2)}%;bottom:${(100 - (100 * geometry.bottom) / geometry.height).toFixed(2)}%`} @pointerdown=${drag} @pointermove=${drag} @keydown=${step}>
      <span class="grip" aria-hidden="true">⇔</span>
    </div>`;
}

const STEPS: Record<string, number | "first" | "last"> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -10,
  PageUp: 10,
  Home: "first",
  End: "last",
};

function width({ landing, fairway }: LandingState, actions: LandingActions): TemplateResult {
  const { unit, scale } = shownIn("yd");
  const { narrowest, widest } = landing.limits;
  const moved = (event: Event) => actions.widen((event.target as HTMLInputElement).valueAsNumber / scale);
  return html`
    <div class="fairway-width">
      <label for="fairway">${say("fairway-width")}</label>
      <output for="fairway">${withUnit(plain(fairway * scale), unit)}</output>
      <input id="fairway" class="slider" type="range" min=${Math.ceil(narrowest * scale)} max=${Math.floor(widest * scale)} step="5" .value=${String(Math.round(fairway * scale))}
        aria-valuetext=${spelledOut(fairway * scale, unit)} @input=${moved} />
    </div>`;
}
