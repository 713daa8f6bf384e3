/** The clubs as read: counts, a name that can be changed with a tap, and whose shots they are where the text does not say. */
import { html, nothing, type TemplateResult } from "lit";
import type { Session } from "../core/engine.js";
import { buildCounts, countText } from "../format/values.js";
import { build, foreign } from "../pieces/pieces.js";
import type { Actions } from "../state/actions.js";
import { type Given, isNumbered, unnamed } from "../state/texts.js";
import { say, sayAround } from "../text/say.js";

export function clubs(session: Session, actions: Actions): TemplateResult {
  const counts = buildCounts(session);
  if (session.builds.length === 0) return html`<p class="question">${say("no-shots")}</p>`;
  return html`
    <h3 class="question" id="read-title" tabindex="-1">${say("read-title")}</h3>
    <ul class="builds">
      ${session.builds.map(({ name }, index) => {
        const count = counts[index];
        return html`
          <li>
            ${build(index, name)} <span class="count">${count ? countText(count) : nothing}</span>
            ${rename(session, name, actions)}
          </li>`;
      })}
    </ul>`;
}

const rename = ({ builds }: Session, name: string, actions: Actions): TemplateResult => html`
  <details class="rename" @toggle=${focusField}>
    <summary aria-label=${say("rename-club", { name })}>${say("rename")}</summary>
    <form @submit=${(event: Event) => said(event, (wanted) => wanted !== name && actions.rename(name, wanted))}>
      <input name="name" aria-label=${say("rename-new", { name })} .value=${name} maxlength="80" autocomplete="off" enterkeyhint="done" required />
      <button type="submit">${say("save")}</button>
      ${builds.length > 1 ? html`<p class="hint">${say("rename-joins")}</p>` : nothing}
    </form>
  </details>`;

/** Asks whose shots a text holds, when nothing in it says so. */
export function whose(
  given: Given,
  several: boolean,
  session: Session,
  actions: Actions,
): TemplateResult | typeof nothing {
  const now = unnamed(given);
  if (now === null) return nothing;
  const others = several ? session.builds.map(({ name }) => name).filter((name) => name !== now) : [];
  const field = `whose-${now}`;
  return html`
    <form class="notice whose" @submit=${(event: Event) => said(event, (name) => actions.rename(now, name))}>
      <label class="question" for=${field}>${
        !several
          ? say("whose-these")
          : given.source.kind === "file"
            ? sayAround("whose-in", { name: foreign(given.source.name) })
            : say("whose-added")
      }</label>
      ${
        others.length > 0
          ? html`<div class="buttons">
            ${others.map((name) => html`<button type="button" @click=${() => actions.rename(now, name)}>${build(indexOf(session, name), name)}</button>`)}
          </div>
          <p class="hint">${say("whose-other")}</p>`
          : nothing
      }
      <div class="named">
        <input id=${field} name="name" maxlength="80" autocomplete="off" enterkeyhint="done" placeholder=${say("whose-name")} .value=${isNumbered(now) ? "" : now} required />
        <button type="submit" class="primary">${say("whose-take")}</button>
      </div>
    </form>`;
}

const indexOf = ({ builds }: Session, name: string): number => builds.findIndex((one) => one.name === name);

function said(event: Event, tell: (name: string) => unknown): void {
  event.preventDefault();
  const form = event.target as HTMLFormElement;
  const name = String(new FormData(form).get("name") ?? "").trim();
  form.closest("details")?.removeAttribute("open");
  if (name !== "") tell(name);
}

/** The field is ready as soon as it opens: one tap, then the name. */
function focusField({ currentTarget }: Event): void {
  const details = currentTarget as HTMLDetailsElement;
  if (details.open) details.querySelector("input")?.select();
}
