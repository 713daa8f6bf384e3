/** An element inside a `details`: light DOM, and drawn anew whenever the door opens or closes. Closed it asks nothing. */
import { LitElement } from "lit";

export abstract class BehindDoor extends LitElement {
  readonly #toggled = (): void => this.requestUpdate();

  protected get isOpen(): boolean {
    return this.closest("details")?.open ?? false;
  }

  protected override createRenderRoot(): HTMLElement {
    this.replaceChildren();
    return this;
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
