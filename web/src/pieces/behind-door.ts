/** An element inside a `details`: light DOM, and drawn anew whenever the door opens or closes. Closed it asks nothing. */
import { LightElement } from "./light-element.js";

export abstract class BehindDoor extends LightElement {
  readonly #toggled = (): void => this.requestUpdate();

  protected get isOpen(): boolean {
    return this.closest("details")?.open ?? false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.closest("details")?.addEventListener("toggle", this.#toggled);
  }

  override disconnectedCallback(): void {
    this.closest("details")?.removeEventListener("toggle", this.#toggled);
    super.disconnectedCallback();
  }
}
