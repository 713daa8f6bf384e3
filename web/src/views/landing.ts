/** Part 6: the ground from above, the aim line, and how often each club would hit the fairway. */
import { html, nothing, type TemplateResult } from "lit";
import { drawLanding } from "../chart/draw-landing.js";
import { aimAt, landingGeometry, type LandingGeometry } from "../chart/landing.js";
import type { Session } from "../engine.js";
import type { BuildLanding, Hand, Landing } from "../flights.js";
import { number, plain } from "../format.js";
import { handChoice } from "./hand.js";
import { build } from "./pieces.js";
import { say, sayAround } from "../text/say.js";

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
  const name = (index: number) => session.builds[index]?.name ?? "";
  return html`
    <div class="card">
      <p class="said">${words.headline}</p>
      ${words.detail ? html`<p>${words.detail}</p>` : nothing}
      ${picture(state, actions)}
      <div class="aims">
        <p class="aim-now" aria-live="polite"><strong>${aimName(aim)}</strong></p>
        <div class="buttons">
          <button type="button" ?disabled=${aim === 0} @click=${() => actions.aim(0)}>${say("aim-as-on-the-day")}</button>
          ${landing.builds.map(({ build: index, best }) =>
            best === null
              ? nothing
              : html`<button type="button" class="best-aim" @click=${() => actions.aim(whole(best.aim, landing))}>${sayAround("aim-best", { club: build(index, name(index)) })}</button>`,
          )}
        </div>
      </div>
      <ul class="on-fairway">${landing.builds.map((one) => ofBuild(one, name(one.build)))}</ul>
      ${words.centers ? html`<p class="detail">${words.centers}</p>` : nothing}
      <div class="landing-controls">${width(state, actions)} ${handChoice("landing", state.hand, actions.chooseHand)}</div>
      <p class="hint">${words.note}</p>
    </div>`;
}

/** The best aim to the yard, as the line can stand. */
const whole = (aim: number, { limits }: Landing): number =>
  Math.round(Math.min(Math.max(aim, -limits.farthest_aim), limits.farthest_aim)) + 0;

const ofBuild = ({ build: index, words }: BuildLanding, name: string): TemplateResult => html`
  <li>
    <p class="who">${build(index, name)}</p>
    <p>${words.chance}</p>
    <p class="quiet">${words.miss} ${words.best}</p>
  </li>`;

function aimName(aim: number): string {
  if (aim === 0) return say("aim-day");
  return say(aim < 0 ? "aim-left" : "aim-right", { yards: number(Math.abs(aim), 0) });
}

function picture({ landing, aim, fairway, session }: LandingState, actions: LandingActions): TemplateResult {
  const farthestAim = landing.limits.farthest_aim;
  const geometry = landingGeometry({
    shots: landing.shots.map(({ shot, build: of, place, left_out }) => ({ shot, build: of, ...place, leftOut: left_out })),
    builds: landing.builds.map(({ build: of, center, ovals }) => ({ build: of, center, ovals })),
    fairway,
    aim,
    farthestAim,
  });
  return html`
    <figure class="picture">
      <div class="from-above">
        ${drawLanding(geometry, {
          alternative: landing.words.alternative,
          distance: (value) => number(value, 0),
          side: (value) => (value === 0 ? "0" : say(value < 0 ? "short-left" : "short-right", { yards: number(Math.abs(value), 0) })),
        })}
        ${aimLine(geometry, aim, farthestAim, actions)}
      </div>
      <ul class="legend">
        ${landing.builds.map(({ build: of }) => html`<li>${build(of, session.builds[of]?.name ?? "")}</li>`)}
      </ul>
      <figcaption>${say("landing-caption")}</figcaption>
    </figure>`;
}

/**
 * The line lies over the picture as a slider, so that finger, mouse and keyboard find it alike. Its place is set as a
 * property: the page's policy forbids style in markup.
 */
function aimLine(geometry: LandingGeometry, aim: number, farthestAim: number, actions: LandingActions): TemplateResult {
  const drag = (event: PointerEvent) => {
    const line = event.currentTarget as HTMLElement;
    if (event.type === "pointerdown") {
      line.setPointerCapture(event.pointerId);
      line.focus({ preventScroll: true });
    }
    if (!line.hasPointerCapture(event.pointerId)) return;
    const ground = line.parentElement!.getBoundingClientRect();
    const next = aimAt(geometry, (event.clientX - ground.left) / ground.width, farthestAim);
    if (next !== aim) actions.aim(next);
  };
  const step = (event: KeyboardEvent) => {
    const by = STEPS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const next = by === "first" ? -farthestAim : by === "last" ? farthestAim : aim + by;
    actions.aim(Math.min(Math.max(next, -farthestAim), farthestAim));
  };
  return html`
    <div class="aim" role="slider" tabindex="0" aria-label=${say("aim")} aria-orientation="horizontal"
      aria-valuemin=${-farthestAim} aria-valuemax=${farthestAim} aria-valuenow=${aim} aria-valuetext=${aimName(aim)}
      .style=${`left:${(geometry.aim.share * 100).toFixed(2)}%`} @pointerdown=${drag} @pointermove=${drag} @keydown=${step}>
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
  const moved = (event: Event) => actions.widen((event.target as HTMLInputElement).valueAsNumber);
  return html`
    <div class="fairway-width">
      <label for="fairway">${say("fairway-width")}</label>
      <output for="fairway">${say("fairway-yards", { yards: plain(fairway) })}</output>
      <input id="fairway" class="slider" type="range" min=${landing.limits.narrowest} max=${landing.limits.widest} step="5" .value=${String(fairway)}
        aria-valuetext=${say("fairway-yards-said", { yards: plain(fairway) })} @input=${moved} />
    </div>`;
}
