/** In the place of the shots: the grid or the form, loaded when it is opened, or the sheets of a workbook. */
import { html, type TemplateResult } from "lit";
import { later } from "../pieces/later.js";
import { part } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import { type Entry, entryKey, type State } from "../state/state.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";

const sheets = later(() => import("./sheets.js").then((module) => module.sheets));

/** Asked for once; the elements say by themselves when they are there. */
let isAsked = false;

export function entry(state: State, entry: Exclude<Entry, { kind: "photos" }>, actions: Actions): TemplateResult {
  if (entry.kind === "sheets") return sheets(actions.drawAgain, entry.workbook, actions);
  if (!isAsked) loadPart();
  const { kind, at, draft: brought } = entry;
  const given = at === null ? undefined : state.given[at];
  const clubs = state.read?.session.builds.map(({ name }) => name) ?? [];
  const done = (text: Parameters<Actions["entered"]>[0]) => actions.entered(text, at);
  const draft = brought ?? state.unfinished[entryKey(entry)] ?? given?.source.draft;
  const leave = (left: unknown) => actions.leave(left);
  const waiting = html`<div class="card entry-loading"><p class="hint">${say("loading")}</p><div class="buttons"><button type="button" @click=${() => actions.enter(null)}>${say("back")}</button></div></div>`;
  return part("shots", kind === "grid" ? say("entry-grid") : say("entry-averages"), shown());

  /** Columns have no names before the core has told them. */
  function shown(): TemplateResult {
    if (state.measures.length === 0) return waiting;
    return kind === "grid"
      ? html`<straight-answer-grid .measures=${state.measures} .draft=${draft} .clubs=${clubs} .read=${actions.read} .done=${done} .leave=${leave}>${waiting}</straight-answer-grid>`
      : html`<straight-answer-averages .measures=${state.measures} .draft=${draft} .clubs=${clubs} .read=${actions.read} .done=${done} .leave=${leave}>${waiting}</straight-answer-averages>`;
  }
}

function loadPart(): void {
  isAsked = true;
  withTexts(["entry"], () => import("./part.js")).catch(() => {
    isAsked = false;
    const text = document.querySelector(".entry-loading");
    if (text) text.textContent = say("not-loaded-entry");
  });
}
