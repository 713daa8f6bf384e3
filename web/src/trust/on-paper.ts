/** What a sheet needs and a screen does not: whose it is, of which day, and every shot in figures. */
import { html, nothing, type TemplateResult } from "lit";
import type { Session } from "../core/engine.js";
import { today } from "../format/today.js";
import { type MeasureView, number } from "../format/values.js";
import { build } from "../pieces/pieces.js";
import { shotCount, shotsFrom } from "../state/shots.js";
import type { Given } from "../state/texts.js";
import { say, sayAround } from "../text/say.js";

/** More shots than these fill a sheet of their own. */
const LISTED = 240;

/** Whose shots were kept as, while they stand on the page. */
const kept = new WeakMap<Session, string>();

/** Says whose shots these are: they were kept with a name. */
export const keptAs = (session: Session, name: string): void => void kept.set(session, name.trim());

/** The name that shots were kept with, or a line to write one on, and the day it was printed. */
export const sheetHead = (given: readonly Given[], session: Session): TemplateResult =>
  html`<p class="on-paper sheet-head"><strong>Straight Answer</strong><span>${nameLine(kept.get(session) || given.find(({ source }) => source.of)?.source.of)}</span><span>${say("paper-printed", { date: today() })}</span></p>`;

const nameLine = (name: string | undefined): unknown =>
  name ? sayAround("paper-for-name", { name: html`<bdi>${name}</bdi>` }) : say("paper-for");

/** The values of the measure asked about, club by club in the order hit; left out ones in brackets. */
export function sheetShots(session: Session, measure: MeasureView): TemplateResult | typeof nothing {
  if (shotCount(session) > LISTED) return nothing;
  const shots = shotsFrom(session, 0, LISTED);
  const line = (club: number): string =>
    shots
      .filter((shot) => shot.build === club)
      .map((shot) => {
        const value = shot.values[measure.id];
        const text = value === undefined || value === null ? "–" : number(value * measure.scale, measure.decimals);
        return shot.left_out === null ? text : `(${text})`;
      })
      .join("  ");
  const title = { measure: measure.unit ? `${measure.name} (${measure.unit})` : measure.name };
  return html`
    <div class="on-paper sheet-shots">
      <p>${shots.some(({ left_out }) => left_out !== null) ? say("paper-shots-out", title) : say("paper-shots", title)}</p>
      ${session.builds.map(({ name }, club) => html`<p>${build(club, name)} ${line(club)}</p>`)}
    </div>`;
}
