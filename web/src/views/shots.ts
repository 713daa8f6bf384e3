/** Every shot in the order hit: as a picture, and as a table in which a shot can be left out and put back. */
import { html, nothing, type TemplateResult } from "lit";
import type { Actions } from "../actions.js";
import { drawOrder } from "../chart/draw-order.js";
import { orderGeometry, type Drift, type OrderedShot } from "../chart/order.js";
import type { Report, Session } from "../engine.js";
import { counted, number, withUnit, type MeasureView } from "../format.js";
import { build, choice } from "./pieces.js";

/** More shots than these are no picture any more. */
const DRAWN = 2000;
const COUNTS = "";
const REASONS = ["mishit", "wrong club", "fault of ball or reading", "other reason"];

export function shots(
  session: Session,
  report: Report,
  measure: MeasureView,
  shown: number,
  actions: Actions,
): TemplateResult | typeof nothing {
  if (session.shots.length === 0) return nothing;
  return html`
    <div class="card every-shot">
      <h3>Shots in order: ${measure.name.toLowerCase()}</h3>
      ${session.shots.length <= DRAWN ? picture(session, report, measure) : html`<p class="hint">There are too many shots for a picture.</p>`}
      <details class="shot-list">
        <summary>Every shot, and leaving one out</summary>
        <p class="hint">
          Give a reason to leave a shot out. It stays in view, and the answer is worked out with it and without it.
        </p>
        ${table(session, measure, actions, shown)}
        ${session.shots.length > shown
          ? html`<div class="buttons">
              <button type="button" @click=${actions.showMoreShots}>Show more of ${counted(session.shots.length, "shot")}</button>
            </div>`
          : nothing}
      </details>
    </div>`;
}

function picture(session: Session, report: Report, measure: MeasureView): TemplateResult {
  const ordered = session.shots.map(
    (shot): OrderedShot => ({ build: shot.build, round: shot.round, value: shot.values[measure.id] ?? null, leftOut: shot.left_out !== null, noted: shot.note !== undefined }),
  );
  const drift = driftOf(report);
  const geometry = orderGeometry(ordered, drift?.drawn);
  if (!geometry) return html`<p class="hint">No shot has a value for this measure.</p>`;
  const value = (x: number) => withUnit(number(x, measure.decimals), measure.unit);
  const name = (index: number) => session.builds[index]?.name ?? "";
  const each = geometry.averages.map(({ build: index, value: average }) => {
    const own = geometry.points.filter((point) => point.build === index);
    return `${name(index)}: ${counted(own.length, "shot")}, ${value(average)} on average.`;
  });
  const out = geometry.points.filter(({ leftOut }) => leftOut).length;
  const noted = geometry.points.filter((point) => point.noted).length;
  const alternative = [
    `${measure.name} of every shot, in the order hit.`,
    ...each,
    geometry.bands.length > 0 ? `Hit in ${counted(new Set(geometry.bands.map(({ round }) => round)).size, "round")}.` : "",
    drift?.what ?? "",
    out > 0 ? `${counted(out, "shot")} left out.` : "",
    noted > 0 ? `${counted(noted, "shot")} noted by the golfer; they count.` : "",
    "The list below has every value.",
  ];
  return html`
    <figure class="picture">
      ${drawOrder(geometry, {
        alternative: alternative.filter(Boolean).join(" "),
        tick: (x) => number(x, measure.decimals),
      })}
      <ul class="legend">
        ${geometry.averages.map(
          ({ build: index, value: average }) => html`<li>${build(index, name(index))} <span class="count">average ${value(average)}</span></li>`,
        )}
      </ul>
      <figcaption>
        First shot on the left, last on the right. Broken lines: each club’s average.${geometry.bands.length > 0 ? " Bands: rounds." : ""}${geometry.drifts
          .length > 0
          ? " Slanted lines: the drift, whichever club was in hand."
          : ""}${out > 0 ? " Struck through: left out." : ""}${noted > 0 ? ` Ringed: ${notes(session)}; it counts.` : ""}
      </figcaption>
    </figure>`;
}

/** What was noted, in the golfer's own words; the list says the rest where there is much of it. */
function notes({ shots: all }: Session): string {
  const said = new Set(all.flatMap(({ note }) => (note === undefined ? [] : [note])));
  return said.size === 1 ? `noted as “${[...said][0]}”` : "noted by the golfer";
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
      <tr><th scope="col">Shot</th><th scope="col">Club</th><th scope="col">${measure.name}</th><th scope="col">Counts?</th></tr>
    </thead>
    <tbody>${session.shots.slice(0, shown).map((_, index) => row(session, measure, actions, index))}</tbody>
  </table>`;

function row(session: Session, measure: MeasureView, actions: Actions, index: number): TemplateResult {
  const shot = session.shots[index]!;
  const value = shot.values[measure.id] ?? null;
  const reason = shot.left_out;
  const reasons = reason === null || REASONS.includes(reason) ? REASONS : [reason || "left out", ...REASONS];
  const options = [
    { value: COUNTS, label: reason === null ? "counts" : "put it back" },
    ...reasons.map((text) => ({ value: text, label: reason === text ? text : `leave out: ${text}` })),
  ];
  return html`
    <tr class=${reason === null ? "" : "left-out"}>
      <th scope="row">${index + 1}</th>
      <td>${build(shot.build, session.builds[shot.build]?.name ?? "")}${shot.note === undefined ? nothing : html`<small class="noted">${shot.note}</small>`}</td>
      <td><span class="value">${value === null ? "–" : withUnit(number(value, measure.decimals), measure.unit)}</span></td>
      <td>${choice(`Whether shot ${index + 1} counts`, options, reason === null ? COUNTS : reason || "left out", (chosen) =>
        actions.leaveOut(index, chosen === COUNTS ? null : chosen),
      )}</td>
    </tr>`;
}
