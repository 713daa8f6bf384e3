/**
 * What stands in a `details` and is drawn only while that is open: most rows stay closed, and a page that draws none of
 * them is there sooner.
 */
import { nothing } from "lit";
import { AsyncDirective } from "lit/async-directive.js";
import { type ChildPart, directive } from "lit/directive.js";

class WhenOpen extends AsyncDirective {
  #row: HTMLDetailsElement | null = null;
  #content: () => unknown = () => nothing;
  readonly #draw = (): void => this.setValue(this.#drawn());

  override render(_content: () => unknown): unknown {
    return nothing;
  }

  override update(part: ChildPart, [content]: [() => unknown]): unknown {
    this.#content = content;
    if (!this.#row) {
      this.#row = (part.parentNode as Element).closest("details");
      this.#row?.addEventListener("toggle", this.#draw);
    }
    return this.#drawn();
  }

  #drawn(): unknown {
    return this.#row?.open ? this.#content() : nothing;
  }

  protected override disconnected(): void {
    this.#row?.removeEventListener("toggle", this.#draw);
  }

  protected override reconnected(): void {
    this.#row?.addEventListener("toggle", this.#draw);
  }
}

export const whenOpen = directive(WhenOpen);

/** Opens a row and draws what is in it at once; the browser itself would tell of it a moment later. */
export function openNow(row: HTMLDetailsElement): void {
  row.open = true;
  row.dispatchEvent(new Event("toggle"));
}
