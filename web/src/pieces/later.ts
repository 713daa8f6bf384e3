/**
 * Views that no answer waits for: loaded when first asked for, and shown when they are there.
 *
 * They stand below the answer, so nothing the reader looks at moves.
 */
import { html, type TemplateResult } from "lit";
import { nextTurn } from "../state/next-frame.js";
import { say } from "../text/say.js";

/** A view by its loader: what it draws, or that it is on its way. `again` draws the page anew once it is there. */
export function later<View extends (...given: never[]) => unknown>(load: () => Promise<View>) {
  let view: View | undefined;
  let failed = false;
  let asked = false;
  let again: (() => void) | undefined;
  const ahead = (): void => {
    if (asked) return;
    asked = true;
    // Nothing that may come later is asked for before what is drawn now stands.
    nextTurn()
      .then(load)
      .then((loaded) => (view = loaded))
      .catch(() => (failed = true))
      .finally(() => again?.());
  };
  const draw = (drawAgain: () => void, ...given: Parameters<View>): ReturnType<View> | TemplateResult => {
    if (view) return view(...given) as ReturnType<View>;
    again = drawAgain;
    ahead();
    return html`<p class="hint">${failed ? say("not-loaded") : say("loading")}</p>`;
  };
  /** Loads the view before it is drawn: paper cannot wait for it. */
  return Object.assign(draw, { ahead });
}
