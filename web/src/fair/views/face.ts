/**
 * Where the ball was struck: a tap on a picture of the face writes height and offset in millimeters.
 *
 * Seen from the ball, as the mark on the face is seen when the club is turned up: the toe of a right-hander's club lies
 * left, of a left-hander's right. Toe is plus, high is plus, for both.
 */
import { html, svg, type TemplateResult } from "lit";
import type { Hand } from "../../core/flights.js";
import { number } from "../../format/values.js";
import { say } from "../../text/say.js";
import type { Entry } from "../entry.js";
import type { FairActions } from "../state.js";

/** Half of what the picture spans, mm. */
const HALF_WIDTH = 55;
const HALF_HEIGHT = 32;
const STEP = 5;

export function faceView(
  entry: Entry,
  strike: readonly string[],
  hand: Hand | null,
  actions: FairActions,
): TemplateResult {
  /** The way along the picture in which the toe lies. */
  const toe = hand === "left" ? 1 : -1;
  const offset = entry.values["strike_offset"] ?? null;
  const height = entry.values["strike_height"] ?? null;
  const put = (across: number, up: number) => {
    const values = { ...entry.values };
    if (strike.includes("strike_offset")) values["strike_offset"] = clamp(Math.round(across), HALF_WIDTH);
    if (strike.includes("strike_height")) values["strike_height"] = clamp(Math.round(up), HALF_HEIGHT);
    actions.enter({ values });
  };
  const tapped = (event: PointerEvent) => {
    const box = (event.currentTarget as SVGElement).getBoundingClientRect();
    // The picture keeps its proportions and stands in the middle of whatever room it has.
    const pixels = Math.min(box.width / (2 * HALF_WIDTH), box.height / (2 * HALF_HEIGHT));
    const across = (event.clientX - box.left - box.width / 2) / pixels;
    put(toe * across, (box.top + box.height / 2 - event.clientY) / pixels);
  };
  const keyed = (event: KeyboardEvent) => {
    const [across, up] =
      (
        {
          ArrowLeft: [-STEP * toe, 0],
          ArrowRight: [STEP * toe, 0],
          ArrowUp: [0, STEP],
          ArrowDown: [0, -STEP],
        } as Record<string, [number, number]>
      )[event.key] ?? [];
    if (across === undefined || up === undefined) return;
    event.preventDefault();
    put((offset ?? 0) + across, (height ?? 0) + up);
  };
  return html`
    <div class="log-face">
      <svg viewBox="${-HALF_WIDTH} ${-HALF_HEIGHT} ${2 * HALF_WIDTH} ${2 * HALF_HEIGHT}" role="application" tabindex="0"
        aria-label=${say("face-label", { where: said(offset, height) })}
        @pointerdown=${tapped} @keydown=${keyed}>
        <path class="face" transform="scale(${-toe} 1)" d="M -50 4 C -52 -22 -30 -29 -4 -29 C 24 -29 46 -22 50 -8 C 52 8 40 24 20 27 C -14 31 -48 26 -50 4 Z" />
        <path class="score" d="M -30 -12 H 30 M -34 0 H 34 M -30 12 H 30" />
        <path class="middle" d="M 0 -4 V 4 M -4 0 H 4" />
        ${offset === null && height === null ? "" : svg`<circle class="strike" cx=${toe * (offset ?? 0)} cy=${-(height ?? 0)} r="6" />`}
      </svg>
      <p class="log-ends" aria-hidden="true"><span>${toe < 0 ? say("face-toe") : say("face-heel")}</span><span>${said(offset, height)}</span><span>${toe < 0 ? say("face-heel") : say("face-toe")}</span></p>
    </div>`;
}

function said(offset: number | null, height: number | null): string {
  if (offset === null && height === null) return say("face-tap");
  const across =
    offset === null
      ? ""
      : offset === 0
        ? say("face-middle")
        : say(offset > 0 ? "face-mm-toe" : "face-mm-heel", { mm: number(Math.abs(offset), 0) });
  const up =
    height === null
      ? ""
      : height === 0
        ? say("face-middle-height")
        : say(height > 0 ? "face-mm-high" : "face-mm-low", { mm: number(Math.abs(height), 0) });
  return [across, up].filter(Boolean).join(", ");
}

const clamp = (value: number, most: number): number => Math.min(most, Math.max(-most, value)) + 0;
