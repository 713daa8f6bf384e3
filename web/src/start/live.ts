/**
 * The picture at the start: two equal clubs, five shots with each, five others, and all thirty. Plays once; where motion is
 * not wanted its end stands from the beginning. Loaded once the page stands.
 */
import "./live.css";
import { html, svg, type TemplateResult } from "lit";
import { mark } from "../chart/draw-mark.js";
import { look } from "../chart/marker.js";
import { linear } from "../chart/scale.js";
import { signed, withUnit } from "../format/values.js";
import { LightElement } from "../pieces/light-element.js";
import english from "../text/en/start.ftl?raw";
import { learn, say } from "../text/say.js";
import { shownIn } from "../text/units.js";
import { average, carries, type Dealt, gap, HANDS, RANGE } from "./live-hands.js";

learn(english);

/** From one shot to the next, in a hand of five and in the last one; and how long a hand lies there. */
const DEAL_MS = 110;
const QUICK_MS = 45;
const LOOK_MS = 1500;

const LAST = HANDS.length - 1;
/** The two rows from above, and the line below them. */
const ROWS = [18, 50] as const;
const HEIGHT = 70;

const scale = linear(RANGE[0], RANGE[1], 4, 4);

class StraightAnswerLive extends LightElement {
  #hand = LAST;
  #dealt = HANDS[LAST]!.to;
  #timer = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) return;
    this.#take(0);
  }

  override disconnectedCallback(): void {
    clearTimeout(this.#timer);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const hand = HANDS[this.#hand]!;
    const isWhole = this.#dealt === hand.to;
    return html`
      <figure>
        ${draw({ from: hand.from, to: this.#dealt })}
        <figcaption aria-hidden="true">
          <strong>${isWhole ? sentence(this.#hand) : say("live-dealing", { count: this.#dealt - hand.from })}</strong>
          <span class="quiet">${say("live-invented")}</span>
        </figcaption>
      </figure>`;
  }

  #take(hand: number): void {
    this.#hand = hand;
    this.#dealt = HANDS[hand]!.from + 1;
    this.requestUpdate();
    this.#wait(() => this.#deal(), hand === LAST ? QUICK_MS : DEAL_MS);
  }

  #deal(): void {
    const hand = HANDS[this.#hand]!;
    if (this.#dealt === hand.to) {
      if (this.#hand < LAST) this.#take(this.#hand + 1);
      return;
    }
    this.#dealt += 1;
    this.requestUpdate();
    const pause = this.#dealt === hand.to ? LOOK_MS : this.#hand === LAST ? QUICK_MS : DEAL_MS;
    this.#wait(() => this.#deal(), pause);
  }

  #wait(next: () => void, milliseconds: number): void {
    this.#timer = window.setTimeout(next, milliseconds);
  }
}

/** Of a hand, what its averages say. */
function sentence(hand: number): string {
  const { unit, scale: shown } = shownIn("yd");
  const size = withUnit(signed(gap(HANDS[hand]!) * shown, 0), unit);
  return say((["live-first", "live-second", "live-all"] as const)[hand]!, { gap: size });
}

function draw(dealt: Dealt): TemplateResult {
  const clubs = carries(dealt);
  return html`
    <svg role="img" aria-label=${say("live-alternative", { first: sentence(0), second: sentence(1), all: sentence(LAST) })}
      width="100%" height=${HEIGHT}>
      ${clubs.map((_, club) => svg`<line class="row" x1="0" x2="100%" y1=${ROWS[club]} y2=${ROWS[club]} />`)}
      ${clubs.map((values, club) => values.map((value) => mark(club, at(value), ROWS[club]!)))}
      ${clubs.map((values, club) => drawAverage(club, average(values)))}
    </svg>`;
}

/** Where a club's shots lie on average: a tick through its row. */
const drawAverage = (club: number, value: number): TemplateResult => svg`
  <line class="average look-${look(club)}" x1=${at(value)} x2=${at(value)} y1=${ROWS[club]! - 15} y2=${ROWS[club]! + 15} />`;

const at = (value: number): string => `${Math.round(scale.at(value) * 100) / 100}%`;

customElements.define("straight-answer-live", StraightAnswerLive);
