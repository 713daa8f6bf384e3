/** The form of a plan, what it will show, and what a longer or a shorter one would. */
import { html, nothing, type TemplateResult } from "lit";
import { drawPower } from "../../chart/draw-power.js";
import { powerGeometry } from "../../chart/power.js";
import type { Goal, Measure } from "../../engine.js";
import { counted, goalName, goalsFor, percent, plain, typedNumber, unitName, withUnit } from "../../format.js";
import type { Length, LookWord, Plan } from "../../planner.js";
import { handChoice } from "../../views/hand.js";
import { build, choice, marker } from "../../views/pieces.js";
import { trouble } from "../../views/trouble.js";
import type { FairActions, FairState } from "../state.js";
import { isStrike } from "./face.js";
import { looksView } from "./looks.js";

const MOST_CLUBS = 8;
const LOOKS: readonly { value: LookWord; label: string }[] = [
  { value: "halfway", label: "Halfway and at end" },
  { value: "at_end", label: "Only at the end" },
  { value: "every_round", label: "After every round" },
];

export function planView(state: FairState, actions: FairActions): TemplateResult {
  const { plan, refusal, sent } = state;
  return html`
    ${sent
      ? html`
          <div class="notice no-print" role="status">
            <p><strong>This plan came with the link.</strong> Look it over, then start it on this phone.</p>
            ${sent.map((message) => html`<p>${message}</p>`)}
          </div>`
      : nothing}
    <div class="card fair-plan no-print">
      <p class="hint">Decide before the first ball what counts. Then hit the clubs in turn and keep every shot.</p>
      <form class="fair-form" @submit=${(event: Event) => event.preventDefault()}>
        ${clubs(state, actions)} ${whatCounts(state, actions)} ${length(state, actions)} ${more(state, actions)}
      </form>
      ${trouble(refusal)}
    </div>
    ${plan ? promised(plan, state, actions) : nothing}`;
}

function clubs({ request }: FairState, actions: FairActions): TemplateResult {
  const names = request.builds;
  const rename = (at: number, name: string) => actions.change({ builds: names.map((old, index) => (index === at ? name : old)) });
  const shown = request.same_club ? names.slice(0, 1) : names;
  return html`
    <fieldset>
      <legend>${request.same_club ? "The club" : "The clubs, yours first"}</legend>
      <ul class="fair-clubs">
        ${shown.map(
          (name, at) => html`
            <li>
              ${marker(at)}
              <input aria-label="Name of club ${at + 1}" autocomplete="off" maxlength="60" .value=${name}
                @change=${(event: Event) => rename(at, (event.target as HTMLInputElement).value)} />
              ${names.length > 2 && at > 0 && !request.same_club
                ? html`<button type="button" aria-label="Take out club ${at + 1}"
                    @click=${() => actions.change({ builds: names.filter((_, index) => index !== at) })}>✕</button>`
                : nothing}
            </li>`,
        )}
      </ul>
      <div class="buttons">
        ${names.length < MOST_CLUBS && !request.same_club
          ? html`<button type="button" @click=${() => actions.change({ builds: [...names, `New driver ${names.length}`] })}>Add a club</button>`
          : nothing}
        <label class="option">
          <input type="checkbox" .checked=${request.same_club}
            @change=${(event: Event) => actions.change({ same_club: (event.target as HTMLInputElement).checked })} />
          <span>One club under two labels, to see what luck does</span>
        </label>
      </div>
    </fieldset>`;
}

function whatCounts({ request, measures, plan }: FairState, actions: FairActions): TemplateResult {
  const measure = measures.find((one) => one.id === request.measure);
  const options = measures.map(({ id, name }) => ({ value: id, label: name }));
  const goals = goalsFor(request.measure, measures).map((goal) => ({ value: goal, label: goalName(goal, request.measure) }));
  const tighter = request.goal === "tighter";
  const margin = request.margin ?? plan?.margin ?? measure?.margin;
  const shown = margin === undefined ? "" : plain(tighter ? (margin - 1) * 100 : margin);
  const taken = (value: number) => (tighter ? 1 + value / 100 : value);
  return html`
    <label class="row"><span>What counts</span>
      ${choice("What counts", options, request.measure, (id) => actions.change({ measure: id, goal: undefined, margin: undefined, spread: undefined }))}</label>
    <label class="row"><span>Better is</span>
      ${choice("Better is", goals, request.goal ?? plan?.goal ?? "higher", (goal) => actions.change({ goal: goal as Goal, margin: undefined }))}</label>
    <label class="row"><span>Smallest difference that matters</span>
      ${amount("margin", shown, tighter ? "%" : unitName(measure?.unit ?? ""), (value) => actions.change({ margin: value === null ? undefined : taken(value) }))}</label>`;
}

function length({ request, plan }: FairState, actions: FairActions): TemplateResult {
  const rounds = plan?.rounds ?? 10;
  const step = (by: number) => actions.change({ rounds: Math.min(60, Math.max(2, rounds + by)) });
  return html`
    <div class="row" role="group" aria-labelledby="fair-rounds-label">
      <span id="fair-rounds-label">Rounds of ${counted(plan?.set ?? 3, "shot")}</span>
      <span class="stepper">
        <button type="button" aria-label="One round less" ?disabled=${rounds <= 2} @click=${() => step(-1)}>−</button>
        <output class="amount" id="fair-rounds" aria-live="polite">${rounds}</output>
        <button type="button" aria-label="One round more" ?disabled=${rounds >= 60} @click=${() => step(1)}>+</button>
      </span>
    </div>
    <label class="row"><span>Look at the answer</span>
      ${choice("When to look at the answer", LOOKS, typeof request.looks === "string" ? request.looks : "halfway", (looks) => actions.change({ looks: looks as LookWord }))}</label>`;
}

function more({ request, plan, current, measures }: FairState, actions: FairActions): TemplateResult {
  const unit = unitName(measures.find((one) => one.id === request.measure)?.unit ?? "");
  const sets = [1, 2, 3, 4, 5].map((n) => ({ value: String(n), label: String(n) }));
  const warm = [0, 5, 10, 15, 20].map((n) => ({ value: String(n), label: String(n) }));
  const drawn = request.seed !== undefined;
  return html`
    <details class="fair-more">
      <summary>More choices</summary>
      <label class="row"><span>Shots in a row with one club</span>
        ${choice("Shots in a row", sets, String(request.set ?? 3), (set) => actions.change({ set: Number(set) }))}</label>
      <label class="row"><span>Warm-up shots, not counted</span>
        ${choice("Warm-up shots", warm, String(request.warm_up ?? 10), (n) => actions.change({ warm_up: Number(n) }))}</label>
      ${request.goal === "tighter" ? nothing : html`
        <label class="row"><span>How far your shots scatter</span>
          ${amount("spread", request.spread === undefined ? (plan?.spread ? plain(plan.spread.value, 1) : "") : plain(request.spread), unit, (value) => actions.change({ spread: value ?? undefined }))}</label>`}
      ${current ? html`
        <label class="option">
          <input type="checkbox" .checked=${request.earlier !== undefined}
            @change=${(event: Event) => actions.change({ earlier: (event.target as HTMLInputElement).checked ? current.session : undefined })} />
          <span>Take the scatter from the session on this page</span>
        </label>` : nothing}
      <label class="option">
        <input type="checkbox" .checked=${drawn}
          @change=${(event: Event) => actions.change({ seed: (event.target as HTMLInputElement).checked ? 1 : undefined })} />
        <span>Draw the order in each round</span>
      </label>
      ${drawn ? html`<label class="row"><span>Drawn from the number</span>
        ${amount("seed", String(request.seed), "", (value) => actions.change({ seed: Math.max(0, Math.round(value ?? 1)) }))}</label>` : nothing}
    </details>`;
}

const amount = (id: string, shown: string, unit: string, taken: (value: number | null) => void): TemplateResult => html`
  <span class="amount">
    <input id="fair-${id}" inputmode="decimal" autocomplete="off" size="6" .value=${shown}
      @change=${(event: Event) => taken(typedNumber((event.target as HTMLInputElement).value))} />
    ${unit ? html`<span class="unit">${unit}</span>` : nothing}
  </span>`;

function promised(plan: Plan, state: FairState, actions: FairActions): TemplateResult {
  const { words } = plan;
  return html`
    <div class="card fair-promise no-print">
      <p class="fair-headline">${words.headline}</p>
      <p class="fair-power" aria-live="polite">${words.power}</p>
      ${words.same ? html`<p>${words.same}</p>` : nothing}
      ${words.same_club ? html`<p>${words.same_club}</p>` : nothing}
      ${plan.power ? lengths(plan, state.measures) : nothing}
      ${words.spread ? html`<p class="hint">${words.spread}</p>` : nothing}
      <p class="hint">${words.order} ${words.looks}</p>
      ${plan.looks.length > 1 ? looksView(plan) : nothing}
      ${record(plan, state, actions)}
      <ul class="fair-cautions">${plan.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
      <div class="buttons">
        <button type="button" class="primary" @click=${actions.start}>Start the test on this phone</button>
        <button type="button" @click=${actions.print}>Print the sheet</button>
        <button type="button" @click=${actions.copyLink}>Copy the plan as a link</button>
        ${actions.shareLink ? html`<button type="button" @click=${actions.shareLink}>Share the plan…</button>` : nothing}
      </div>
      <p class="fair-done" role="status">${state.done}</p>
      <p class="hint">Once started, every shot is kept on this device, and only here, until you forget it.</p>
    </div>`;
}

function lengths(plan: Plan, measures: readonly Measure[]): TemplateResult {
  const unit = measures.find((one) => one.id === plan.measure)?.unit ?? "";
  const size = plan.goal === "tighter" ? `${plain((plan.margin - 1) * 100)} %` : withUnit(plain(plan.margin), unit);
  const double = plan.goal === "tighter" ? `${plain((plan.margin ** 2 - 1) * 100, 0)} %` : withUnit(plain(plan.margin * 2), unit);
  const rows = plan.lengths;
  const told = rows.map((row) => `${row.rounds} rounds, ${row.minutes} minutes: ${share(row.margin_found)} and ${share(row.double_found)}`);
  return html`
    <figure class="fair-lengths">
      <figcaption>How often a true difference is found, by the length of the test</figcaption>
      ${drawPower(powerGeometry(rows), {
        alternative: `Found with a true difference of ${size} and of ${double}. ${told.join(". ")}.`,
        margin: size,
        double,
        rounds: (row) => String(row.rounds),
      })}
      <div class="scroll" tabindex="0" role="group" aria-label="What shorter and longer tests would show">
        <table>
          <thead><tr><th scope="col">Rounds</th><th scope="col" class="balls">Balls</th><th scope="col">Minutes</th><th scope="col">${size}</th><th scope="col">${double}</th><th scope="col">Same</th></tr></thead>
          <tbody>${rows.map(lengthRow)}</tbody>
        </table>
      </div>
      <p class="hint">Same: how often truly equal clubs are called the same within ${size}.</p>
    </figure>`;
}

const share = (chance: number | null): string => (chance === null ? "–" : percent(chance));

const lengthRow = (row: Length): TemplateResult => html`
  <tr class=${row.is_plan ? "is-plan" : ""}>
    <th scope="row">${row.rounds}${row.is_plan ? html`<span class="visually-hidden"> (this plan)</span>` : nothing}</th>
    <td class="balls">${row.balls}</td><td>${row.minutes}</td><td>${share(row.margin_found)}</td><td>${share(row.double_found)}</td><td>${share(row.same)}</td>
  </tr>`;

function record(plan: Plan, { record: chosen }: FairState, actions: FairActions): TemplateResult {
  const toggle = (id: string, on: boolean) => actions.changeRecord(on ? [...chosen, id] : chosen.filter((one) => one !== id));
  return html`
    <fieldset class="fair-record">
      <legend>Write down for every shot</legend>
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
