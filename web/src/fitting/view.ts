/** Going to a fitting: the sheet, and what the fitting can show once its lines are tapped. */
import { html, nothing, type TemplateResult } from "lit";
import type { FittingReport, FittingSeen } from "../core/planner.js";
import { type PlainId, say } from "../text/say.js";

export type Line = keyof FittingSeen;

/** What is asked for in each line, in the order of a fitting: what is compared, how it is hit, what is kept, what is taken home. */
const ASKED = {
  own_club: "fitting-own-club",
  as_often: "fitting-as-often",
  as_warm: "fitting-as-warm",
  in_turn: "fitting-in-turn",
  alike: "fitting-alike",
  every_shot: "fitting-every-shot",
  number_said: "fitting-number-said",
  hit_again: "fitting-hit-again",
  measured: "fitting-measured",
  taken_home: "fitting-taken-home",
} as const satisfies Record<Line, PlainId>;

/** Why it is asked for. */
const WHY = {
  own_club: "fitting-own-club-why",
  as_often: "fitting-as-often-why",
  as_warm: "fitting-as-warm-why",
  in_turn: "fitting-in-turn-why",
  alike: "fitting-alike-why",
  every_shot: "fitting-every-shot-why",
  number_said: "fitting-number-said-why",
  hit_again: "fitting-hit-again-why",
  measured: "fitting-measured-why",
  taken_home: "fitting-taken-home-why",
} as const satisfies Record<Line, PlainId>;

const LINES = Object.keys(ASKED) as Line[];

export interface FittingState {
  seen: FittingSeen;
  report: FittingReport | null;
}

export const fittingView = (
  { seen, report }: FittingState,
  tap: (line: Line, said: boolean | null) => void,
): TemplateResult => html`
  <div class="card fitting">
    <p>${say("fitting-before")} <span class="quiet">${say("fitting-after")}</span></p>
    <ol>${LINES.map((line) => ofLine(line, seen[line] ?? null, tap))}</ol>
    <p class="hint">${say("fitting-caution")}</p>
    <div class="buttons"><button type="button" @click=${() => print()}>${say("fitting-print")}</button></div>
    <div role="status">${report ? outcome(report) : nothing}</div>
  </div>`;

const ofLine = (
  line: Line,
  said: boolean | null,
  tap: (line: Line, said: boolean | null) => void,
): TemplateResult => html`
  <li>
    <p><strong>${say(ASKED[line])}</strong> <span class="quiet">${say(WHY[line])}</span></p>
    <div class="said" role="group" aria-label=${say("fitting-was-it")}>
      ${([true, false] as const).map(
        (answer) => html`
          <button type="button" aria-pressed=${said === answer} aria-label="${say(answer ? "fitting-yes" : "fitting-no")}: ${say(ASKED[line])}"
            @click=${() => tap(line, said === answer ? null : answer)}>${say(answer ? "fitting-yes" : "fitting-no")}</button>`,
      )}
    </div>
  </li>`;

const outcome = ({ headline, shows, cannot, not_known, next }: FittingReport): TemplateResult => html`
  <article class="fitting-outcome">
    <h3>${headline}</h3>
    ${list("fitting-shows", shows)} ${list("fitting-cannot", cannot)} ${list("fitting-not-known", not_known)}
    <p class="next">${next}</p>
    <p class="buttons">
      <a class="button" href="#shots">${say("start-shots")}</a>
      <a class="button" href="#claim">${say("start-claim")}</a>
      <a class="button" href="#fair">${say("start-fair")}</a>
    </p>
  </article>`;

const list = (
  title: "fitting-shows" | "fitting-cannot" | "fitting-not-known",
  sentences: readonly string[],
): TemplateResult | typeof nothing =>
  sentences.length === 0
    ? nothing
    : html`<h4>${say(title)}</h4><ul class="points">${sentences.map((sentence) => html`<li>${sentence}</li>`)}</ul>`;
