/** Every shot in the order hit: as a picture, and as a table in which a shot can be left out and put back. */
import { html, nothing, type TemplateResult } from "lit";
import { textSize } from "../chart/text-size.js";
import type { Report, Session, Shot } from "../core/engine.js";
import { amountOf, type MeasureView, number } from "../format/values.js";
import { build, choice } from "../pieces/pieces.js";
import { whenOpen } from "../pieces/when-open.js";
import type { Actions } from "../state/actions.js";
import { notesIn, shotCount, shotsFrom } from "../state/shots.js";
import { say } from "../text/say.js";
import { drawOrder } from "./draw-order.js";
import { sheetShots } from "./on-paper.js";
import { type Drift, type OrderedShot, orderGeometry } from "./order.js";

/** More shots than these are no picture any more. */
const DRAWN = 2000;
const COUNTS = "";
const REASONS = ["mishit", "club", "fault", "slip", "other"] as const;

export function shots(
  session: Session,
  report: Report,
  measure: MeasureView,
  shown: number,
  actions: Actions,
): TemplateResult | typeof nothing {
  if (shotCount(session) === 0) return nothing;
  return html`
    <div class="card every-shot">
      <h3>${say("shots-title", { measure: measure.name.toLowerCase() })}</h3>
      ${shotCount(session) <= DRAWN ? picture(session, report, measure) : html`<p class="hint">${say("shots-too-many")}</p>`}
      <details class="shot-list">
        <summary>${say("shots-every")}</summary>
        ${whenOpen(() => list(session, measure, actions, shown))}
      </details>
      ${sheetShots(session, measure)}
    </div>`;
}

const list = (session: Session, measure: MeasureView, actions: Actions, shown: number): TemplateResult => html`
  <p class="hint">${say("shots-every-help")}</p>
  <div class="scroll">${table(session, measure, actions, shown)}</div>
  ${
    shotCount(session) > shown
      ? html`<div class="buttons">
        <button type="button" @click=${actions.showMoreShots}>${say("shots-show-more", { count: shotCount(session) })}</button>
      </div>`
      : nothing
  }`;

function picture(session: Session, report: Report, measure: MeasureView): TemplateResult {
  const ordered = shotsFrom(session, 0, DRAWN).map(
    (shot): OrderedShot => ({
      build: shot.build,
      round: shot.round,
      value: shot.values[measure.id] ?? null,
      leftOut: shot.left_out !== null,
      noted: shot.note !== undefined,
    }),
  );
  const drift = driftOf(report);
  const geometry = orderGeometry(ordered, drift?.drawn, measure.scale, textSize());
  if (!geometry) return html`<p class="hint">${say("shots-no-value")}</p>`;
  const value = (x: number) => amountOf(x, measure);
  const name = (index: number) => session.builds[index]?.name ?? "";
  const each = geometry.averages.map(({ build: index, value: average }) => {
    const own = geometry.points.filter((point) => point.build === index);
    return say("shots-alternative-each", { name: name(index), count: own.length, average: value(average) });
  });
  const out = geometry.points.filter(({ leftOut }) => leftOut).length;
  const noted = geometry.points.filter((point) => point.noted).length;
  const alternative = [
    say("shots-alternative", { measure: measure.name }),
    ...each,
    geometry.bands.length > 0
      ? say("shots-alternative-rounds", { count: new Set(geometry.bands.map(({ round }) => round)).size })
      : "",
    drift?.what ?? "",
    out > 0 ? say("shots-alternative-out", { count: out }) : "",
    noted > 0 ? say("shots-alternative-noted", { count: noted }) : "",
    say("shots-alternative-list"),
  ];
  const caption = [
    say("shots-caption"),
    geometry.bands.length > 0 ? say("shots-caption-bands") : "",
    geometry.drifts.length > 0 ? say("shots-caption-drift") : "",
    out > 0 ? say("shots-caption-out") : "",
    noted > 0 ? notes(session) : "",
  ];
  return html`
    <figure class="picture">
      ${drawOrder(geometry, {
        alternative: alternative.filter(Boolean).join(" "),
        tick: (x) => number(x * measure.scale, measure.decimals),
      })}
      <ul class="legend">
        ${geometry.averages.map(
          ({ build: index, value: average }) =>
            html`<li>${build(index, name(index))} <span class="count">${say("shots-average", { average: value(average) })}</span></li>`,
        )}
      </ul>
      <figcaption>${caption.filter(Boolean).join(" ")}</figcaption>
    </figure>`;
}

/** What was noted, in the golfer's own words; the list says the rest where there is much of it. */
function notes(session: Session): string {
  const said = new Set(notesIn(session));
  return said.size === 1 ? say("shots-caption-noted-as", { note: [...said][0]! }) : say("shots-caption-noted");
}

/** The drift over the session, where the report has found one: for the picture, and in its words. */
function driftOf({ trust, asked }: Report): { drawn: Drift; what: string } | undefined {
  for (const { seen, what } of trust) {
    if (seen.kind === "drift" && asked.candidate !== null) {
      return { drawn: { change: seen.change, builds: [asked.baseline, asked.candidate] }, what };
    }
  }
  return undefined;
}

const table = (session: Session, measure: MeasureView, actions: Actions, shown: number): TemplateResult => html`
  <table>
    <thead>
      <tr><th scope="col">${say("shots-column")}</th><th scope="col">${say("role-build")}</th><th scope="col">${measure.name}</th><th scope="col">${say("counts-column")}</th></tr>
    </thead>
    <tbody>${shotsFrom(session, 0, shown).map((shot, index) => row(session, shot, measure, actions, index))}</tbody>
  </table>`;

function row(session: Session, shot: Shot, measure: MeasureView, actions: Actions, index: number): TemplateResult {
  const value = shot.values[measure.id] ?? null;
  const reason = shot.left_out;
  const usual = REASONS.map((one) => say(`reason-${one}`));
  const reasons = reason === null || usual.includes(reason) ? usual : [reason || say("shots-left-out"), ...usual];
  const options = [
    { value: COUNTS, label: reason === null ? say("counts-yes") : say("counts-back") },
    ...reasons.map((text) => ({ value: text, label: reason === text ? text : say("leave-out", { reason: text }) })),
  ];
  return html`
    <tr class=${reason === null ? "" : "left-out"}>
      <th scope="row">${index + 1}</th>
      <td>${build(shot.build, session.builds[shot.build]?.name ?? "")}${shot.note === undefined ? nothing : html`<small class="noted">${shot.note}</small>`}</td>
      <td><span class="value">${value === null ? "–" : amountOf(value, measure)}</span></td>
      <td>${choice(
        say("shot-counts", { shot: String(index + 1) }),
        options,
        reason === null ? COUNTS : reason || say("shots-left-out"),
        (chosen) => actions.leaveOut(index, chosen === COUNTS ? null : chosen),
      )}</td>
    </tr>`;
}
