/** One big card: whose turn it is, which shot, and the keys to write it down. Made for one hand, gloves and sun. */
import { html, nothing, type TemplateResult } from "lit";
import type { Measure } from "../../engine.js";
import { counted, number, unitName } from "../../format.js";
import type { Progress } from "../../planner.js";
import { build } from "../../views/pieces.js";
import { trouble } from "../../views/trouble.js";
import { nextEmpty, pressed, turnedTo, type Key } from "../entry.js";
import type { FairActions, FairState } from "../state.js";
import { faceView, isStrike } from "./face.js";
import { forgetView } from "./forget.js";

const KEYS: readonly Key[] = ["7", "8", "9", "back", "4", "5", "6", ".", "1", "2", "3", "side", "0"];
const KEY_NAMES: Partial<Record<Key, string>> = { back: "Delete the last digit", side: "Other side of zero", ".": "Point" };
/** Measures with two sides have a key for the sign; what the sides are called. */
const SIDES: Record<string, string> = {
  offline: "L / R", launch_direction: "L / R", spin_axis: "L / R", club_path: "L / R", face_angle: "L / R", face_to_path: "L / R",
};

export function cardView(state: FairState, progress: Progress, actions: FairActions): TemplateResult {
  const { log, plan } = state;
  if (!log || !plan) return html``;
  return html`
    <div class="log" data-shots=${progress.hit}>
      ${!log.warm ? warmUp(plan.warm_up, actions) : progress.turn ? shot(state, progress, actions) : over(progress, actions)}
      ${keptNote(state)} ${trouble(state.refusal)}
      ${log.warm ? look(progress, actions) : nothing}
      ${forgetView(actions)}
    </div>`;
}

const warmUp = (shots: number, actions: FairActions): TemplateResult => html`
  <div class="card log-card">
    <p class="log-place">Before the first shot</p>
    <p class="log-who">${shots > 0 ? `Warm up: ${counted(shots, "ball")}` : "Warm up as you like"}</p>
    <p>They do not count. Use any of the clubs, or all of them. Stop if anything hurts, and mind who stands near.</p>
    <div class="buttons"><button type="button" class="primary log-save" @click=${actions.warmedUp}>I am warm</button></div>
  </div>`;

function shot(state: FairState, progress: Progress, actions: FairActions): TemplateResult {
  const turn = progress.turn!;
  const { entry, log } = state;
  const name = progress.session.builds[turn.build]?.name ?? "";
  const strike = log!.measures.filter(isStrike);
  const typed = log!.measures.filter((id) => !isStrike(id));
  return html`
    <div class="card log-card">
      <p class="log-place" aria-live="polite">${progress.words.place}</p>
      <p class="log-who">${build(turn.build, name)}</p>
      ${turn.rest ? html`<p class="log-rest">Rest two minutes first. Drink something.</p>` : nothing}
      ${turn.change ? html`<p class="log-change">${progress.hit === 0 ? "Take this club." : "Change the club."}</p>` : nothing}
      <div class="log-fields">${typed.map((id) => field(id, state, actions))}</div>
      ${strike.length > 0 ? faceView(entry, strike, log!.hand, actions) : nothing}
      ${typed.length > 0 ? keypad(state, typed, actions) : nothing}
      ${save(state, actions)}
      <div class="buttons log-more">
        <button type="button" ?disabled=${log!.shots.length + log!.ended.length === 0} @click=${actions.undo}>Undo</button>
        <button type="button" @click=${actions.endSet}>End this set</button>
      </div>
      ${pasting(state, actions)}
      <p class="hint">${counted(progress.hit, "shot")} of ${progress.of}. ${progress.words.notes}</p>
    </div>`;
}

function field(id: string, { entry, measures }: FairState, actions: FairActions): TemplateResult {
  const measure = measures.find((one) => one.id === id);
  const active = entry.active === id;
  return html`
    <button type="button" class="log-field ${active ? "active" : ""}" aria-pressed=${active} @click=${() => actions.enter(turnedTo(entry, id))}>
      <span class="log-name">${measure?.name ?? id}</span>
      <span class="log-value">${written(id, entry.values[id] ?? null, active ? entry.typed : null, measure)}</span>
    </button>`;
}

function written(id: string, value: number | null, typed: string | null, measure: Measure | undefined): string {
  const unit = unitName(measure?.unit ?? "");
  const text = typed ?? (value === null ? "" : String(value));
  if (text === "") return `– ${unit}`;
  if (id in SIDES) return `${text.replace("-", "")} ${unit} ${text.startsWith("-") ? "L" : "R"}`;
  return `${text.replace("-", "−")} ${unit}`;
}

/** Three rows of four keys, then 0 and the way to the next number. A key that the measure has no use for leaves its place empty. */
function keypad({ entry, measures }: FairState, typed: readonly string[], actions: FairActions): TemplateResult {
  const press = (key: Key) => actions.enter(pressed(entry, key));
  const hasSides = (measures.find(({ id }) => id === entry.active)?.plausible.low ?? 0) < 0;
  const next = nextEmpty(entry, typed);
  return html`
    <div class="log-keys" role="group" aria-label="Number keys">
      ${KEYS.map((key) =>
        key === "side" && !hasSides
          ? html`<span></span>`
          : html`
              <button type="button" class="log-key ${key === "0" ? "log-zero" : ""}" aria-label=${KEY_NAMES[key] ?? key} @click=${() => press(key)}>
                ${key === "side" ? (SIDES[entry.active] ?? "±") : key === "back" ? "⌫" : key}
              </button>`,
      )}
      <button type="button" class="log-key log-next" ?disabled=${next === null} @click=${() => next !== null && actions.enter(turnedTo(entry, next))}>Next number</button>
    </div>`;
}

function save({ entry, log }: FairState, actions: FairActions): TemplateResult {
  const measures = log!.measures;
  const ready = (entry.values[measures[0] ?? ""] ?? null) !== null;
  return html`
    <div class="buttons log-saving">
      <label class="option log-mishit">
        <input type="checkbox" .checked=${entry.mishit} @change=${(event: Event) => actions.enter({ mishit: (event.target as HTMLInputElement).checked })} />
        <span>Mishit <small>it counts</small></span>
      </label>
      <button type="button" class="primary log-save" ?disabled=${!ready} @click=${actions.save}>Keep this shot</button>
    </div>`;
}

function pasting({ pasteTrouble, log, measures }: FairState, actions: FairActions): TemplateResult {
  const order = log!.measures.map((id) => measures.find((one) => one.id === id)?.name ?? id).join(", ");
  const pasted = (event: ClipboardEvent) => {
    event.preventDefault();
    actions.paste(event.clipboardData?.getData("text/plain") ?? "");
  };
  return html`
    <details class="log-paste">
      <summary>Paste a shot or a set</summary>
      <p class="hint">One row for each shot: ${order}.</p>
      <input aria-label="Paste here" autocomplete="off" placeholder="Paste here" @paste=${pasted}
        @change=${(event: Event) => { const input = event.target as HTMLInputElement; actions.paste(input.value); input.value = ""; }} />
      ${typeof navigator.clipboard?.readText === "function" ? html`<button type="button" @click=${actions.pasteFromClipboard}>Paste</button>` : nothing}
      ${pasteTrouble ? html`<p class="notice trouble" role="alert">${pasteTrouble}</p>` : nothing}
    </details>`;
}

const over = (progress: Progress, actions: FairActions): TemplateResult => html`
  <div class="card log-card">
    <p class="log-place" aria-live="polite">${progress.words.place}</p>
    <p class="log-who">${counted(progress.hit, "shot")}</p>
    <p>${progress.words.notes}</p>
    <div class="buttons log-more">
      <button type="button" @click=${actions.undo}>Undo the last shot</button>
      <button type="button" @click=${actions.exportCsv}>Save as a file</button>
    </div>
  </div>`;

function look({ look_due, hit, words }: Progress, actions: FairActions): TemplateResult {
  if (hit === 0) return html``;
  return html`
    <div class="card log-look ${look_due ? "due" : ""}">
      <p>${words.look}</p>
      ${words.stricter ? html`<p class="hint">${words.stricter}</p>` : nothing}
      ${look_due
        ? html`<div class="buttons"><button type="button" class="primary" @click=${actions.look}>Look at the answer</button></div>`
        : html`
            <details>
              <summary>Look now all the same</summary>
              <p>${words.early || "This look was taken already; looking at it again costs nothing."}</p>
              <div class="buttons"><button type="button" @click=${actions.look}>Look now</button></div>
            </details>`}
    </div>`;
}

/** Said in numbers, so that nobody has to trust a green mark. */
function keptNote({ isKept, keptShots, log }: FairState): TemplateResult | typeof nothing {
  if (isKept === null || !log) return nothing;
  if (isKept && log.shots.length === 0) return html`<p class="hint log-kept">The plan is kept on this device, and so is each shot from here on.</p>`;
  if (isKept) return html`<p class="hint log-kept">Kept on this device: ${number(keptShots, 0)} of ${counted(log.shots.length, "shot")}.</p>`;
  return html`
    <div class="notice trouble" role="alert">
      <p><strong>This device does not keep the shots.</strong> Its store is full or blocked, as in a private window.</p>
      <p>They stay on the screen: leave this page open, and save the shots as a file when you are done.</p>
    </div>`;
}
