/** An element drawn into the document itself: anchors, labels, print and assistive technology work as everywhere. */
import { LitElement } from "lit";

export abstract class LightElement extends LitElement {
  /** What stood in its place while it was loaded goes. */
  protected override createRenderRoot(): HTMLElement {
    this.replaceChildren();
    return this;
  }
}
