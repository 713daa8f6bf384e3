/** Opens a `details` whenever a reason to look into it arises; closing it is the reader's own. */
import { nothing } from "lit";
import { Directive, directive, type ElementPart } from "lit/directive.js";

class OpensFor extends Directive {
  #had = false;

  override render(_reason: boolean): unknown {
    return nothing;
  }

  override update({ element }: ElementPart, [reason]: [boolean]): unknown {
    if (reason && !this.#had) (element as HTMLDetailsElement).open = true;
    this.#had = reason;
    return nothing;
  }
}

export const opensFor = directive(OpensFor);
