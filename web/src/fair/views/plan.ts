/** The form of a plan, what it will show, and what a longer or a shorter one would. */
import { html, nothing, type TemplateResult } from "lit";
import { textSize } from "../../chart/text-size.js";
import type { Goal, Measure } from "../../core/engine.js";
import type { Length, LookWord, Plan, PlanLimits } from "../../core/planner.js";
import { isSpread, marginScale } from "../../format/margin.js";
import {
  chosenOf,
  goalName,
  goalsFor,
  type MeasureView,
  measureView,
  plain,
  share,
  typedNumber,
  unitName,
  withUnit,
} from "../../format/values.js";
import { handChoice } from "../../pieces/hand-choice.js";
import { build, choice, marker } from "../../pieces/pieces.js";
import { trouble } from "../../pieces/trouble.js";
import { say } from "../../text/say.js";
import { drawPower } from "../draw-power.js";
import { isStrike } from "../entry.js";
import { doubled, powerGeometry } from "../power.js";
import type { FairActions, FairState } from "../state.js";
import { looksView } from "./looks.js";

/** Choices of the form: the core takes more. */
const WARM_UPS = [0, 5, 10, 15, 20];
const LOOKS: readonly LookWord[] = ["halfway", "at_end", "every_round"];

/** The plan as it stands, with its start first; all else is behind a tap. The form offers nothing that the core would refuse. */
export function planView(state: FairState, limits: PlanLimits, actions: FairActions): TemplateResult {
  const { plan, sent } = state;
  return html`
    ${
      sent
        ? html`
          <div class="notice no-print" role="status">
            <p><strong>${say("fair-sent")}</strong> ${say("fair-sent-help")}</p>
            ${sent.map((message) => html`<p>${message}</p>`)}
          </div>`
        : nothing
    }
    <div class="fair-halves no-print">
      <div>
        ${plan ? made(plan, state, actions) : html`<div class="card">${trouble(state.refusal)}</div>`}
        <details class="card fair-plan">
          <summary>${say("fair-change")}</summary>
          <p class="hint">${say("fair-help")}</p>
          <form class="fair-form" @submit=${(event: Event) => event.preventDefault()}>
            ${clubs(state, limits, actions)} ${whatCounts(state, actions)} ${length(state, limits, actions)} ${more(state, limits, actions)}
          </form>
          ${plan ? record(plan, state, actions) : nothing}
        </details>
      </div>
      ${plan ? promised(plan, state, actions) : nothing}
    </div>`;
}

/** What was decided, what it will show, and the start. */
function made(plan: Plan, state: FairState, actions: FairActions): TemplateResult {
  const { words } = plan;
  const offline = state.worksOffline ? html`<strong>${say("fair-offline")}</strong> ` : nothing;
  return html`
    <div class="card fair-made">
      <p class="fair-clubs-made">${plan.builds.map((name, at) => build(at, name))} <span>${viewOf(plan.measure, state.measures).name}</span></p>
      <p class="fair-headline">${words.headline}</p>
      <p class="fair-power" aria-live="polite">${words.power}</p>
      ${words.same_club ? html`<p>${words.same_club}</p>` : nothing}
      ${trouble(state.refusal)}
      <label class="row fair-who"><span>${say("fair-who")}</span>
        <input id="fair-who" list="fair-names" autocomplete="off" maxlength="60" .value=${state.name}
          @input=${(event: Event) => actions.callTester((event.target as HTMLInputElement).value)} /></label>
      <datalist id="fair-names">${state.names.map((name) => html`<option value=${name}></option>`)}</datalist>
      <div class="buttons"><button type="button" class="primary" ?disabled=${!state.isPlanned} @click=${actions.start}>${say("fair-start")}</button></div>
      <p class="hint">${offline}${say("fair-kept-note")}</p>
      ${words.beside ? html`<p class="hint fair-beside">${words.beside}</p>` : nothing}
    </div>`;
}

function clubs({ request }: FairState, limits: PlanLimits, actions: FairActions): TemplateResult {
  const names = request.builds;
  const rename = (at: number, name: string) =>
    actions.change({ builds: names.map((old, index) => (index === at ? name : old)) });
  const shown = request.same_club ? names.slice(0, 1) : names;
  return html`
    <fieldset>
      <legend>${request.same_club ? say("fair-the-club") : say("fair-the-clubs")}</legend>
      <ul class="fair-clubs">
        ${shown.map(
          (name, at) => html`
            <li>
              ${marker(at)}
              <input aria-label=${say("fair-club-name", { number: at + 1 })} autocomplete="off" maxlength="60" .value=${name}
                @change=${(event: Event) => rename(at, (event.target as HTMLInputElement).value)} />
              ${
                names.length > limits.builds.least && at > 0 && !request.same_club
                  ? html`<button type="button" aria-label=${say("fair-club-out", { number: at + 1 })}
                    @click=${() => actions.change({ builds: names.filter((_, index) => index !== at) })}>✕</button>`
                  : nothing
              }
            </li>`,
        )}
      </ul>
      <div class="buttons">
        ${
          names.length < limits.builds.most && !request.same_club
            ? html`<button type="button" @click=${() => actions.change({ builds: [...names, say("fair-new-driver-n", { number: names.length })] })}>${say("fair-add-club")}</button>`
            : nothing
        }
        <label class="option">
          <input type="checkbox" .checked=${request.same_club}
            @change=${(event: Event) => actions.change({ same_club: (event.target as HTMLInputElement).checked })} />
          <span>${say("fair-same-club")}</span>
        </label>
      </div>
    </fieldset>`;
}

function whatCounts({ request, measures, plan }: FairState, actions: FairActions): TemplateResult {
  const measure = viewOf(request.measure, measures);
  const options = measures.map(({ id, name }) => ({ value: id, label: name }));
  const goals = goalsFor(request.measure, measures).map((goal) => ({
    value: goal,
    label: goalName(goal, request.measure),
  }));
  const tighter = request.goal === "tighter";
  const margin = request.margin ?? plan?.margin ?? measure.margin;
  const { unit, shown, taken } = marginScale({ goal: tighter ? "tighter" : "higher" }, measure);
  return html`
    <label class="row"><span>${say("fair-what-counts")}</span>
      ${choice(say("fair-what-counts"), options, request.measure, (id) => actions.change({ measure: id, goal: undefined, margin: undefined, spread: undefined }))}</label>
    <label class="row"><span>${say("fair-better")}</span>
      ${choice(say("fair-better"), goals, request.goal ?? plan?.goal ?? "", (goal) => actions.change({ goal: goal as Goal, margin: undefined }))}</label>
    <label class="row"><span>${say("fair-margin")}</span>
      ${amount("margin", margin === null ? "" : plain(shown(margin)), unit, (value) => actions.change({ margin: value === null ? undefined : taken(value) }))}</label>`;
}

function length(
  { request, plan }: FairState,
  limits: PlanLimits,
  actions: FairActions,
): TemplateResult | typeof nothing {
  if (!plan) return nothing;
  const { rounds, set } = plan;
  const step = (by: number) => actions.change({ rounds: rounds + by });
  return html`
    <div class="row" role="group" aria-labelledby="fair-rounds-label">
      <span id="fair-rounds-label">${say("fair-rounds-of", { count: set })}</span>
      <span class="stepper">
        <button type="button" aria-label=${say("fair-round-less")} ?disabled=${rounds <= limits.rounds.least} @click=${() => step(-1)}>−</button>
        <output class="amount" id="fair-rounds" aria-live="polite">${rounds}</output>
        <button type="button" aria-label=${say("fair-round-more")} ?disabled=${rounds >= limits.rounds.most} @click=${() => step(1)}>+</button>
      </span>
    </div>
    <label class="row"><span>${say("fair-look")}</span>
      ${choice(
        say("fair-look-when"),
        LOOKS.map((value) => ({ value, label: say(`fair-look-${value}`) })),
        typeof request.looks === "string" ? request.looks : "halfway",
        (looks) => actions.change({ looks: looks as LookWord }),
      )}</label>`;
}

function more(
  { request, plan, current, measures }: FairState,
  limits: PlanLimits,
  actions: FairActions,
): TemplateResult {
  const measure = viewOf(request.measure, measures);
  const counts = (all: readonly number[]) => all.map((n) => ({ value: String(n), label: String(n) }));
  const sets = Array.from({ length: limits.set.most - limits.set.least + 1 }, (_, at) => limits.set.least + at);
  const drawn = request.seed !== undefined;
  return html`
    <details class="fair-more">
      <summary>${say("fair-more")}</summary>
      <label class="row"><span>${say("fair-set")}</span>
        ${choice(say("fair-set-label"), counts(sets), String(request.set ?? plan?.set), (set) => actions.change({ set: Number(set) }))}</label>
      <label class="row"><span>${say("fair-warm")}</span>
        ${choice(say("fair-warm-label"), counts(WARM_UPS), String(request.warm_up ?? plan?.warm_up), (n) => actions.change({ warm_up: Number(n) }))}</label>
      ${
        request.goal === "tighter"
          ? nothing
          : html`
        <label class="row"><span>${say("fair-spread")}</span>
          ${amount("spread", spreadShown(request.spread, plan, measure), unitName(measure.unit), (value) => actions.change({ spread: value === null ? undefined : value / measure.scale }))}</label>`
      }
      ${
        current
          ? html`
        <label class="option">
          <input type="checkbox" .checked=${request.earlier !== undefined}
            @change=${(event: Event) => actions.change({ earlier: (event.target as HTMLInputElement).checked ? current.session : undefined })} />
          <span>${say("fair-earlier")}</span>
        </label>`
          : nothing
      }
      <label class="option">
        <input type="checkbox" .checked=${drawn}
          @change=${(event: Event) => actions.change({ seed: (event.target as HTMLInputElement).checked ? 1 : undefined })} />
        <span>${say("fair-drawn")}</span>
      </label>
      ${
        drawn
          ? html`<label class="row"><span>${say("fair-seed")}</span>
        ${amount("seed", String(request.seed), "", (value) => actions.change({ seed: Math.max(0, Math.round(value ?? 1)) }))}</label>`
          : nothing
      }
    </details>`;
}

/** What was said, or to a decimal what the core supposes. */
function spreadShown(said: number | undefined, plan: Plan | null, measure: MeasureView): string {
  if (said !== undefined) return plain(chosenOf(said, measure));
  return plan?.spread ? plain(plan.spread.value * measure.scale, 1) : "";
}

/** A test is of a measure of the trade. */
const viewOf = (id: string, measures: readonly Measure[]): MeasureView => measureView(id, measures, { custom: [] });

const amount = (id: string, shown: string, unit: string, taken: (value: number | null) => void): TemplateResult => html`
  <span class="amount">
    <input id="fair-${id}" inputmode="decimal" autocomplete="off" size="6" .value=${shown}
      @change=${(event: Event) => taken(typedNumber((event.target as HTMLInputElement).value))} />
    ${unit ? html`<span class="unit">${unit}</span>` : nothing}
  </span>`;

function promised(plan: Plan, state: FairState, actions: FairActions): TemplateResult {
  const { words } = plan;
  return html`
    <div class="fair-promise">
      <details class="card">
        <summary>${say("fair-finds")}</summary>
        ${words.same ? html`<p>${words.same}</p>` : nothing}
        ${plan.power ? lengths(plan, state.measures) : nothing}
        ${words.spread ? html`<p class="hint">${words.spread}</p>` : nothing}
      </details>
      <details class="card">
        <summary>${say("fair-keeps-fair")}</summary>
        <p>${words.order} ${words.looks}</p>
        ${plan.looks.length > 1 ? looksView(plan) : nothing}
        <ul class="fair-cautions">${plan.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
      </details>
      <div class="buttons">
        <button type="button" @click=${actions.print}>${say("fair-print")}</button>
        <button type="button" @click=${actions.copyLink}>${say("fair-copy-link")}</button>
        ${actions.shareLink ? html`<button type="button" @click=${actions.shareLink}>${say("fair-share-plan")}</button>` : nothing}
      </div>
      <p class="fair-done" role="status">${state.done}</p>
    </div>`;
}

function lengths(plan: Plan, measures: readonly Measure[]): TemplateResult {
  const measure = viewOf(plan.measure, measures);
  const { shown } = marginScale(plan, measure);
  const sized = (margin: number, decimals?: number) =>
    isSpread(plan) ? withUnit(plain(shown(margin), decimals), "%") : withUnit(plain(shown(margin)), measure.unit);
  const [size, double] = [sized(plan.margin), sized(doubled(plan), 0)];
  const rows = plan.lengths;
  const told = rows.map((row) =>
    say("fair-lengths-each", {
      rounds: row.rounds,
      minutes: row.minutes,
      margin: counted(row.margin_found),
      double: counted(row.double_found),
    }),
  );
  return html`
    <figure class="fair-lengths">
      <figcaption>${say("fair-lengths")}</figcaption>
      ${drawPower(powerGeometry(rows, textSize()), {
        alternative: say("fair-lengths-alternative", { margin: size, double, each: told.join(". ") }),
        margin: size,
        double,
        rounds: (row) => String(row.rounds),
      })}
      <div class="scroll" tabindex="0" role="group" aria-label=${say("fair-lengths-table")}>
        <table>
          <thead><tr><th scope="col">${say("fair-rounds")}</th><th scope="col" class="balls">${say("fair-balls")}</th><th scope="col">${say("fair-minutes")}</th><th scope="col">${size}</th><th scope="col">${double}</th><th scope="col">${say("fair-same")}</th></tr></thead>
          <tbody>${rows.map(lengthRow)}</tbody>
        </table>
      </div>
      <p class="hint">${say("fair-same-note", { margin: size })}</p>
    </figure>`;
}

const counted = (chance: number | null): string => (chance === null ? "–" : share(chance));

const lengthRow = (row: Length): TemplateResult => html`
  <tr class=${row.is_plan ? "is-plan" : ""}>
    <th scope="row">${row.rounds}${row.is_plan ? html`<span class="visually-hidden"> ${say("fair-this-plan")}</span>` : nothing}</th>
    <td class="balls">${row.balls}</td><td>${row.minutes}</td><td>${counted(row.margin_found)}</td><td>${counted(row.double_found)}</td><td>${counted(row.same)}</td>
  </tr>`;

function record(plan: Plan, { record: chosen }: FairState, actions: FairActions): TemplateResult {
  const toggle = (id: string, on: boolean) =>
    actions.changeRecord(on ? [...chosen, id] : chosen.filter((one) => one !== id));
  return html`
    <fieldset class="fair-record">
      <legend>${say("fair-record")}</legend>
      ${plan.record.map(
        ({ measure, name, why, needed }) => html`
          <label class="option">
            <input type="checkbox" .checked=${chosen.includes(measure)} ?disabled=${needed}
              @change=${(event: Event) => toggle(measure, (event.target as HTMLInputElement).checked)} />
            <span><strong>${name}</strong> <small>${why}</small></span>
          </label>`,
      )}
      ${chosen.some(isStrike) ? handChoice("fair", actions.hand() ?? "right", actions.chooseHand) : nothing}
    </fieldset>`;
}

/** A club with its marker, for the sheet and the card. */
export const club = (plan: Plan, at: number): TemplateResult => build(at, plan.builds[at] ?? "");
