/** Part 1 once something is read, in a line: clubs, counts, and what of it is worth a look. */
import { html, nothing, type TemplateResult } from "lit";
import type { Session } from "../core/engine.js";
import { buildCounts, countText, distinctColumns } from "../format/values.js";
import { later } from "../pieces/later.js";
import { opensFor } from "../pieces/opens-for.js";
import { build } from "../pieces/pieces.js";
import { whenOpen } from "../pieces/when-open.js";
import type { Actions } from "../state/actions.js";
import { shotCount } from "../state/shots.js";
import type { State } from "../state/state.js";
import { type Given, unnamed } from "../state/texts.js";
import { say } from "../text/say.js";
import { withTexts } from "../text/spoken.js";

const inside = later(() => withTexts(["settings"], () => import("./inside.js")).then((module) => module.inside));

/** Up to this many clubs are named with their counts in the row's line. */
const NAMED = 4;

export function read(state: State, session: Session, actions: Actions): TemplateResult {
  if (state.report) inside.ahead();
  const [title, doubts] = [state.sent ? say("their-shots") : say("your-shots"), toLookAt(state.given)];
  const id = "shots";
  return html`
    <section class="part" id=${id} aria-labelledby="${id}-title">
      <details class="read" ${opensFor(needsTheGolfer(state, session))}>
        <summary>
          <hgroup>
            <h2 id="${id}-title" tabindex="-1">${title}</h2>
            <p>${inShort(session)}</p>
            ${doubts === "" ? nothing : html`<p class="alert">${doubts}</p>`}
          </hgroup>
        </summary>
        ${whenOpen(() => inside(actions.drawAgain, state, session, actions))}
      </details>
    </section>`;
}

/** Whether nothing can be answered before something is said or added here. */
const needsTheGolfer = (state: State, session: Session): boolean =>
  state.given.some((one) => unnamed(one) !== null) ||
  (session.builds.length < 2 && !state.wants) ||
  state.notAdded !== null ||
  (state.report !== null && state.trouble !== null);

function inShort(session: Session): unknown {
  const counts = buildCounts(session);
  if (session.builds.length > NAMED) {
    const clubs = say("n-clubs", { count: session.builds.length });
    return say("read-in-short", { clubs, shots: say("n-shots", { count: shotCount(session) }) });
  }
  return session.builds.map(({ name }, index) => {
    const count = counts[index];
    return html`<span class="read-club">${build(index, name)} <span class="count">${count ? countText(count) : nothing}</span></span>`;
  });
}

/** What is worth a look in what was read: rows not understood, columns that were guessed. */
function toLookAt(given: readonly Given[]): string {
  const shown = given.flatMap(({ shown }) => (shown ? [shown] : []));
  const rows = shown.reduce((sum, { reading }) => sum + reading.rows.problems, 0);
  const columns = shown.flatMap(({ reading }) => distinctColumns(reading.columns)).filter(({ sure }) => !sure).length;
  return [
    rows > 0 ? say("not-understood", { count: rows }) : "",
    columns > 0 ? say("columns-to-check", { count: columns }) : "",
    rows === 0 && shown.some(({ problems }) => problems.length > 0) ? say("look-at-this") : "",
  ]
    .filter(Boolean)
    .join(" · ");
}
