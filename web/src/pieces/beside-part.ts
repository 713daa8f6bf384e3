/**
 * A part that stands beside the page and works with the planner: opened, it waits for that and for the measures, then
 * shows itself.
 */
import { html, type TemplateResult } from "lit";
import type { Measure, Refusal } from "../core/engine.js";
import { openPlanner, type Planner } from "../core/planner.js";
import { asRefusal } from "../core/refusal.js";
import type { PagePort } from "../state/page-port.js";
import { say } from "../text/say.js";
import { LightElement } from "./light-element.js";

export abstract class BesidePart extends LightElement {
  /** Set by the door. */
  declare page: PagePort;
  #planner: Planner | null = null;

  /** Takes in what it waited for. */
  protected abstract opened(measures: readonly Measure[]): void | Promise<void>;
  /** What went wrong on the way, kept with all else that the part shows. */
  protected abstract refused(refusal: Refusal): void;
  protected abstract get refusal(): Refusal | null;
  protected abstract show(): TemplateResult;

  /** There from `opened` on. */
  protected get planner(): Planner {
    return this.#planner!;
  }

  protected get isOpened(): boolean {
    return this.#planner !== null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#open();
  }

  override render(): TemplateResult {
    if (!this.isOpened) return html`<p class="hint">${this.refusal?.message ?? say("opening")}</p>`;
    return this.show();
  }

  async #open(): Promise<void> {
    try {
      this.#planner = await openPlanner();
      await this.opened(await (await this.page.engine).measures());
    } catch (thrown) {
      this.refused(asRefusal(thrown));
    }
  }
}
