/** One big card: whose turn it is, which shot, and the keys to write it down. Made for one hand, gloves and sun. */
import { html, nothing, type TemplateResult } from "lit";
import type { Progress } from "../../core/planner.js";
import { decimalMark, number } from "../../format/values.js";
import { build } from "../../pieces/pieces.js";
import { trouble } from "../../pieces/trouble.js";
import { say } from "../../text/say.js";
import { isStrike, type Key, nextEmpty, turnedTo } from "../entry.js";
import type { FairActions, FairState } from "../state.js";
import { faceView } from "./face.js";
import { forgetView } from "./forget.js";
import { askedView, hasSideNames, setView, written } from "./set.js";

const KEYS: readonly Key[] = ["7", "8", "9", "back", "4", "5", "6", ".", "1", "2", "3", "side", "0"];
const KEY_NAMES = { back: "log-key-back", side: "log-key-side", ".": "log-key-point" } as const;
export function cardView(state: FairState, progress: Progress, actions: FairActions): TemplateResult {
  const { log, plan } = state;
  if (!log || !plan) return html``;
  return html`
    <div class="log" data-shots=${progress.hit}>
      ${!log.warm ? warmUp(plan.warm_up, actions) : progress.turn ? shot(state, progress, actions) : over(progress, actions)}
      ${keptNote(state, actions)} ${trouble(state.refusal)}
      ${log.warm ? look(progress, actions) : nothing}
      ${forgetView(state, actions)}
    </div>`;
}

const warmUp = (shots: number, actions: FairActions): TemplateResult => html`
  <div class="card log-card">
    <p class="log-place">${say("log-before")}</p>
    <p class="log-who">${shots > 0 ? say("log-warm-up", { count: shots }) : say("log-warm-up-free")}</p>
    <p>${say("log-warm-up-help")}</p>
    <div class="buttons"><button type="button" class="primary log-save" @click=${actions.warmedUp}>${say("log-warm")}</button></div>
  </div>`;

function shot(state: FairState, progress: Progress, actions: FairActions): TemplateResult {
  const turn = progress.turn!;
  const { entry, log } = state;
  const name = progress.session.builds[turn.build]?.name ?? "";
  const strike = log!.measures.filter(isStrike);
  const typed = log!.measures.filter((id) => !isStrike(id));
  return html`
    <div class="card log-card log-shot">
      <div class="log-told">
        <p class="log-place" aria-live="polite">${progress.words.place}</p>
        <p class="hint">${say("log-whole", { shots: progress.hit, of: progress.of })}</p>
        <p class="log-who">${build(turn.build, name)}</p>
        ${turn.rest ? html`<p class="log-rest">${say("log-rest")}</p>` : nothing}
        ${turn.change ? html`<p class="log-change">${progress.hit === 0 ? say("log-take") : say("log-change")}</p>` : nothing}
        ${setView(state, progress, actions)}
        <div class="log-fields">${typed.map((id) => field(id, state, actions))}</div>
        ${strike.length > 0 ? faceView(entry, strike, log!.hand, actions) : nothing}
      </div>
      <div class="log-hand">
        ${state.asking ? askedView(state.asking, state.measures, actions) : html`${typed.length > 0 ? keypad(state, typed, actions) : nothing} ${save(state, actions)}`}
      </div>
      <div class="log-under">
        <div class="buttons log-more">
          <button type="button" ?disabled=${log!.shots.length + log!.ended.length === 0} @click=${actions.undo}>${say("log-undo")}</button>
          <button type="button" @click=${actions.endSet}>${say("log-end-set")}</button>
        </div>
        ${pasting(state, actions)}
        ${progress.words.notes ? html`<p class="hint">${progress.words.notes}</p>` : nothing}
      </div>
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

/** Three rows of four keys, then 0 and the way to the next number. A key that the measure has no use for leaves its place empty. */
function keypad({ entry, measures }: FairState, typed: readonly string[], actions: FairActions): TemplateResult {
  const hasSides = (measures.find(({ id }) => id === entry.active)?.plausible.low ?? 0) < 0;
  const next = nextEmpty(entry, typed);
  return html`
    <div class="log-keys" role="group" aria-label=${say("log-keys")}>
      ${KEYS.map((key) =>
        key === "side" && !hasSides
          ? html`<span></span>`
          : html`
              <button type="button" class="log-key ${key === "0" ? "log-zero" : ""}" aria-label=${key === "back" || key === "side" || key === "." ? say(KEY_NAMES[key]) : key} @click=${() => actions.press(key)}>
                ${key === "side" ? (hasSideNames(entry.active) ? say("log-sides") : "±") : key === "back" ? "⌫" : key === "." ? decimalMark() : key}
              </button>`,
      )}
      ${
        typed.length < 2
          ? nothing
          : html`<button type="button" class="log-key log-next" ?disabled=${next === null} @click=${() => next !== null && actions.enter(turnedTo(entry, next))}>${say("log-next")}</button>`
      }
    </div>`;
}

function save({ entry, log }: FairState, actions: FairActions): TemplateResult {
  const measures = log!.measures;
  const ready = (entry.values[measures[0] ?? ""] ?? null) !== null;
  return html`
    <div class="buttons log-saving">
      <label class="option log-mishit">
        <input type="checkbox" .checked=${entry.mishit} @change=${(event: Event) => actions.enter({ mishit: (event.target as HTMLInputElement).checked })} />
        <span>${say("log-mishit")} <small>${say("log-mishit-counts")}</small></span>
      </label>
      <button type="button" class="primary log-save" ?disabled=${!ready} @click=${actions.save}>${say("log-keep")}</button>
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
      <summary>${say("log-paste")}</summary>
      <p class="hint">${say("log-paste-help", { order })}</p>
      <input aria-label=${say("log-paste-here")} autocomplete="off" placeholder=${say("log-paste-here")} @paste=${pasted}
        @change=${(event: Event) => {
          const input = event.target as HTMLInputElement;
          actions.paste(input.value);
          input.value = "";
        }} />
      ${typeof navigator.clipboard?.readText === "function" ? html`<button type="button" @click=${actions.pasteFromClipboard}>${say("paste")}</button>` : nothing}
      ${pasteTrouble ? html`<p class="notice trouble" role="alert">${pasteTrouble}</p>` : nothing}
    </details>`;
}

const over = (progress: Progress, actions: FairActions): TemplateResult => html`
  <div class="card log-card">
    <p class="log-place" aria-live="polite">${progress.words.place}</p>
    <p class="log-who">${say("n-shots", { count: progress.hit })}</p>
    <p>${progress.words.notes}</p>
    <div class="buttons log-more">
      <button type="button" @click=${actions.undo}>${say("log-undo-last")}</button>
      <button type="button" @click=${actions.exportCsv}>${say("log-save-file")}</button>
    </div>
  </div>`;

function look({ look_due, hit, words }: Progress, actions: FairActions): TemplateResult {
  if (hit === 0) return html``;
  return html`
    <div class="card log-look ${look_due ? "due" : ""}">
      <p>${words.look}</p>
      ${words.stricter ? html`<p class="hint">${words.stricter}</p>` : nothing}
      ${
        look_due
          ? html`<div class="buttons"><button type="button" class="primary" @click=${actions.look}>${say("log-look")}</button></div>`
          : html`
            <details>
              <summary>${say("log-look-early")}</summary>
              <p>${words.early || say("log-look-again")}</p>
              <div class="buttons"><button type="button" @click=${actions.look}>${say("log-look-now")}</button></div>
            </details>`
      }
    </div>`;
}

/** Said in numbers, so that nobody has to trust a green mark. */
function keptNote(state: FairState, actions: FairActions): TemplateResult | typeof nothing {
  const { isKept, isNewer, isPersistent, keptShots, log } = state;
  if (isKept === null || !log) return nothing;
  if (isKept && log.shots.length === 0)
    return html`<p class="hint log-kept">${say("log-kept-plan")} ${isPersistent === null ? nothing : say(isPersistent ? "kept-persistent" : "kept-not-persistent")}</p>`;
  if (isKept)
    return html`<p class="hint log-kept">${say("log-kept", { kept: number(keptShots, 0), count: log.shots.length })}</p>`;
  return html`
    <div class="notice trouble" role="alert">
      <p><strong>${say("log-not-kept")}</strong> ${say(isNewer ? "log-not-kept-newer" : "log-not-kept-why")}</p>
      <p>${say("log-not-kept-help")}</p>
      ${log.shots.length > 0 ? html`<div class="buttons"><button type="button" @click=${actions.exportCsv}>${say("log-save-file")}</button></div>` : nothing}
    </div>`;
}
