/** What is already written down, so that a slip is seen: the shots of this set, the last shot, and a value that is asked about. */
import { html, nothing, type TemplateResult } from "lit";
import type { Measure } from "../../core/engine.js";
import type { LoggedShot, Progress } from "../../core/planner.js";
import { decimalMark, unitName } from "../../format/values.js";
import { build } from "../../pieces/pieces.js";
import { say } from "../../text/say.js";
import { shownIn } from "../../text/units.js";
import { isStrike } from "../entry.js";
import { inUnitsShown } from "../log.js";
import type { Asking, FairActions, FairState } from "../state.js";

/** Measures whose two sides have names, left and right, beside the key for the sign. */
const SIDED = ["offline", "launch_direction", "spin_axis", "club_path", "face_angle", "face_to_path"];

export const hasSideNames = (measure: string): boolean => SIDED.includes(measure);

/** A place for each shot of the set, and the last shot with its club: it may be of the set before. */
export function setView({ log, plan, measures }: FairState, progress: Progress, actions: FairActions): TemplateResult {
  const turn = progress.turn!;
  const shots = log!.shots.filter((shot) => shot.turn === turn.index);
  const last = log!.shots.at(-1);
  const places = Array.from({ length: turn.of }, (_, at) => shots[at] ?? null);
  return html`
    <div class="log-set">
      <p>${say("log-set")}</p>
      <ol>
        ${places.map((shot, at) => html`<li class=${at + 1 === turn.shot ? "to-hit" : ""}>${shot ? first(shot, log!.measures, measures) : html`<span aria-label=${say("log-open")}>·</span>`}</li>`)}
      </ol>
    </div>
    ${last ? lastShot(last, plan!.turns[last.turn]?.build ?? 0, progress, log!.measures, measures, actions) : nothing}`;
}

function lastShot(
  last: LoggedShot,
  club: number,
  { session }: Progress,
  record: readonly string[],
  measures: readonly Measure[],
  actions: FairActions,
): TemplateResult {
  const isMishit = last.note !== null;
  return html`
    <div class="log-last">
      <p>${say("log-last")} ${build(club, session.builds[club]?.name ?? "")} <strong>${all(last, record, measures)}</strong></p>
      <button type="button" aria-pressed=${isMishit} @click=${() => actions.mishit(!isMishit)}>${say("log-mishit")}</button>
    </div>`;
}

const shownOf = (shot: LoggedShot, measures: readonly Measure[]) => inUnitsShown(shot.values, measures);

/** Of the measure that was named before the test. */
function first(shot: LoggedShot, record: readonly string[], measures: readonly Measure[]): TemplateResult {
  const value = shownOf(shot, measures)[record[0] ?? ""] ?? null;
  const text = value === null ? "–" : short(value);
  return html`${text}${shot.note === null ? nothing : html`<span class="visually-hidden"> ${say("log-mishit")}</span><span aria-hidden="true">*</span>`}`;
}

/** Every number of the shot, in the order of the keys. */
function all(shot: LoggedShot, record: readonly string[], measures: readonly Measure[]): string {
  const shown = shownOf(shot, measures);
  return record
    .filter((id) => !isStrike(id) && (shown[id] ?? null) !== null)
    .map((id) => valued(id, shown[id]!, measures))
    .join(" · ");
}

/** A value outside what is usual, in the place of the keys: it is kept when it is said to be right. */
export function askedView(
  { measure, value }: Asking,
  measures: readonly Measure[],
  actions: FairActions,
): TemplateResult {
  const name = measures.find(({ id }) => id === measure)?.name ?? measure;
  return html`
    <div class="notice log-asked" role="alert">
      <p><strong>${say("log-odd", { value: valued(measure, value, measures), measure: name })}</strong></p>
      <p>${say("log-odd-help")}</p>
      <div class="buttons">
        <button type="button" class="primary" @click=${actions.typeAgain}>${say("log-odd-again")}</button>
        <button type="button" @click=${actions.keepAsked}>${say("log-odd-keep")}</button>
      </div>
    </div>`;
}

/** As it was typed, to a hundredth: what was converted on its way has no more digits than anybody typed. */
const short = (value: number): string =>
  String(Number(value.toFixed(2)))
    .replace(".", decimalMark())
    .replace("-", "−");

const valued = (id: string, value: number, measures: readonly Measure[]): string =>
  written(
    id,
    Number(value.toFixed(2)),
    null,
    measures.find((one) => one.id === id),
  );

/** A number on its way into the log, with its unit and its side. */
export function written(id: string, value: number | null, typed: string | null, measure: Measure | undefined): string {
  const unit = unitName(shownIn(measure?.unit ?? "").unit);
  const text = typed ?? (value === null ? "" : String(value));
  if (text === "") return `– ${unit}`;
  const shown = text.replace(".", decimalMark());
  if (hasSideNames(id))
    return `${shown.replace("-", "")} ${unit} ${text.startsWith("-") ? say("log-left") : say("log-right")}`;
  return `${shown.replace("-", "−")} ${unit}`;
}
